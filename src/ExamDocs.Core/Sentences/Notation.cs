using System.Globalization;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Sentences;

/// <summary>
/// How a language writes days and numbers. The months stand here and not in the machine's settings, so that a page is the same everywhere.
/// </summary>
/// <param name="Decimal">What stands between the whole number and its decimals.</param>
/// <param name="Months">Twelve, as they stand in a date.</param>
/// <param name="DayOfMonth">The day as it stands before the month.</param>
public sealed record Notation(string Decimal, IReadOnlyList<string> Months, Func<int, string> DayOfMonth)
{
    // The months in three letters are plain in English; they would be abbreviations with a point elsewhere.
    public static Notation English { get; } =
        new(".", ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"], day => Digits(day));

    public static Notation German { get; } =
        new(
            ",",
            ["Januar", "Februar", "März", "April", "Mai", "Juni", "Juli", "August", "September", "Oktober", "November", "Dezember"],
            day => $"{Digits(day)}."
        );

    public static Notation French { get; } =
        new(
            ",",
            ["janvier", "février", "mars", "avril", "mai", "juin", "juillet", "août", "septembre", "octobre", "novembre", "décembre"],
            day => day == 1 ? "1er" : Digits(day)
        );

    /// <summary>The day with its month as a word, so that day and month cannot be taken for one another.</summary>
    public string Day(LocalDate day) => $"{DayOfMonth(day.Day)} {Month(day)}";

    /// <summary>The date at the precision recorded: a day, a month or a year.</summary>
    public string Day(PartialDate date) =>
        date switch
        {
            { Month: null } => date.Year.ToString("0000", CultureInfo.InvariantCulture),
            { Day: null } => Month(date.Earliest),
            _ => Day(date.Earliest),
        };

    /// <summary>The number with the decimals it was typed with.</summary>
    public string Number(decimal value) => Written(value.ToString(CultureInfo.InvariantCulture));

    /// <param name="value">A number.</param>
    /// <param name="format">A custom format of .NET with a point, for example 0.00#.</param>
    public string Number(IFormattable value, string format) => Written(value.ToString(format, CultureInfo.InvariantCulture));

    private string Month(LocalDate day) => $"{Months[day.Month - 1]} {day.Year.ToString("0000", CultureInfo.InvariantCulture)}";

    private string Written(string number) => number.Replace(".", Decimal, StringComparison.Ordinal);

    private static string Digits(int day) => day.ToString(CultureInfo.InvariantCulture);
}

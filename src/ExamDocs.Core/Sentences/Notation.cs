using System.Globalization;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Sentences;

/// <summary>
/// How a language writes days and numbers. The month names are here and do not come from the machine's settings, so that a page is
/// the same everywhere.
/// </summary>
/// <param name="Decimal">The sign between the whole number and its decimals.</param>
/// <param name="Months">The twelve months as a date writes them.</param>
/// <param name="DayOfMonth">The day as a date writes it before the month.</param>
/// <param name="ShortMonths">The same cut short where that is usual, for columns.</param>
/// <param name="BeforeColon">What stands before a colon or semicolon: a blank that does not break, or nothing.</param>
public sealed record Notation(
    string Decimal,
    IReadOnlyList<string> Months,
    IReadOnlyList<string> ShortMonths,
    Func<int, string> DayOfMonth,
    string BeforeColon = ""
)
{
    /// <summary>A blank that no line ends at: between a day and its month, a number and its unit.</summary>
    public const string Unbroken = "\u00A0";

    private static readonly string[] EnglishMonths = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

    // English months have three letters; the other languages would need a point behind them, so they are written in full.
    public static Notation English { get; } = new(".", EnglishMonths, EnglishMonths, day => Digits(day));

    public static Notation German { get; } =
        new(
            ",",
            ["Januar", "Februar", "März", "April", "Mai", "Juni", "Juli", "August", "September", "Oktober", "November", "Dezember"],
            ["Jan.", "Feb.", "März", "Apr.", "Mai", "Juni", "Juli", "Aug.", "Sept.", "Okt.", "Nov.", "Dez."],
            day => $"{Digits(day)}."
        );

    public static Notation French { get; } =
        new(
            ",",
            ["janvier", "février", "mars", "avril", "mai", "juin", "juillet", "août", "septembre", "octobre", "novembre", "décembre"],
            ["janv.", "févr.", "mars", "avr.", "mai", "juin", "juil.", "août", "sept.", "oct.", "nov.", "déc."],
            day => day == 1 ? "1er" : Digits(day),
            Unbroken
        );

    /// <summary>Between the parts of a list whose parts may have commas.</summary>
    public string Semicolon => $"{BeforeColon}; ";

    /// <summary>Between what is spoken of and what is said of it.</summary>
    public string Colon => $"{BeforeColon}: ";

    /// <summary>The day with its month as a word, so that nobody takes the day for the month.</summary>
    public string Day(LocalDate day) => $"{DayOfMonth(day.Day)}{Unbroken}{Month(day)}";

    /// <summary>The same with a short month, for columns; no line ends within it.</summary>
    public string ShortDay(LocalDate day) => $"{DayOfMonth(day.Day)}{Unbroken}{ShortMonth(day)}";

    /// <inheritdoc cref="ShortDay(LocalDate)" />
    public string ShortDay(PartialDate date) =>
        date switch
        {
            { Month: null } => Day(date),
            { Day: null } => ShortMonth(date.Earliest),
            _ => ShortDay(date.Earliest),
        };

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

    private string Month(LocalDate day) => $"{Months[day.Month - 1]} {Year(day)}";

    private string ShortMonth(LocalDate day) => $"{ShortMonths[day.Month - 1]}{Unbroken}{Year(day)}";

    private static string Year(LocalDate day) => day.Year.ToString("0000", CultureInfo.InvariantCulture);

    private string Written(string number) => number.Replace(".", Decimal, StringComparison.Ordinal);

    private static string Digits(int day) => day.ToString(CultureInfo.InvariantCulture);
}

using System.Text.RegularExpressions;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>
/// Reads a date typed in the order that the workbook declares: two or three numbers between slashes, dots, hyphens or
/// blanks, the year in full. Nothing is guessed: what does not fit the order is left as typed, and refused where all is.
/// </summary>
internal static partial class TypedDate
{
    /// <returns>The date as ISO 8601 has it, or a month and year alone; null where it is no such date.</returns>
    public static string? Iso(string typed, DateOrder order)
    {
        if (MonthAndYear().Match(typed) is { Success: true } two)
            return order is DateOrder.YearFirst ? null : Checked(two.Groups["year"].Value, two.Groups["month"].Value, null);
        if (Three().Match(typed) is not { Success: true } parts)
            return null;
        var (a, b, c) = (parts.Groups["a"].Value, parts.Groups["b"].Value, parts.Groups["c"].Value);
        var (year, month, day) = order switch
        {
            DateOrder.DayFirst => (c, b, a),
            DateOrder.MonthFirst => (c, a, b),
            _ => (a, b, c),
        };
        return year.Length == 4 && day.Length <= 2 ? Checked(year, month, day) : null;
    }

    private static string? Checked(string year, string month, string? day)
    {
        var iso = string.Join('-', new[] { year, month, day }.OfType<string>().Select(part => part.PadLeft(2, '0')));
        return DateText.ReadPartial(iso) is null ? null : iso;
    }

    [GeneratedRegex(
        @"\A(?<a>[0-9]{1,4})(?<s>[./ -])(?<b>[0-9]{1,2})\k<s>(?<c>[0-9]{1,4})\z",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Three();

    [GeneratedRegex(@"\A(?<month>[0-9]{1,2})[./ -](?<year>[0-9]{4})\z", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex MonthAndYear();
}

using System.Globalization;
using System.Text.RegularExpressions;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Vocabulary;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>
/// A date typed as text that can be read in one way only, or in the order that the workbook declares. Nothing is guessed: 03/04/2026
/// without an order, a year of two digits without one and days that the calendar lacks are left as typed, and refused where all is.
/// </summary>
/// <param name="Iso">As ISO 8601 has it: a day, a month or a year.</param>
/// <param name="IsByOrder">The order declared was needed, or is the one it is typed in.</param>
internal sealed partial record TypedDate(string Iso, bool IsByOrder)
{
    private const int DigitsOfDay = 8;

    /// <returns>Null where it is no date, or more than one.</returns>
    public static TypedDate? Of(string typed, DateOrder? order)
    {
        var text = Midnight().Replace(typed, "");
        if (LooksIso(text))
            return new(text, IsByOrder: false);
        if (text.Length == DigitsOfDay && text.All(char.IsAsciiDigit))
            return Checked(text[..4], text[4..6], text[6..], isByOrder: false);
        if (Three().Match(text) is { Success: true } three)
            return Numbers(three.Groups["a"].Value, three.Groups["b"].Value, three.Groups["c"].Value, order);
        if (MonthAndYear().Match(text) is { Success: true } two)
            return order is DateOrder.YearFirst ? null : Checked(Year(two), two.Groups["month"].Value, null, order is not null);
        if (YearAndMonth().Match(text) is { Success: true } swapped)
            return order is null or DateOrder.YearFirst
                ? Checked(Year(swapped), swapped.Groups["month"].Value, null, order is not null)
                : null;
        return Named(text, order);
    }

    /// <summary>Of the form 2026-05-11, 2026-05 or 2026; whether there is such a day is seen where all dates are.</summary>
    private static bool LooksIso(string text)
    {
        if (text.Length is not (4 or 7 or 10))
            return false;
        for (var n = 0; n < text.Length; n++)
        {
            if (n is 4 or 7 ? text[n] != '-' : !char.IsAsciiDigit(text[n]))
                return false;
        }
        return true;
    }

    private static string Year(Match match) => match.Groups["year"].Value;

    private static TypedDate? Numbers(string a, string b, string c, DateOrder? order)
    {
        if (a.Length == 4)
            return order is null or DateOrder.YearFirst && c.Length <= 2 ? Checked(a, b, c, order is not null) : null;
        if (a.Length > 2 || c.Length is not (2 or 4))
            return order is DateOrder.YearFirst && a.Length == 2 && c.Length == 1 ? Checked(Whole(a), b, c, isByOrder: true) : null;
        return order switch
        {
            DateOrder.DayFirst => Checked(Whole(c), b, a, isByOrder: true),
            DateOrder.MonthFirst => Checked(Whole(c), a, b, isByOrder: true),
            DateOrder.YearFirst => a.Length == 2 && c.Length == 2 ? Checked(Whole(a), b, c, isByOrder: true) : null,
            _ => c.Length == 4 ? OnlyOneOf(Checked(c, b, a, isByOrder: false), Checked(c, a, b, isByOrder: false)) : null,
        };
    }

    /// <summary>20/05/2026 is one day, and so is 05/05/2026; 03/04/2026 is two.</summary>
    private static TypedDate? OnlyOneOf(TypedDate? dayFirst, TypedDate? monthFirst) =>
        dayFirst is null || monthFirst is null || dayFirst == monthFirst ? dayFirst ?? monthFirst : null;

    private static TypedDate? Named(string text, DateOrder? order)
    {
        var match = DayFirst().Match(text);
        var needed = DateOrder.DayFirst;
        if (!match.Success)
            (match, needed) = (MonthFirst().Match(text), DateOrder.MonthFirst);
        if (!match.Success)
            (match, needed) = (NamedYearFirst().Match(text), DateOrder.YearFirst);
        if (!match.Success || MonthNames.Find(match.Groups["month"].Value) is not { } month)
            return null;
        var (year, day) = (Year(match), match.Groups["day"].Value);
        if (year.Length == 2 && (order != needed || day.Length == 0))
            return null;
        return Checked(
            Whole(year),
            month.ToString(CultureInfo.InvariantCulture),
            day.Length == 0 ? null : day,
            isByOrder: year.Length == 2
        );
    }

    private static string Whole(string year) =>
        year.Length != 2 ? year : TwoDigitYear.Whole(int.Parse(year, CultureInfo.InvariantCulture)).ToString(CultureInfo.InvariantCulture);

    private static TypedDate? Checked(string year, string month, string? day, bool isByOrder)
    {
        var iso = string.Join('-', new[] { year, month, day }.OfType<string>().Select(part => part.PadLeft(2, '0')));
        return DateText.ReadPartial(iso) is null ? null : new(iso, isByOrder);
    }

    /// <summary>What programs add to a day that has no time.</summary>
    [GeneratedRegex(@"(?<=[0-9])[T ]0?0:00(:00(\.0+)?)?Z?\z", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Midnight();

    [GeneratedRegex(
        @"\A(?<a>[0-9]{1,4}) ?(?<s>[./ -]) ?(?<b>[0-9]{1,2}) ?\k<s> ?(?<c>[0-9]{1,4})\z",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Three();

    [GeneratedRegex(
        @"\A(?<month>[0-9]{1,2}) ?[./ -] ?(?<year>[0-9]{4})\z",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex MonthAndYear();

    [GeneratedRegex(
        @"\A(?<year>[0-9]{4}) ?[./ -] ?(?<month>[0-9]{1,2})\z",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex YearAndMonth();

    [GeneratedRegex(
        @"\A((?<day>[0-9]{1,2})(st|nd|rd|th|er|\.)?[ ./-]{0,2}(of )?)?(?<month>\p{L}{3,9})[.,]?[ ./-]{0,2}(?<year>[0-9]{4}|[0-9]{2})\z",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex DayFirst();

    [GeneratedRegex(
        @"\A(?<month>\p{L}{3,9})\.?[ -](?<day>[0-9]{1,2})(st|nd|rd|th)?(, ?|[ -])(?<year>[0-9]{4}|[0-9]{2})\z",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex MonthFirst();

    [GeneratedRegex(
        @"\A(?<year>[0-9]{4})[ ./-](?<month>\p{L}{3,9})\.?([ ./-](?<day>[0-9]{1,2}))?\z",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex NamedYearFirst();
}

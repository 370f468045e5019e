using System.Globalization;
using System.Text.RegularExpressions;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Vocabulary;

namespace ExamDocs.Intake.OwnList.Words;

/// <summary>
/// A date as a list has it. What can be read in one way has one reading; 03/04/2026 has one for each order that fits, and is read
/// only once an order is given.
/// </summary>
/// <param name="Readings">By the orders that give a date.</param>
internal sealed partial record ListDate(IReadOnlyDictionary<DateOrder, PartialDate> Readings)
{
    private static readonly DateOrder[] Orders = [DateOrder.DayFirst, DateOrder.MonthFirst, DateOrder.YearFirst];

    /// <summary>Null where it depends on the order.</summary>
    public PartialDate? Only => Readings.Values.Distinct().ToList() is [var one] ? one : null;

    public PartialDate? In(DateOrder? order) => Only ?? (order is { } given && Readings.TryGetValue(given, out var date) ? date : null);

    /// <summary>Null where the text is no date.</summary>
    public static ListDate? Of(string typed)
    {
        var text = TimeOfDay().Replace(typed.Trim(), "");
        var named = NamedMonthDate.WithNumbers(text);
        return Whole(text) ?? Three(text) ?? Two(text) ?? (named is null ? null : Named(named.Value));
    }

    private static ListDate? Whole(string text) =>
        Iso().Match(text) is not { Success: true } iso
            ? null
            : One(Number(iso, "y"), iso.Groups["m"].Success ? Number(iso, "m") : null, iso.Groups["d"].Success ? Number(iso, "d") : null);

    private static ListDate? Three(string text)
    {
        if (ThreeNumbers().Match(text) is not { Success: true } match)
            return null;
        var (a, b, c) = (match.Groups["a"].Value, match.Groups["b"].Value, match.Groups["c"].Value);
        // Dots stand between day, month and year in this order everywhere that dots are used.
        var orders =
            a.Length == 4 ? [DateOrder.YearFirst]
            : match.Groups["s"].Value is "." ? [DateOrder.DayFirst]
            : Orders;
        var readings = new Dictionary<DateOrder, PartialDate>();
        foreach (var order in orders)
        {
            var (year, month, day) = order switch
            {
                DateOrder.DayFirst => (c, b, a),
                DateOrder.MonthFirst => (c, a, b),
                _ => (a, b, c),
            };
            // Year first with two digits is too rare to put the usual orders in doubt.
            if (order is DateOrder.YearFirst && a.Length < 4 && (c.Length == 4 || readings.Count > 0))
                continue;
            if (year.Length is 2 or 4 && day.Length <= 2 && month.Length <= 2 && Made(Year(year), Parse(month), Parse(day)) is { } date)
                readings[order] = date;
        }
        return readings.Count == 0 ? null : new ListDate(readings);
    }

    /// <summary>A month and a year. 03/04 is left alone: it may be a day without its year.</summary>
    private static ListDate? Two(string text)
    {
        if (MonthAndYear().Match(text) is not { Success: true } match)
            return null;
        var year = match.Groups["y"].Value;
        return year.Length == 2 && Parse(year) <= 12 ? null : One(Year(year), Number(match, "m"), null);
    }

    private static ListDate? Named((int? Day, int Month, string Year) named) => One(Year(named.Year), named.Month, named.Day);

    private static ListDate? One(int? year, int? month, int? day) =>
        year is { } known && Made(known, month, day) is { } date
            ? new ListDate(new Dictionary<DateOrder, PartialDate> { [DateOrder.YearFirst] = date })
            : null;

    private static PartialDate? Made(int year, int? month, int? day)
    {
        var isThere =
            year is >= 1900 and <= 2200
            && month is null or (>= 1 and <= 12)
            && (day is null || (month is { } m && day >= 1 && day <= DateTime.DaysInMonth(year, m)));
        return isThere ? new PartialDate(year, month, day) : null;
    }

    private static int Year(string digits) => digits.Length > 2 ? Parse(digits) : TwoDigitYear.Whole(Parse(digits));

    private static int Parse(string digits) => int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);

    private static int Number(Match match, string group) => Parse(match.Groups[group].Value);

    [GeneratedRegex(
        @"[T ][0-9]{1,2}:[0-9]{2}(:[0-9]{2}(\.[0-9]+)?)?Z?\z",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex TimeOfDay();

    [GeneratedRegex(
        @"\A(?<y>(19|20|21)[0-9]{2})(-(?<m>[0-9]{2})(-(?<d>[0-9]{2}))?)?\z",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Iso();

    [GeneratedRegex(
        @"\A(?<a>[0-9]{1,4})\s?(?<s>[./ -])\s?(?<b>[0-9]{1,2})\s?\k<s>\s?(?<c>[0-9]{1,4})\z",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex ThreeNumbers();

    [GeneratedRegex(
        @"\A(?<m>[0-9]{1,2})\s?[./ -]\s?(?<y>[0-9]{4}|[0-9]{2})\z",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex MonthAndYear();
}

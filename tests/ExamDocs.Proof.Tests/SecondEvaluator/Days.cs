using System.Globalization;

namespace ExamDocs.Proof.Tests.SecondEvaluator;

/// <summary>A date of some precision as the first and the last of its days.</summary>
public readonly record struct Span(DateOnly First, DateOnly Last);

/// <summary>Reckoning with days, apart from the library the programme uses.</summary>
public static class Days
{
    /// <summary>A whole day, a month or a year; null for anything else.</summary>
    public static Span? Read(string? text)
    {
        if (text is null || text.Length is not (4 or 7 or 10))
        {
            return null;
        }

        int[] numbers =
        [
            .. text.Split('-').Select(part => int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : 0),
        ];
        if (numbers.Length > 3 || numbers[0] is < 1900 or > 2200 || (numbers.Length > 1 && numbers[1] is < 1 or > 12))
        {
            return null;
        }

        return numbers.Length switch
        {
            1 => new Span(new DateOnly(numbers[0], 1, 1), new DateOnly(numbers[0], 12, 31)),
            2 => new Span(new DateOnly(numbers[0], numbers[1], 1), EndOfMonth(numbers[0], numbers[1])),
            _ => numbers[2] >= 1 && numbers[2] <= DateTime.DaysInMonth(numbers[0], numbers[1])
                ? new Span(new DateOnly(numbers[0], numbers[1], numbers[2]), new DateOnly(numbers[0], numbers[1], numbers[2]))
                : null,
        };
    }

    /// <summary>A whole day or null.</summary>
    public static DateOnly? ReadDay(string? text) => text?.Length == 10 ? Read(text)?.First : null;

    /// <summary>The day of the same number so many months on, or the last of that month where it has none.</summary>
    public static DateOnly AfterMonths(DateOnly from, int months)
    {
        var count = (from.Year * 12) + from.Month - 1 + months;
        var (year, month) = (count / 12, (count % 12) + 1);
        return new DateOnly(year, month, Math.Min(from.Day, DateTime.DaysInMonth(year, month)));
    }

    public static DateOnly AfterYears(DateOnly from, int years) => AfterMonths(from, 12 * years);

    public static DateOnly? Earliest(IEnumerable<DateOnly?> days) => days.Min();

    private static DateOnly EndOfMonth(int year, int month) => new(year, month, DateTime.DaysInMonth(year, month));
}

using NodaTime;

namespace ExamDocs.Core.Records;

/// <summary>A date as it was recorded: a day, a month or a year. The precision typed is the precision kept.</summary>
public sealed record PartialDate
{
    /// <param name="year">Calendar year, 1900 to 2200 inclusive.</param>
    /// <param name="month">1 to 12, or null where only the year is known.</param>
    /// <param name="day">Day of the month, or null where only the month is known.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such date.</exception>
    public PartialDate(int year, int? month = null, int? day = null)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(year, 1900);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(year, 2200);
        if (day is not null && month is null)
            throw new ArgumentOutOfRangeException(nameof(day), "a day needs a month");
        Earliest = new LocalDate(year, month ?? 1, day ?? 1);
        Latest = (month, day) switch
        {
            (null, _) => new LocalDate(year, 12, 31),
            (_, null) => Earliest.With(DateAdjusters.EndOfMonth),
            _ => Earliest,
        };
        (Year, Month, Day) = (year, month, day);
    }

    public int Year { get; }

    public int? Month { get; }

    public int? Day { get; }

    /// <summary>The first day it can mean, inclusive.</summary>
    public LocalDate Earliest { get; }

    /// <summary>The last day it can mean, inclusive.</summary>
    public LocalDate Latest { get; }

    public bool IsWholeDay => Day is not null;

    public static PartialDate Of(LocalDate day) => new(day.Year, day.Month, day.Day);

    /// <summary>ISO 8601 at the precision recorded: 2024, 2024-02 or 2024-02-29.</summary>
    public override string ToString() =>
        (Month, Day) switch
        {
            (null, _) => string.Create(Invariant, $"{Year:0000}"),
            (_, null) => string.Create(Invariant, $"{Year:0000}-{Month:00}"),
            _ => string.Create(Invariant, $"{Year:0000}-{Month:00}-{Day:00}"),
        };

    private static readonly System.Globalization.CultureInfo Invariant = System.Globalization.CultureInfo.InvariantCulture;
}

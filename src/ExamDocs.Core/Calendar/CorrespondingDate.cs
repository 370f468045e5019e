using NodaTime;

namespace ExamDocs.Core.Calendar;

/// <summary>
/// The corresponding-date rule for periods of months: the day of the event is left out, and the period ends on the
/// same-numbered day of the later month, or on the last day of that month where it has no such day. Nothing is
/// rolled past a weekend or a holiday, because that would lengthen a safety interval. The end of a month does not
/// stick: six months from 28 February is 28 August.
/// </summary>
/// <remarks>
/// Source: Dodds v Walker [1981] 1 WLR 1027 (HL); E J Riley Investments v Eurostile Holdings. That a month without such a
/// day ends the period on its last day is the same judgment, from memory. A month is a calendar month: Interpretation
/// Act 1978 s 5 and Sch 1, as restated there. Always count from the date of the event itself, never from an earlier due
/// date: from 31 August, twice six months gives 28 August, but once twelve months gives 31 August.
/// </remarks>
public static class CorrespondingDate
{
    /// <summary>The last day of a period, inclusive.</summary>
    /// <param name="day">The day of the event, which is outside the period.</param>
    /// <param name="months">Calendar months, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Months are negative, or the end lies after 9999.</exception>
    public static LocalDate AddMonths(LocalDate day, int months) => Add(day, months, nameof(months));

    /// <summary>The last day of a period, inclusive; a year is twelve months, so 29 February gives 28 February.</summary>
    /// <param name="day">The day of the event, which is outside the period.</param>
    /// <param name="years">Calendar years, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Years are negative, or the end lies after 9999.</exception>
    public static LocalDate AddYears(LocalDate day, int years) => Add(day, years * 12L, nameof(years));

    private static LocalDate Add(LocalDate day, long months, string parameter)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(months, parameter);
        // NodaTime's PlusMonths keeps the day of the month and clamps it to the month's length: the same rule.
        return (day.Year * 12L) + (day.Month - 1) + months < 10_000L * 12
            ? day.PlusMonths((int)months)
            : throw new ArgumentOutOfRangeException(parameter, "The period ends after the year 9999.");
    }
}

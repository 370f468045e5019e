using NodaTime;

namespace ExamDocs.Intake;

/// <summary>
/// Day numbers as workbooks store dates, in whole days of one of two systems. 1900: day 1 is 1 January 1900 and day 60
/// a 29 February 1900 that never was. 1904: day 0 is 1 January 1904. Both end on 31 December 9999. The time of day, the
/// fraction of a serial, is left out.
/// Source: ECMA-376 1st ed. Part 4, "Date Representation"; MS-XLS, Date1904.
/// </summary>
public static class SpreadsheetSerial
{
    /// <summary>Last serial of the 1900 system, inclusive: 31 December 9999.</summary>
    public const int Last1900 = 2_958_465;

    /// <summary>Last serial of the 1904 system, inclusive: 31 December 9999.</summary>
    public const int Last1904 = 2_957_003;

    private const int LeapDayThatNeverWas = 60;

    private static readonly LocalDate DayBefore1900 = new(1899, 12, 31);

    private static readonly LocalDate FirstOf1904 = new(1904, 1, 1);

    private static readonly LocalDate LastDay = new(9999, 12, 31);

    /// <summary>The day that a serial names.</summary>
    /// <param name="serial">Days, with the time of day as a fraction.</param>
    /// <param name="uses1904">The workbook says that it counts from 1904.</param>
    /// <returns>
    /// Null where the serial names no day: negative, after 9999, and in the 1900 system below 1 (a time alone) or 60.
    /// </returns>
    public static LocalDate? ToDate(decimal serial, bool uses1904)
    {
        if (serial < 0 || serial >= (uses1904 ? Last1904 : Last1900) + 1m)
            return null;
        var day = (int)decimal.Truncate(serial);
        if (uses1904)
            return FirstOf1904.PlusDays(day);
        return day switch
        {
            0 or LeapDayThatNeverWas => null,
            < LeapDayThatNeverWas => DayBefore1900.PlusDays(day),
            _ => DayBefore1900.PlusDays(day - 1),
        };
    }

    /// <summary>The serial of a day; the inverse of <see cref="ToDate"/>.</summary>
    /// <returns>Null where the day lies before the first or after the last of the system.</returns>
    public static int? FromDate(LocalDate date, bool uses1904)
    {
        var firstDay = uses1904 ? FirstOf1904 : DayBefore1900.PlusDays(1);
        if (date < firstDay || date > LastDay)
            return null;
        if (uses1904)
            return Period.DaysBetween(FirstOf1904, date);
        var days = Period.DaysBetween(DayBefore1900, date);
        return days < LeapDayThatNeverWas ? days : days + 1;
    }
}

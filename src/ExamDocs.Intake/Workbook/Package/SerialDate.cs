using NodaTime;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>
/// Dates that a workbook stores as a count of days (ECMA-376 1st ed. Part 4, "Date Representation"). In the 1900
/// system day 1 is 1 January 1900 and day 60 is a 29 February 1900 that never was; in the 1904 system day 0 is
/// 1 January 1904. The last day of both is 31 December 9999.
/// </summary>
internal static class SerialDate
{
    private const int NoSuchDay = 60;
    private const int Last1900 = 2_958_465;
    private const int Last1904 = 2_957_003;

    /// <summary>The day; null where the serial names none. A fraction (a time of day) is left out.</summary>
    public static LocalDate? Day(double serial, bool counts1904)
    {
        var whole = Math.Floor(serial);
        if (counts1904)
            return whole is >= 0 and <= Last1904 ? new LocalDate(1904, 1, 1).PlusDays((int)whole) : null;
        return whole switch
        {
            >= 1 and < NoSuchDay => new LocalDate(1899, 12, 31).PlusDays((int)whole),
            > NoSuchDay and <= Last1900 => new LocalDate(1899, 12, 30).PlusDays((int)whole),
            _ => null,
        };
    }
}

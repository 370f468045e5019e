using ExamDocs.Intake;
using NodaTime;

namespace ExamDocs.Intake.Tests;

public sealed class SpreadsheetSerialTests
{
    private const string Ecma = "ECMA-376 1st ed. Part 4, Date Representation";
    private const string MsXls = "MS-XLS, Date1904";
    private const string Erikmisc = "reference page of the R package erikmisc, e_convert_Date_to_ExcelDate";
    private const string Derived = "computed from the two bases";

    [Theory]
    [InlineData(1, false, "1900-01-01", Ecma)]
    [InlineData(59, false, "1900-02-28", Ecma)]
    [InlineData(61, false, "1900-03-01", Ecma)]
    [InlineData(2_958_465, false, "9999-12-31", Ecma)]
    [InlineData(0, true, "1904-01-01", MsXls)]
    [InlineData(2_957_003, true, "9999-12-31", Ecma)]
    [InlineData(40_729, false, "2011-07-05", Erikmisc)]
    [InlineData(39_267, true, "2011-07-05", Erikmisc)]
    [InlineData(45_351, false, "2024-02-29", Derived)]
    [InlineData(43_889, true, "2024-02-29", Derived)]
    [InlineData(36_526, false, "2000-01-01", Derived)]
    [InlineData(46_082, false, "2026-03-01", Derived)]
    [InlineData(44_620, true, "2026-03-01", Derived)]
    public void A_serial_and_its_day_name_each_other(int serial, bool uses1904, string day, string source)
    {
        Assert.NotEmpty(source);
        var date = NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value;
        Assert.Equal(date, SpreadsheetSerial.ToDate(serial, uses1904));
        Assert.Equal(serial, SpreadsheetSerial.FromDate(date, uses1904));
    }

    [Theory]
    [InlineData("-1", false)]
    [InlineData("-0.5", true)]
    [InlineData("0", false)]
    [InlineData("0.5", false)]
    [InlineData("60", false)]
    [InlineData("60.75", false)]
    [InlineData("2958466", false)]
    [InlineData("2957004", true)]
    [InlineData("79228162514264337593543950335", false)]
    [InlineData("79228162514264337593543950335", true)]
    public void A_serial_that_names_no_day_gives_none(string serial, bool uses1904) =>
        Assert.Null(SpreadsheetSerial.ToDate(decimal.Parse(serial, System.Globalization.CultureInfo.InvariantCulture), uses1904));

    [Fact]
    public void The_time_of_day_is_left_out()
    {
        Assert.Equal(new LocalDate(2026, 3, 1), SpreadsheetSerial.ToDate(46_082.999m, uses1904: false));
        Assert.Equal(new LocalDate(9999, 12, 31), SpreadsheetSerial.ToDate(2_958_465.5m, uses1904: false));
    }

    [Fact]
    public void Days_outside_a_system_have_no_serial()
    {
        Assert.Null(SpreadsheetSerial.FromDate(new LocalDate(1899, 12, 31), uses1904: false));
        Assert.Null(SpreadsheetSerial.FromDate(new LocalDate(1903, 12, 31), uses1904: true));
    }

    /// <summary>The systems differ by 1462 days for every real day from 1 January 1904 (source: as the bases imply).</summary>
    [Fact]
    public void The_systems_differ_by_1462_from_1904_on()
    {
        foreach (var year in Enumerable.Range(1904, 300))
        {
            var date = new LocalDate(year, 1, 1);
            Assert.Equal(1462, SpreadsheetSerial.FromDate(date, false) - SpreadsheetSerial.FromDate(date, true));
        }
    }

    [Fact]
    public void Every_serial_of_the_1900_system_but_one_comes_back_from_its_day()
    {
        var lost = Enumerable
            .Range(1, 100_000)
            .Where(serial => SpreadsheetSerial.ToDate(serial, false) is not { } day || SpreadsheetSerial.FromDate(day, false) != serial);
        Assert.Equal([60], lost);
    }
}

using ExamDocs.Intake.Vocabulary;
using ExamDocs.Intake.Workbook.Reading;
using ExamDocs.Intake.Workbook.Shape;
using static ExamDocs.Intake.Tests.Workbook.XlsxFile;

namespace ExamDocs.Intake.Tests.Workbook;

/// <summary>Dates and numbers that were typed as text are read in the one way they can be, and in no other.</summary>
public sealed class TypedTextTests
{
    [Theory]
    [InlineData("03/04/2026", "day-month-year", "2026-04-03")]
    [InlineData("03/04/2026", "month-day-year", "2026-03-04")]
    [InlineData("03.04.2026", "Day/Month/Year", "2026-04-03")]
    [InlineData("3-4-2026", "day month year", "2026-04-03")]
    [InlineData("2026/04/03", "year-month-day", "2026-04-03")]
    [InlineData("2026-04-03", "day-month-year", "2026-04-03")]
    [InlineData("04/2026", "day-month-year", "2026-04")]
    [InlineData("31/12/2026", "month-day-year", null)]
    [InlineData("30/02/2026", "day-month-year", null)]
    [InlineData("03/04/26", "day-month-year", "2026-04-03")]
    [InlineData("03/04/26", "year-month-day", "2003-04-26")]
    [InlineData("3 April 26", "day-month-year", "2026-04-03")]
    [InlineData("03/04.2026", "day-month-year", null)]
    [InlineData("2026/04/03", "day-month-year", null)]
    [InlineData("03/04/2026", "year-month-day", null)]
    [InlineData("03/04/2026", null, null)]
    public void A_date_is_read_in_the_order_declared_and_never_guessed(string typed, string? order, string? expected)
    {
        var read = Bridge("manufactured", typed, order);
        Assert.Equal(expected, read.Record.Items[0].Manufactured?.ToString());
        var said =
            expected is null ? "INT004 kit.xlsx!Rope bridges!B2"
            : typed == expected ? ""
            : "INT054 kit.xlsx!Rope bridges!B2";
        Assert.Equal(
            said,
            string.Join(
                ' ',
                read.Places.Where(p => !p.StartsWith("INT00", StringComparison.Ordinal) || p.Contains("B2", StringComparison.Ordinal))
            )
        );
    }

    [Fact]
    public void The_order_holds_for_the_visits_own_dates_wherever_it_stands()
    {
        var read = new ReadWorkbook(new XlsxFile().Sheet("Visit", Row("examined on", "03/04/2026") + Row("date order", "day-month-year")));
        Assert.Equal(new NodaTime.LocalDate(2026, 4, 3), read.Record.Visit.ExaminedOn);
    }

    [Fact]
    public void A_word_that_is_no_order_reads_no_date_and_is_an_error()
    {
        var read = Bridge("manufactured", "03/04/2026", "european");
        Assert.Null(read.Record.Items[0].Manufactured);
        Assert.Contains("INT005 kit.xlsx!Visit!B1", read.Places);
        Assert.Contains("INT004 kit.xlsx!Rope bridges!B2", read.Places);
    }

    /// <summary>A date cell counts its day and needs no order.</summary>
    [Fact]
    public void A_date_cell_is_the_day_it_counts_whatever_the_order()
    {
        var file = new XlsxFile { Formats = ["mm/dd/yyyy"] }
            .Sheet("Visit", Row("date order", "month-day-year"))
            .Sheet("Rope bridges", Row("id", "manufactured") + Row("B-1", "<c s=\"1\"><v>40729</v></c>"));
        Assert.Equal("2011-07-05", new ReadWorkbook(file).Record.Items[0].Manufactured?.ToString());
    }

    [Theory]
    [InlineData("11.2", "11.2")]
    [InlineData("11", "11")]
    [InlineData("11,2", "11.2")]
    [InlineData("10,95", "10.95")]
    [InlineData("0,250", "0.250")]
    [InlineData("11,2500", "11.2500")]
    [InlineData("1 250", "1250")]
    [InlineData("1\u00A0250", "1250")]
    [InlineData("1\u2009250,5", "1250.5")]
    [InlineData("1\u202F250.5", "1250.5")]
    [InlineData("1'250", "1250")]
    [InlineData("1.250", "1.250")]
    public void A_number_is_read_where_there_is_one_way(string typed, string expected)
    {
        var read = Bridge("safe working load", typed);
        Assert.Empty(read.Places);
        Assert.Equal(
            decimal.Parse(expected, System.Globalization.CultureInfo.InvariantCulture),
            read.Record.Items[0].SafeWorkingLoad?.Value
        );
    }

    [Theory]
    [InlineData("1,250", "INT053")]
    [InlineData("11,2,5", "INT003")]
    [InlineData("1.250,5", "INT003")]
    [InlineData("12 50", "INT003")]
    [InlineData("11.2 mm", "INT003")]
    [InlineData("1 2", "INT003")]
    [InlineData("١٢", "INT003")]
    [InlineData("1e3", "INT003")]
    public void What_is_no_number_or_two_is_refused_at_its_cell(string typed, string code)
    {
        var read = Bridge("safe working load", typed);
        Assert.Equal($"{code} kit.xlsx!Rope bridges!B2", Assert.Single(read.Places));
        Assert.Null(read.Record.Items[0].SafeWorkingLoad?.Value);
    }

    /// <summary>Beside a decimal comma a point before three digits is as likely to mean a thousand.</summary>
    [Theory]
    [InlineData("1.250", "11,2")]
    [InlineData("11,2", "1.250")]
    public void Decimals_typed_in_two_ways_are_an_error_whichever_comes_first(string one, string other)
    {
        var read = new ReadWorkbook(
            new XlsxFile().Sheet("Rope bridges", Row("id", "safe working load", "marked strength") + Row("B-1", one, other))
        );
        var place = one == "1.250" ? "B2" : "C2";
        Assert.Equal($"INT053 kit.xlsx!Rope bridges!{place}", Assert.Single(read.Places));
    }

    [Fact]
    public void Merged_cells_are_said_with_the_first_of_them()
    {
        var read = new ReadWorkbook(
            new XlsxFile().SheetPart(
                "Rope bridges",
                "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>"
                    + Row("id", "maker")
                    + Row("B-1", "Tarn")
                    + Row("B-2")
                    + "</sheetData><mergeCells count=\"2\"><mergeCell ref=\"B2:B3\"/><mergeCell ref=\"C1:D1\"/></mergeCells></worksheet>"
            )
        );
        Assert.Equal(["INT075 kit.xlsx!Rope bridges!B3", "INT055 kit.xlsx!Rope bridges!B2"], read.Places);
        Assert.Equal(["Tarn", null], read.Record.Items.Select(i => i.Maker));
    }

    [Theory]
    [InlineData(true, "INT056")]
    [InlineData(false, "INT035")]
    public void Values_that_may_come_from_other_workbooks_are_said_to(bool linked, string code)
    {
        var file = new XlsxFile { LinksOthers = linked }.Sheet(
            "Rope bridges",
            Row("id", "maker") + Row("B-1", "<c t=\"str\"><f>[1]Kit!A1</f><v>Tarn</v></c>")
        );
        var read = new ReadWorkbook(file);
        Assert.Equal($"{code} kit.xlsx!Rope bridges!B2", Assert.Single(read.Places));
        Assert.Equal("Tarn", read.Record.Items[0].Maker);
    }

    [Fact]
    public void Every_order_has_its_word() => Assert.Equal(Enum.GetValues<DateOrder>().Length, DateOrders.Words.Count);

    /// <summary>Every day of a year comes back from both orders as it was written in them.</summary>
    [Fact]
    public void Both_orders_give_back_every_day()
    {
        for (var day = new NodaTime.LocalDate(2028, 1, 1); day.Year == 2028; day = day.PlusDays(1))
        {
            var iso = day.ToString("uuuu-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
            Assert.Equal(
                iso,
                TypedDate.Of(day.ToString("d.M.uuuu", System.Globalization.CultureInfo.InvariantCulture), DateOrder.DayFirst)?.Iso
            );
            Assert.Equal(
                iso,
                TypedDate.Of(day.ToString("MM/dd/uuuu", System.Globalization.CultureInfo.InvariantCulture), DateOrder.MonthFirst)?.Iso
            );
        }
    }

    private static ReadWorkbook Bridge(string heading, string value, string? order = null)
    {
        var file = new XlsxFile();
        if (order is not null)
            file.Sheet("Visit", Row("date order", order));
        return new(file.Sheet("Rope bridges", Row("id", heading) + Row("B-1", value)));
    }
}

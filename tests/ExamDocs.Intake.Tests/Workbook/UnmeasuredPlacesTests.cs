using ExamDocs.Core.Records;
using static ExamDocs.Intake.Tests.Workbook.XlsxFile;

namespace ExamDocs.Intake.Tests.Workbook;

/// <summary>A place of last time that nobody measured is no reading and no error; any other place without a reading is at fault.</summary>
public sealed class UnmeasuredPlacesTests
{
    private const string Last = "2025-11-10";

    [Fact]
    public void A_place_of_last_time_without_a_reading_comes_into_no_record_and_is_named()
    {
        var read = Read(Row("B-1", "", "50", "", ""), Row("B-1", "", "300", "11.1", "11.0"));
        Assert.Equal(["INT086 kit.xlsx!Diameters!A2"], read.Places);
        Assert.Equal([300m], Now(read).Diameters.Select(d => d.PositionMm!.Value));
        Assert.Contains("50", Assert.Single(read.Findings, f => f.Code == "INT086").Message.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_none_was_measured_the_examination_has_no_diameters() =>
        Assert.Empty(Now(Read(Row("B-1", "", "50", "", ""), Row("B-1", "", "300", "", ""))).Diameters);

    /// <summary>What the check then says of such a place stands in the rules of measurement.</summary>
    [Theory]
    [InlineData("60", "", "")]
    [InlineData("50", "2026-05-11", "")]
    [InlineData("5O", "", "")]
    [InlineData("", "", "")]
    public void Any_other_row_without_a_reading_is_read_as_a_place_without_one(string position, string day, string reading)
    {
        var read = Read(Row("B-1", day, position, reading, ""));
        Assert.DoesNotContain(read.Places, p => p.StartsWith("INT086", StringComparison.Ordinal));
        Assert.Empty(Assert.Single(Now(read).Diameters).ReadingsMm);
    }

    [Fact]
    public void A_placeholder_is_a_reading_that_is_missing_and_no_empty_row() =>
        Assert.Single(Now(Read(Row("B-1", "", "50", "n/a", ""))).Diameters);

    /// <summary>What is typed where nothing is read is about this item alone.</summary>
    [Fact]
    public void What_stands_beside_an_empty_place_is_an_error_of_its_item()
    {
        var finding = Assert.Single(Read(Row("B-1", "", "50", "", "", "cut here")).Findings, f => f.Code == "INT022");
        Assert.Equal("B-1", finding.Item);
        Assert.StartsWith("/items/", finding.Path, StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_of_another_item_counts_for_nothing()
    {
        var read = Read(Row("B-2", "", "50", "", ""));
        Assert.Contains("INT030", string.Join(' ', read.Places), StringComparison.Ordinal);
    }

    [Fact]
    public void An_item_that_is_not_examined_this_time_gets_no_examination_from_its_places()
    {
        var read = new ReadWorkbook(File(Row("B-1"), [Row("B-1", "", "50", "", "")]));
        Assert.Empty(read.Places);
        Assert.Equal(new NodaTime.LocalDate(2025, 11, 10), Assert.Single(read.Record.Examinations).ExaminedOn);
    }

    [Fact]
    public void The_workbook_for_a_next_visit_has_a_row_for_each_place_of_last_time()
    {
        var record = RoundTripTests.Example();
        using var written = RoundTripTests.Written(record, Core.Criteria.Catalogue.All, forNextVisit: true);
        using var workbook = new ClosedXML.Excel.XLWorkbook(written);
        var rows = workbook.Worksheet("Diameters").RowsUsed().Skip(1).TakeWhile(r => r.Cell(2).IsEmpty()).ToList();
        var bridge = record.Examinations.Single(e => e.Item is "BRG-01" && e.DayAt(record.Visit) == record.Visit.ExaminedOn);
        Assert.Equal(
            bridge.Diameters.Select(d => d.PositionMm!.Value),
            rows.Where(r => r.Cell(1).GetString() is "BRG-01").Select(r => (decimal)r.Cell(3).GetDouble())
        );
        Assert.All(rows, r => Assert.Equal(3, r.CellsUsed().Last().Address.ColumnNumber));
    }

    private static Examination Now(ReadWorkbook read) =>
        read.Record.Examinations.Single(e => e.ExaminedOn is null || e.ExaminedOn.Value.Year == 2026);

    private static ReadWorkbook Read(params string[] rows) => new(File(Row("B-1", "clear", "fit"), rows));

    /// <summary>B-1 was measured last time at 50 and 300 mm.</summary>
    private static XlsxFile File(string item, string[] rows) =>
        new XlsxFile()
            .Sheet("Visit", Row("particular", "value") + Row("examined on", "2026-05-11"))
            .Sheet("Rope bridges", Row("id", "diameter", "conclusion") + item)
            .Sheet("Earlier examinations", Row("item", "examined on", "conclusion") + Row("B-1", Last, "fit"))
            .Sheet(
                "Diameters",
                Row("item", "examined on", "position mm", "reading 1", "reading 2")
                    + string.Concat(rows)
                    + Row("B-1", Last, "50", "11.2", "11.2")
                    + Row("B-1", Last, "300", "11.2", "11.1")
            );
}

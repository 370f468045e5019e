using ClosedXML.Excel;
using ExamDocs.Intake.Workbook.Tables;

namespace ExamDocs.Intake.Tests.Workbook;

public sealed class TableWorkbookTests
{
    [Theory]
    [InlineData("=1+1")]
    [InlineData("+SUM(A1)")]
    [InlineData("@cmd")]
    [InlineData("-2")]
    [InlineData("007")]
    public void Text_stays_text_whatever_it_begins_with(string text)
    {
        using var workbook = Written(
            new TableSheet(
                "One",
                ["What"],
                [
                    [text],
                ]
            )
        );

        var cell = workbook.Worksheet("One").Cell(2, 1);
        Assert.Equal((text, XLDataType.Text, false), (cell.GetString(), cell.DataType, cell.HasFormula));
    }

    [Fact]
    public void Numbers_are_numbers_and_what_is_missing_is_empty()
    {
        using var workbook = Written(
            new TableSheet(
                "One",
                ["A", "B", "C"],
                [
                    [3, 0.25, null],
                ]
            )
        );

        var row = workbook.Worksheet("One").Row(2);
        Assert.Equal((3d, 0.25, true), (row.Cell(1).GetDouble(), row.Cell(2).GetDouble(), row.Cell(3).IsEmpty()));
    }

    /// <summary>A row that is too low shows in print the last line of its text alone.</summary>
    [Fact]
    public void Rows_are_as_high_as_their_texts()
    {
        using var workbook = Written(
            new TableSheet(
                "One",
                ["Enough to compare it with others", "B"],
                [
                    [string.Join(' ', Enumerable.Repeat("words", 50)), 1],
                    ["short", 2],
                    [new string('x', 5000), 3],
                ]
            )
        );

        var rows = workbook.Worksheet("One").RowsUsed().ToList();
        Assert.InRange(rows[1].Height, 7 * 15, 9 * 15);
        Assert.Equal((15, 409), (rows[2].Height, rows[3].Height));
    }

    [Fact]
    public void Bars_and_grey_rows_belong_to_columns_and_hold_no_text_of_a_cell()
    {
        using var workbook = Written(
            new TableSheet(
                "One",
                ["Group", "Share", "Enough"],
                [
                    ["=1+1", 0.5, "yes"],
                    ["b", 0.25, "no"],
                ]
            )
            {
                Looks = [new("Share") { Format = "0.0%", HasBars = true }, new("Enough") { GreyAt = "no" }],
            }
        );

        var sheet = workbook.Worksheet("One");
        var formats = sheet.ConditionalFormats.OrderBy(f => f.ConditionalFormatType is XLConditionalFormatType.DataBar).ToList();
        Assert.Equal(
            [("A2:C3", "$C2=\"no\"", true), ("B2:B3", "0", false)],
            formats.Select(f => (f.Ranges.Single().RangeAddress.ToString(), f.Values[1].Value, f.StopIfTrue))
        );
        Assert.Equal(("0.0%", 0.5), (sheet.Cell(2, 2).Style.NumberFormat.Format, sheet.Cell(2, 2).GetDouble()));
        Assert.DoesNotContain(sheet.CellsUsed(), c => c.HasFormula);
    }

    [Fact]
    public void A_table_without_rows_keeps_its_headings_and_filters()
    {
        using var workbook = Written(new TableSheet("Empty", ["A", "B"], []));

        var table = Assert.Single(workbook.Worksheet("Empty").Tables);
        Assert.True(table.ShowAutoFilter);
        Assert.Equal(["A", "B"], table.Fields.Select(f => f.Name));
    }

    [Fact]
    public void The_same_tables_give_the_same_bytes()
    {
        TableSheet[] sheets =
        [
            new(
                "One",
                ["A"],
                [
                    ["x"],
                ]
            ),
            new("Two", ["B"], []),
        ];
        Assert.Equal(TableWorkbook.Of(sheets), TableWorkbook.Of(sheets));
    }

    [Fact]
    public void A_row_is_as_high_as_its_longest_text_needs()
    {
        using var workbook = Written(
            new TableSheet(
                "One",
                ["A", "B"],
                [
                    ["short", "short"],
                    ["short", new string('x', 200)],
                ]
            )
        );

        var sheet = workbook.Worksheet("One");
        Assert.InRange(sheet.Row(3).Height / sheet.Row(2).Height, 4, 8);
    }

    [Fact]
    public void A_value_that_is_neither_text_nor_number_is_refused() =>
        Assert.Throws<ArgumentException>(() =>
            TableWorkbook.Of([
                new TableSheet(
                    "One",
                    ["A"],
                    [
                        [DateTime.UnixEpoch],
                    ]
                ),
            ])
        );

    private static XLWorkbook Written(TableSheet sheet) => new(new MemoryStream(TableWorkbook.Of([sheet])));
}

using ExamDocs.Core.Records;
using static ExamDocs.Intake.Tests.Workbook.XlsxFile;

namespace ExamDocs.Intake.Tests.Workbook;

/// <summary>Rows above the headings and another name of a sheet lose nothing of the table below.</summary>
public sealed class HeadingRowTests
{
    public static TheoryData<string[]> Titles { get; } =
        new()
        {
            new string[] { Row("Tree kit register 2026") },
            new string[] { Row("Tarnfold Tree Care"), "<row/>", Row("Examined on", "2026-06-03") },
            new string[] { "<row/>", "<row/>" },
            new string[] { Row("Model", "of a register"), Row("Printed 3 June 2026", "", "page 1") },
            new string[] { Row("Examiner", "Maren Oakhollow", "Examined on", "2026-06-03") },
            new string[] { Row("", "", "Identity", "", "", "Answers") },
        };

    [Theory]
    [MemberData(nameof(Titles))]
    public void Rows_above_the_headings_are_passed_over_with_one_note(string[] above)
    {
        var read = new ReadWorkbook(
            new XlsxFile().Sheet(
                "Rope bridges",
                string.Concat(above)
                    + Row("id", "description", "serial", "cover-cut")
                    + Row("B-1", "short", "1a", "defect")
                    + Row("B-2", "long", "1b", "clear")
            )
        );
        Assert.Equal($"INT083 kit.xlsx!Rope bridges!A{above.Length + 1}", Assert.Single(read.Places));
        Assert.Equal(["1a", "1b"], read.Record.Items.Select(i => i.Serial));
        Assert.Equal(["defect", "clear"], read.Record.Examinations.Select(e => e.Observations[0].StateAsTyped));
        Assert.Equal($"Rope bridges!C{above.Length + 2}", read.Content.Cells["/items/0/serial"]);
    }

    [Theory]
    [InlineData("B-1 withdrawn, see below")]
    [InlineData("Mangel an B-2")]
    [InlineData("OK")]
    public void A_word_above_the_headings_that_says_how_an_item_is_is_an_error(string title)
    {
        var read = new ReadWorkbook(
            new XlsxFile().Sheet("Rope bridges", Row(title) + Row("id", "description", "serial") + Row("B-1", "short", "1a"))
        );
        Assert.Equal(["INT022 kit.xlsx!Rope bridges!A1", "INT083 kit.xlsx!Rope bridges!A2"], read.Places);
    }

    [Fact]
    public void A_renamed_sheet_with_a_title_is_read_with_a_note_for_each()
    {
        var cord = FitCord.InWorkbook(book =>
        {
            var sheet = book.Worksheet(FitCord.Sheet);
            sheet.Row(1).InsertRowsAbove(2);
            sheet.Cell(1, 1).SetValue("Cords of the yard");
            sheet.Name = "My cords";
        });
        Assert.Equal(("INT068 INT083", Outcome.Fit), (cord.Codes, cord.Outcome));
        Assert.Equal("HC-9950", Assert.Single(cord.Record.Items).Serial);
    }

    [Fact]
    public void A_title_in_a_file_of_separated_values_is_passed_over_too()
    {
        var read = ExamDocs.Intake.Csv.CsvRecordReader.Read(
            [
                new(
                    "Cords.csv",
                    System.Text.Encoding.UTF8.GetBytes("Register;;;\n;;;\nid;name;address;qualifications\nex1;Elm;Lane 1;guild\n")
                ),
            ],
            "kit"
        );
        Assert.Equal(["INT040", "INT083"], read.Findings.Select(f => f.Code).Where(c => c is not "INT052"));
        Assert.Equal("Lane 1", Assert.Single(read.Record!.People).Address);
    }

    /// <summary>Nothing that looks like a table is taken for a title.</summary>
    [Fact]
    public void Of_two_tables_on_a_sheet_the_first_is_read_and_the_second_is_not_lost()
    {
        var read = new ReadWorkbook(
            new XlsxFile().Sheet(
                "Rope bridges",
                Row("id", "serial", "cover-cut")
                    + Row("B-1", "1a", "defect")
                    + Row("id", "serial", "description", "heat")
                    + Row("B-2", "1b", "x", "doubt")
            )
        );
        Assert.Equal("B-1", read.Record.Items[0].Id);
        Assert.Equal("defect", read.Record.Examinations[0].Observations[0].StateAsTyped);
        Assert.Contains("INT022 kit.xlsx!Rope bridges!D4", read.Places);
    }

    [Fact]
    public void A_sheet_without_any_heading_says_so_at_each_cell()
    {
        var read = new ReadWorkbook(new XlsxFile().Sheet("Rope bridges", "<row/>" + Row("B-1", "short")));
        Assert.Equal(["INT022 kit.xlsx!Rope bridges!A2", "INT022 kit.xlsx!Rope bridges!B2"], read.Places);
    }
}

using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Workbook.Reading;
using ExamDocs.Intake.Workbook.Shape;
using static ExamDocs.Intake.Tests.Workbook.XlsxFile;

namespace ExamDocs.Intake.Tests.Workbook;

/// <summary>A column of the user's own does no harm, unless it may say how the item is or is one of ours misspelt.</summary>
public sealed class OwnColumnTests
{
    [Theory]
    [InlineData("Location", "Shelf 3")]
    [InlineData("Standort", "Regal 7, links")]
    [InlineData("Emplacement", "étagère 2")]
    [InlineData("Colour of box", "red")]
    [InlineData("Price", "129.00")]
    [InlineData("Team", "B")]
    [InlineData("Box locked", "yes")]
    [InlineData("RFID", "n/a")]
    public void A_column_of_ones_own_is_left_alone_and_said_once(string heading, string value)
    {
        var read = Bridges(Row("id", heading, "serial") + Row("B-1", value, "1a") + Row("B-2", value, "1b"));
        Assert.Equal("INT081 kit.xlsx!Rope bridges!B1", Assert.Single(read.Places));
        Assert.Equal(["1a", "1b"], read.Record.Items.Select(i => i.Serial));
        Assert.Contains("(cells filled in: 2)", read.Findings.Single(f => f.Code == "INT081").Message.Text, StringComparison.Ordinal);
        Assert.Equal(Severity.Note, read.Findings.Single(f => f.Code == "INT081").Severity);
        Assert.Equal(Outcome.Fit, WithColumn(heading, value).Outcome);
    }

    /// <summary>Heading and value: each is an error at the value, and the item is not fit.</summary>
    [Theory]
    [InlineData("Location", "defect")]
    [InlineData("Location", "shelf 3, withdrawn")]
    [InlineData("Standort", "ausgesondert")]
    [InlineData("Standort", "Regal 3 (Mangel!)")]
    [InlineData("Emplacement", "au rebut")]
    [InlineData("Stitches", "clear")]
    [InlineData("Eye", "OK")]
    [InlineData("Nähte links", "in Ordnung")]
    [InlineData("Owner", "doubtful")]
    [InlineData("Tag", "damaged")]
    [InlineData("Remarks", "shelf 3")]
    [InlineData("Notes", "shelf 3")]
    [InlineData("Bemerkung", "Regal 3")]
    [InlineData("Befund", "Schnitt 4 mm")]
    [InlineData("Zustand", "neu")]
    [InlineData("État", "neuf")]
    [InlineData("Remarques", "étagère")]
    [InlineData("Condition", "new")]
    [InlineData("Damaged", "yes")]
    [InlineData("Visual check", "done")]
    [InlineData("serail", "4711")]
    [InlineData("Serial no. on plate", "4711")]
    [InlineData("conclussion", "fit")]
    [InlineData("heat damage", "none")]
    [InlineData("Manufacturer (old)", "Elm")]
    public void A_column_that_may_say_more_is_an_error_at_each_value(string heading, string value)
    {
        var read = Bridges(Row("id", heading) + Row("B-1", value) + Row("B-2", value) + Row("B-3"));
        Assert.Equal(["INT021 kit.xlsx!Rope bridges!B2", "INT021 kit.xlsx!Rope bridges!B3"], read.Places);
        Assert.Equal(Outcome.Undetermined, WithColumn(heading, value).Outcome);
    }

    [Theory]
    [InlineData("Result", "pass", "INT082")]
    [InlineData("Results", "OK", "INT082")]
    [InlineData("Pass/Fail", "Pass", "INT082")]
    [InlineData("P/F", "passed", "INT082")]
    [InlineData("Ergebnis", "bestanden", "INT082")]
    [InlineData("Résultat", "conforme", "INT082")]
    [InlineData("Result", "fail", "INT021")]
    [InlineData("Pass/Fail", "F", "INT021")]
    [InlineData("Pass/Fail", "FAILED", "INT021")]
    [InlineData("Result", "pass with remarks", "INT021")]
    [InlineData("Result", "?", "INT021")]
    [InlineData("Ergebnis", "nicht bestanden", "INT021")]
    [InlineData("Bestanden", "nein", "INT021")]
    [InlineData("Résultat", "non conforme", "INT021")]
    public void A_column_of_results_is_no_conclusion_and_a_fail_in_it_an_error(string heading, string value, string code)
    {
        var cord = WithColumn(heading, value);
        Assert.Equal(code, cord.Codes);
        Assert.Equal(code == "INT082" ? Outcome.Fit : Outcome.Undetermined, cord.Outcome);
        var alone = FitCord.InWorkbook(book =>
        {
            AddColumn(book, heading, value);
            book.Worksheet(FitCord.Sheet).Row(1).CellsUsed().Single(c => FitCord.IsHeading(c, "conclusion")).CellBelow().Clear();
        });
        Assert.Null(alone.Record.Examinations[0].Conclusion);
        Assert.Equal(Outcome.Undetermined, alone.Outcome);
    }

    [Fact]
    public void A_row_with_nothing_but_a_column_of_ones_own_is_named_as_unread()
    {
        var read = Bridges(Row("id", "Location") + Row("B-1", "shelf 3") + Row("", "shelf 4"));
        Assert.Equal(["INT021 kit.xlsx!Rope bridges!B3", "INT081 kit.xlsx!Rope bridges!B1"], read.Places);
    }

    /// <summary>Every heading of every sheet, and every other name of one, with a letter left out is still ours.</summary>
    [Fact]
    public void A_heading_with_a_letter_left_out_is_never_taken_for_ones_own()
    {
        foreach (var shape in WorkbookShape.Known.Where(s => s.Role is not (SheetRole.Guide or SheetRole.Visit)))
        {
            foreach (var heading in shape.Columns.Select(c => c.Heading).Where(h => h.Length > 3))
                Assert.NotEqual(ForeignHeading.Own, ForeignHeadings.Of(heading.Remove(heading.Length / 2, 1), shape));
        }
    }

    private static FitCord WithColumn(string heading, string value) => FitCord.InWorkbook(book => AddColumn(book, heading, value));

    private static void AddColumn(ClosedXML.Excel.XLWorkbook book, string heading, string value)
    {
        var sheet = book.Worksheet(FitCord.Sheet);
        var column = sheet.LastColumnUsed()!.ColumnNumber() + 1;
        sheet.Cell(1, column).SetValue(heading);
        sheet.Cell(2, column).SetValue(value);
    }

    /// <summary>What stands below such a heading says how the kit is, whatever the word in the cell.</summary>
    [Theory]
    [InlineData("Serviceable", "no")]
    [InlineData("Safe?", "no")]
    [InlineData("fit?", "no")]
    [InlineData("Destroyed on", "2026-11-01")]
    [InlineData("Expiry", "2026-11-01")]
    [InlineData("Freigabe", "nein")]
    [InlineData("Péremption", "2026")]
    [InlineData("Sturz", "ja")]
    [InlineData("***", "see list")]
    public void A_heading_that_says_how_the_kit_is_is_an_error_at_each_value(string heading, string value)
    {
        var read = new ReadWorkbook(
            new XlsxFile().Sheet("Rope bridges", XlsxFile.Row("id", "serial", heading) + XlsxFile.Row("B-1", "Q100", value))
        );
        Assert.Contains(read.Findings, f => f is { Code: "INT021", Severity: Core.Findings.Severity.Error });
    }

    private static ReadWorkbook Bridges(string rows) => new(new XlsxFile().Sheet("Rope bridges", rows));
}

using ExamDocs.Core.Findings;
using ExamDocs.Core.Sentences.Messages;
using ExamDocs.Intake.Annotating;
using ExamDocs.Intake.Tests.Workbook;
using ExamDocs.Intake.Workbook;
using static ExamDocs.Intake.Tests.Workbook.XlsxFile;

namespace ExamDocs.Intake.Tests.Annotating;

/// <summary>Our list of findings is passed over when the copy is read; a sheet of the user's never is, whatever its name.</summary>
public sealed class FindingsSheetTests
{
    private static readonly string Caution = Row(FindingsSheet.Caution.Text);
    private static readonly string Headings = Row([.. FindingsSheet.Headings.Select(h => h.Text)]);

    [Fact]
    public void Ours_is_passed_over_under_any_name()
    {
        var ours =
            Caution
            + Headings
            + Checked("INT005", "error", "Visit!B2", "", "misspelt", "spell it")
            + Checked("PAR003", "warning", "", "", "missing", "type it");
        Assert.Empty(Codes("Findings", ours));
        Assert.Empty(Codes("What the program said", ours));
        Assert.Empty(Codes("Findings 2", Caution + Headings + Row(FindingsSheet.None.Text)));
    }

    [Fact]
    public void Ours_is_passed_over_in_any_language() =>
        Assert.All(TranslatedMessages.AndEnglish, language =>
            Assert.Empty(
                Codes(
                    FindingsSheet.Name.In(language),
                    Row(FindingsSheet.Caution.In(language))
                        + Row([.. FindingsSheet.Headings.Select(h => h.In(language))])
                        + Checked("PAR003", Severity.Warning.Said().In(language), "", "", "missing", "type it")
                )
            )
        );

    [Fact]
    public void A_sheet_of_the_user_s_named_Findings_is_reported()
    {
        Assert.Equal("INT020", Assert.Single(Codes("Findings", Row("item", "what I saw") + Row("BRG-1", "core visible"))));
        Assert.Equal("INT020", Assert.Single(Codes("Findings", Headings + Row("INT005", "error", "", "", "x", "y"))));
        Assert.Equal("INT020", Assert.Single(Codes("Findings", Caution)));
    }

    [Fact]
    public void Ours_with_something_added_is_reported()
    {
        var ours = Caution + Headings + Checked("INT005", "error", "Visit!B2", "", "misspelt", "spell it");
        Assert.Empty(Codes("Findings", ours));
        Assert.Equal("INT020", Assert.Single(Codes("Findings", ours.Replace("Visit!B2", "cut, withdraw", StringComparison.Ordinal))));
        Assert.Equal("INT020", Assert.Single(Codes("Findings", ours + Row("INT005", "error", "Visit!B2", "RB-1", "cut 4 mm", "withdraw"))));
        Assert.Equal("INT020", Assert.Single(Codes("Findings", ours + Row("BRG-1", "defect", "core", "visible", "now"))));
        Assert.Equal("INT020", Assert.Single(Codes("Findings", ours + "<row/>" + Row("", "defect"))));
        Assert.Equal(
            "INT020",
            Assert.Single(
                Codes("Findings", Caution + Headings + Row("INT005", "error", "Visit!B2", "", "misspelt", "spell it", "core visible"))
            )
        );
        Assert.Equal(
            "INT020",
            Assert.Single(Codes("Findings", Caution + Headings + Row("INT005", "<c><v>4</v></c>", "Visit!B2", "", "misspelt", "spell it")))
        );
    }

    [Fact]
    public void What_is_written_is_what_is_known_again()
    {
        var before = OfficeWorkbook.Make();
        var after = new Annotated().At(OfficeWorkbook.Sheet, "A2").Nowhere("no place").Copy(before);
        Assert.Equal(["INT020"], Read(after).Where(c => c is "INT020"));
        Assert.Equal(Read(before).Where(c => c is not "INT035"), Read(after));
    }

    private static string Checked(params string[] cells) => Row([.. cells, FindingsSheet.Check(cells)]);

    private static List<string> Read(byte[] workbook) =>
        [.. WorkbookReader.Read(new MemoryStream(workbook), "kit.xlsx").Findings.Select(f => f.Code)];

    /// <summary>Beside a sheet that is known: a workbook without one is refused as a whole.</summary>
    private static List<string> Codes(string sheet, string rows) =>
        Read(new XlsxFile().Sheet("People", Row("id", "name")).Sheet(sheet, rows).Stream().ToArray());
}

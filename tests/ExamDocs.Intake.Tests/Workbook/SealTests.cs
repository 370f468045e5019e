using ExamDocs.Core.Criteria;
using ExamDocs.Core.Findings;
using ExamDocs.Intake.Tests.Annotating;
using ExamDocs.Intake.Workbook;

namespace ExamDocs.Intake.Tests.Workbook;

/// <summary>The notes of an annotated copy are known again when it is read, and a word typed among them is not lost.</summary>
public sealed class SealTests
{
    private const string Sheet = "Rope bridges";

    private static readonly byte[] Kit = new XlsxFile()
        .Sheet(Sheet, XlsxFile.Row("id", "cover-cut", "heat") + XlsxFile.Row("B-1", "clear", "clear"))
        .Stream()
        .ToArray();

    [Fact]
    public void A_copy_annotated_once_or_twice_reads_without_a_word_about_its_notes()
    {
        var once = new Annotated().At(Sheet, "A2").At(Sheet, "B2", Severity.Warning, "first\nsecond line").At(Sheet, "A1").Copy(Kit);
        var twice = new Annotated().At(Sheet, "B2", message: "another thing").At(Sheet, "C2").Copy(once);
        Assert.Empty(Marks(once));
        Assert.Empty(Marks(twice));
    }

    [Theory]
    [InlineData("something is wrong", "nothing is wrong")]
    [InlineData("What to do", "It is cut. What to do")]
    [InlineData("(ExamDocs ", "CUT 4 mm\n(ExamDocs ")]
    [InlineData("ERROR", "WITHDRAW\n\nERROR")]
    public void A_note_with_a_word_changed_or_added_is_a_remark(string was, string typed)
    {
        var copy = new ZipParts(new Annotated().At(Sheet, "B2").Copy(Kit)).Replace("xl/comments1.xml", was, typed).File();
        Assert.Equal("INT065 /items/0/B2", Assert.Single(Marks(copy)));
    }

    [Fact]
    public void A_remark_below_ours_is_shown_alone()
    {
        var note = new Annotated().At(Sheet, "B2").Copy(Kit);
        var text = new ZipParts(note).AllNotes()[Sheet + "!B2"].Text;
        Assert.Equal("", Seal.Besides(text));
        Assert.Equal("", Seal.Besides(text.Replace("\n", "\r\n", StringComparison.Ordinal) + " \n"));
        Assert.Equal("cut 4 mm", Seal.Besides(text + "\ncut 4 mm"));
        Assert.Equal("cut 4 mm", Seal.Besides("cut 4 mm\n\n" + text));
        Assert.Equal("a b", Seal.Besides("a\n" + text + "\n\n b \n" + text));
        Assert.Equal("(ExamDocs 00000000)", Seal.Besides("(ExamDocs 00000000)"));
    }

    /// <summary>A note of nothing but closing lines costs a few times its length to look through, and is a remark.</summary>
    [Fact]
    public void A_note_made_to_be_looked_through_for_ever_is_a_remark()
    {
        var note = string.Concat(Enumerable.Repeat("(ExamDocs 00000000)\n", 1_600));
        for (var n = 0; n < 700; n++)
            Assert.StartsWith("(ExamDocs 00000000)", Seal.Besides(note), StringComparison.Ordinal);
    }

    [Fact]
    public void The_notes_survive_a_spreadsheet_program()
    {
        LibreOffice.SkipWhereMissing();
        var blank = RoundTripTests.Written(RoundTripTests.Example(), Catalogue.All, forNextVisit: true).ToArray();
        var copy = new Annotated().At(Sheet, "A2").At(Sheet, "B3", Severity.Warning, "first\nsecond line").At("Visit", "B2").Copy(blank);
        Assert.Empty(Marks(copy));
        Assert.Empty(Marks(Assert.Single(LibreOffice.Save("xlsx", copy))));
    }

    private static List<string> Marks(byte[] workbook) =>
        [
            .. WorkbookReader
                .Read(new MemoryStream(workbook), "kit.xlsx")
                .Findings.Where(f => f.Code is "INT020" || string.CompareOrdinal(f.Code, "INT060") >= 0)
                .Select(f => $"{f.Code} {f.Path}"),
        ];
}

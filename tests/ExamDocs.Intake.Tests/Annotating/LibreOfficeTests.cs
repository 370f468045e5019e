using ExamDocs.Core.Findings;
using ExamDocs.Intake.Tests.Workbook;
using ExamDocs.Intake.Workbook;

namespace ExamDocs.Intake.Tests.Annotating;

/// <summary>A spreadsheet program opens the copies, whoever wrote the workbook, and shows old notes and new ones.</summary>
public sealed class LibreOfficeTests
{
    private static readonly Annotated Found = new Annotated()
        .At(OfficeWorkbook.Sheet, "A2")
        .At(OfficeWorkbook.Sheet, "H4", Severity.Warning)
        .At(OfficeWorkbook.Sheet, "D2", Severity.Note);

    [Fact]
    public void It_shows_everything_it_showed_before_and_the_marks()
    {
        LibreOffice.SkipWhereMissing();
        var office = OfficeWorkbook.Make();
        var own = RoundTripTests.Written(FullRecord.Make(), [], forNextVisit: false).ToArray();
        var saved = LibreOffice.Save("xlsx:Calc MS Excel 2007 XML", own)[0];
        var befores = new[] { office, own, saved };
        var afters = befores.Select(b => Found.Copy(b)).ToArray();
        Assert.All(befores.Zip(afters), p => Assert.Empty(CopyDifference.Of(p.First, p.Second, Found.Cells)));
        Assert.All(befores.Zip(afters), p =>
            Assert.Empty(OpenXmlErrors.Of(p.Second).Except(OpenXmlErrors.Of(p.First), StringComparer.Ordinal))
        );
        Assert.Equal(
            TreeText.Of(WorkbookReader.Read(new MemoryStream(own), "kit.xlsx").Root!),
            TreeText.Of(WorkbookReader.Read(new MemoryStream(afters[2]), "kit.xlsx").Root!)
        );

        var seen = LibreOffice.Save("fods", [.. befores, .. afters]).Select(FlatSpreadsheet.Cells).ToList();
        for (var n = 0; n < befores.Length; n++)
            SeesAll(seen[n], seen[n + befores.Length]);
        Assert.Equal(("of:=UPPER([.B2])", null), (seen[0]["Rope bridges!B3"].Formula, seen[3]["Rope bridges!B3"].Formula));
        Assert.StartsWith(OfficeWorkbook.FirstNote, seen[3]["Rope bridges!A2"].Note, StringComparison.Ordinal);
    }

    [Fact]
    public void What_it_saves_of_a_copy_is_the_same_record_and_the_list_is_known_again()
    {
        LibreOffice.SkipWhereMissing();
        var own = RoundTripTests.Written(FullRecord.Make(), [], forNextVisit: false).ToArray();
        var saved = LibreOffice.Save("xlsx:Calc MS Excel 2007 XML", Found.Copy(own))[0];
        var content = WorkbookReader.Read(new MemoryStream(saved), "kit.xlsx");
        Assert.Equal(TreeText.Of(WorkbookReader.Read(new MemoryStream(own), "kit.xlsx").Root!), TreeText.Of(content.Root!));
        Assert.Empty(content.Findings);
    }

    private static void SeesAll(Dictionary<string, OfficeCell> before, Dictionary<string, OfficeCell> after)
    {
        var marked = Found.Cells.Select(c => $"{c.Sheet}!{c.Cell}").ToList();
        Assert.NotEmpty(before);
        foreach (var (place, cell) in before)
        {
            // What is calculated anew at each opening is another value each time.
            if (cell.Formula?.Contains("NOW(", StringComparison.Ordinal) is true)
                continue;
            var now = after[place];
            if (!marked.Contains(place, StringComparer.Ordinal))
                Assert.Equal(cell with { Formula = null }, now);
            Assert.Equal((cell.Text, null), (now.Text, now.Formula));
            Assert.StartsWith(cell.Note ?? "", now.Note ?? "", StringComparison.Ordinal);
        }
        Assert.All(marked, place => Assert.Contains("TST001", after[place].Note, StringComparison.Ordinal));
        Assert.Equal(3, marked.Select(place => after[place].Fill).Distinct(StringComparer.Ordinal).Count(f => f is not null));
        Assert.Equal("Rope bridges!A2", after["Findings!C3"].Text);
    }
}

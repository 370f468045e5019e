using ExamDocs.Core.Findings;
using ExamDocs.Intake.Annotating;
using ExamDocs.Intake.Tests.Workbook;
using ExamDocs.Intake.Workbook;
using ExamDocs.Intake.Workbook.Package;
using static ExamDocs.Intake.Tests.Workbook.XlsxFile;

namespace ExamDocs.Intake.Tests.Annotating;

/// <summary>What was read as what stands in the copy beside every cell that it is about.</summary>
public sealed class ReadAsCopyTests
{
    [Fact]
    public void Each_cell_has_a_note_that_says_how_it_was_read_and_the_list_says_it_once()
    {
        var file = new XlsxFile().Sheet(
            "Rope bridges",
            Row("id", "Location", "manufactured", "heat") + Row("B-1", "shelf 3", "May 2024", "OK") + Row("B-2", "", "2024-06", "ok")
        );
        using var source = file.Stream();
        var content = WorkbookReader.Read(source, "kit.xlsx");
        source.Position = 0;
        using var copy = new MemoryStream();
        Assert.Null(AnnotatedWorkbook.Write(source, copy, content.Findings, SourceMap.ForWorkbook("kit.xlsx", content.Cells)));

        copy.Position = 0;
        using var package = WorkbookPackage.Open(copy, new ReadingBudget());
        var comments = SheetComments.Of(package, "xl/worksheets/sheet0.xml", new ReadingBudget());
        Assert.Contains("'May 2024' read as 2024-05", comments[(2, 3)][0], StringComparison.Ordinal);
        Assert.Contains("'OK' read as clear", comments[(2, 4)][0], StringComparison.Ordinal);
        Assert.Contains("'ok' read as clear", comments[(3, 4)][0], StringComparison.Ordinal);
        Assert.Contains("the column 'Location'", comments[(1, 2)][0], StringComparison.Ordinal);
        Assert.DoesNotContain((3, 3), comments.Keys);
        Assert.Equal(2, FindingsList.Of(copy.ToArray(), "Findings").Rows.Count(row => row.Contains("INT080")));
    }
}

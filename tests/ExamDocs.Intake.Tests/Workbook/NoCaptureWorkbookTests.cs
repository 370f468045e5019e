using ExamDocs.Core.Findings;
using ExamDocs.Intake.Csv;
using ExamDocs.Intake.Workbook;
using static ExamDocs.Intake.Tests.Workbook.XlsxFile;

namespace ExamDocs.Intake.Tests.Workbook;

/// <summary>A list of somebody's own is told to be none of ours in one sentence; beside a sheet of ours it is named, row by row.</summary>
public sealed class NoCaptureWorkbookTests
{
    private static readonly string Own = Row("No.", "Make/Model", "Serial No", "Result") + Row("1", "Fennick Works", "FW-1", "Pass");

    [Fact]
    public void Of_sheets_that_are_all_unknown_nothing_is_read()
    {
        var read = WorkbookRecordReader.Read(
            new XlsxFile().Sheet("Kit list", Own).Sheet("Notes", Row("see the van")).Stream(),
            "list.xlsx"
        );

        Assert.Null(read.Record);
        Assert.StartsWith("this is not a capture workbook: ", read.Unreadable, StringComparison.Ordinal);
        Assert.Contains("'Kit list' (2 rows), 'Notes' (1 row)", read.Unreadable, StringComparison.Ordinal);
    }

    [Fact]
    public void Beside_a_known_sheet_each_row_is_named_as_unread()
    {
        var read = WorkbookRecordReader.Read(
            new XlsxFile().Sheet("Kit list", Own).Sheet("People", Row("id", "name") + Row("ex1", "Ida Brackenfold")).Stream(),
            "list.xlsx"
        );

        Assert.Null(read.Unreadable);
        Assert.Equal("INT020", Assert.Single(read.Findings, f => f.Severity is Severity.Error && f.Path.Contains("Kit list")).Code);
        Assert.Equal([new("list.xlsx", "Kit list", "A1"), new SourcePlace("list.xlsx", "Kit list", "A2")], read.UnreadRows);
    }

    [Fact]
    public void A_row_of_a_known_sheet_under_no_known_heading_is_named_as_unread()
    {
        var read = WorkbookRecordReader.Read(
            new XlsxFile().Sheet("People", Row("id", "name", "shoe size") + Row("ex1", "Ida Brackenfold") + Row("", "", "38")).Stream(),
            "list.xlsx"
        );

        Assert.Equal("A3", Assert.Single(read.UnreadRows).At);
    }

    [Fact]
    public void So_it_is_with_files_of_separated_values()
    {
        CsvFile own = new("list.csv", "No.,Result\n1,Pass\n"u8.ToArray());
        CsvFile people = new("People.csv", "id,name\nex1,Ida Brackenfold\n"u8.ToArray());

        var alone = CsvRecordReader.Read([own], "kit");
        var beside = CsvRecordReader.Read([own, people], "kit");

        Assert.Contains("'list.csv' (2 rows)", alone.Unreadable, StringComparison.Ordinal);
        Assert.Equal([new("kit/list.csv", null, "A1"), new SourcePlace("kit/list.csv", null, "A2")], beside.UnreadRows);
    }
}

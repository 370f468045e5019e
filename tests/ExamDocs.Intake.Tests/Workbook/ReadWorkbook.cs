using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Workbook;

namespace ExamDocs.Intake.Tests.Workbook;

/// <summary>A workbook put together by hand, read and bound, with findings as code and place.</summary>
internal sealed class ReadWorkbook
{
    public ReadWorkbook(XlsxFile file)
    {
        using var stream = file.Stream();
        Content = WorkbookReader.Read(stream, "kit.xlsx");
        Assert.Null(Content.Unreadable);
        var (record, slips) = RecordBinder.Bind(Content.Root!);
        Record = record;
        var map = SourceMap.ForWorkbook("kit.xlsx", Content.Cells);
        Places = [.. Content.Findings.Concat(slips).Select(f => $"{f.Code} {map.Locate(f.Path)}")];
    }

    public WorkbookContent Content { get; }

    public ExaminationRecord Record { get; }

    public List<string> Places { get; }
}

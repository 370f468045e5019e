using ExamDocs.Core;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Workbook;

namespace ExamDocs.Intake.Tests.Workbook;

/// <summary>A workbook put together by hand, read and bound, with findings as code and place.</summary>
internal sealed class ReadWorkbook
{
    public ReadWorkbook(XlsxFile file, KnownRules? rules = null)
    {
        using var stream = file.Stream();
        Content = WorkbookReader.Read(stream, "kit.xlsx", rules);
        Assert.Null(Content.Unreadable);
        var (record, slips) = RecordBinder.Bind(Content.Root!);
        Record = record;
        var map = SourceMap.ForWorkbook("kit.xlsx", Content.Cells);
        var findings = Content.Findings.Concat(slips).ToList();
        Missing = [.. findings.Where(IsMissing).Select(f => f.Message.Text)];
        ReadAs = [.. findings.Where(IsReadAs).Select(f => f.Message.Text)];
        var others = findings.Where(f => !IsMissing(f) && !IsReadAs(f)).ToList();
        Places = [.. others.Select(f => $"{f.Code} {map.Locate(f.Path)}")];
        Hints = [.. others.Select(f => f.Hint.Text)];
        Findings = findings;
    }

    public WorkbookContent Content { get; }

    public ExaminationRecord Record { get; }

    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>What was typed in another way, and how it was read.</summary>
    public List<string> ReadAs { get; }

    /// <summary>All but those, and the columns that the short sheets of tests lack.</summary>
    public List<string> Places { get; }

    public List<string> Hints { get; }

    /// <summary>What is said of columns that are missing.</summary>
    public List<string> Missing { get; }

    private static bool IsReadAs(Finding finding) => finding.Code == ReadAsFindings.ReadAs.Code;

    private static bool IsMissing(Finding finding) => finding.Code == SheetFindings.ColumnMissing.Code;
}

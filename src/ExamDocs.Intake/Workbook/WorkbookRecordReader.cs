using ExamDocs.Core.Findings;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Workbook;

/// <summary>Reads a record from a workbook: the same data as JSON gives the same record.</summary>
public static class WorkbookRecordReader
{
    /// <summary>
    /// Whether a file is for this reader to tell apart, whatever it is called: a workbook, another archive or an older Office file.
    /// </summary>
    /// <param name="first">Its first bytes, four at least where it has so many.</param>
    public static bool IsFor(ReadOnlySpan<byte> first) => FileKind.IsPackage(first);

    /// <param name="stream">The workbook.</param>
    /// <param name="fileName">The name that findings give.</param>
    /// <param name="rules">The categories it may have sheets of; left out, those built in.</param>
    public static ReadResult Read(Stream stream, string fileName, KnownRules? rules = null)
    {
        var content = WorkbookReader.Read(stream, fileName, rules);
        var sources = SourceMap.ForWorkbook(fileName, content.Cells, content.HeadingOf);
        if (content.Root is null)
            return new ReadResult(null, content.Findings, sources, content.Unreadable) { HasNoKnownSheet = content.HasNoKnownSheet };
        try
        {
            var (record, findings) = RecordBinder.Bind(content.Root);
            return new ReadResult(record, [.. content.Findings, .. findings], sources, null)
            {
                UnreadRows = [.. content.UnreadRows.Select(r => sources.OfCell(r.Sheet, FormattableString.Invariant($"A{r.Row}")))],
            };
        }
        catch (UnreadableWorkbookException e)
        {
            return new ReadResult(null, [], sources, e.Message);
        }
    }
}

using ExamDocs.Core.Findings;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Json;

/// <summary>Reads a record in the format examdocs/1 from JSON.</summary>
public static class JsonRecordReader
{
    /// <summary>Largest file that is parsed, bytes.</summary>
    public const int MaxBytes = JsonTree.MaxBytes;

    /// <param name="utf8">The file's bytes.</param>
    /// <param name="fileName">The name that findings give.</param>
    public static ReadResult Read(ReadOnlyMemory<byte> utf8, string fileName)
    {
        var sources = SourceMap.ForJson(fileName);
        var (root, unreadable) = JsonTree.Parse(utf8, isRecord: true);
        if (root is null)
            return new ReadResult(null, [], sources, unreadable);
        if (EmbeddedRecord.IsPartOfVisit(root))
            return new ReadResult(null, [], sources, EmbeddedRecord.IsPart);
        try
        {
            var (record, findings) = RecordBinder.Bind(root);
            return new ReadResult(record, findings, sources, null);
        }
        catch (UnreadableWorkbookException e)
        {
            return new ReadResult(null, [], sources, e.Message);
        }
    }
}

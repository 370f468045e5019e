using ExamDocs.Core.Findings;
using ExamDocs.Documents.Finishing;
using ExamDocs.Intake;
using ExamDocs.Intake.Json;

namespace ExamDocs.UseCases;

/// <summary>Reads the record that a printed document was made from out of the document.</summary>
internal static class ReadDocument
{
    /// <summary>Larger than any document we print, bytes, inclusive.</summary>
    private const int MostBytes = 256 * 1024 * 1024;

    public static ReadResult From(Stream stream, string path)
    {
        if (stream.Length > MostBytes)
            return Refuse(path, "the file is larger than 256 MiB");
        var pdf = new byte[stream.Length];
        stream.ReadExactly(pdf);
        try
        {
            return AttachedFiles.Find(pdf, EmbeddedData.RecordName, JsonRecordReader.MaxBytes) is { } record
                ? EmbeddedRecord.Read(record, path)
                : Refuse(path, "there is no recorded examination in this PDF; give the record it was made from");
        }
        catch (PdfSyntaxException)
        {
            return Refuse(path, "this PDF is none that was printed here, or was changed since; give the record it was made from");
        }
    }

    private static ReadResult Refuse(string path, string why) => new(null, [], SourceMap.ForJson(path), why);
}

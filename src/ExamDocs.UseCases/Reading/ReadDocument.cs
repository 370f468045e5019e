using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.PdfSyntax;
using ExamDocs.Intake;
using ExamDocs.Intake.Json;

namespace ExamDocs.UseCases.Reading;

/// <summary>Reads the record that a printed document was made from; the document has it embedded.</summary>
internal static class ReadDocument
{
    /// <summary>Largest file that is read, in bytes, inclusive; no document that we print is so large.</summary>
    internal const int MostBytes = 256 * 1024 * 1024;

    public static ReadResult From(byte[] pdf, string path)
    {
        try
        {
            return AttachedFiles.Find(pdf, EmbeddedFiles.RecordName, JsonRecordReader.MaxBytes) is { } record
                ? EmbeddedRecord.Read(record, path)
                : ReadInput.Refuse(path, "there is no recorded examination in this PDF; give the record it was made from");
        }
        catch (PdfSyntaxException)
        {
            return ReadInput.Refuse(
                path,
                "this PDF was not printed by this program, or was changed since; give the record that it was made from"
            );
        }
    }
}

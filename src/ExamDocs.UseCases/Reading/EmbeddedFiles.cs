using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.PdfSyntax;
using ExamDocs.Intake.Json;
using ExamDocs.Templates.Wording;

namespace ExamDocs.UseCases.Reading;

/// <summary>The data files within a document, by their names.</summary>
internal static class EmbeddedFiles
{
    public const string RecordName = "examdocs.json";

    public const string OutcomeName = "outcome.json";

    public const string DocumentName = "document.json";

    /// <summary>The data of a document that was issued, byte for byte.</summary>
    /// <exception cref="PdfSyntaxException">They are not whole.</exception>
    public static IReadOnlyList<AttachedData> Within(byte[] pdf) =>
        [
            .. new[]
            {
                (RecordName, English.Attachments.Record),
                (OutcomeName, English.Attachments.Outcome),
                (DocumentName, English.Attachments.Document),
            }.Select(f => new AttachedData(
                f.Item1,
                f.Item2,
                AttachedFiles.Find(pdf, f.Item1, JsonRecordReader.MaxBytes) ?? throw new PdfSyntaxException("its data are missing")
            )),
        ];
}

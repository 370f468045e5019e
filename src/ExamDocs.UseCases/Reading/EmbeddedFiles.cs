using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.PdfSyntax;
using ExamDocs.Intake.Json;

namespace ExamDocs.UseCases.Reading;

/// <summary>The data files embedded in a document: their names, and the descriptions that a PDF reader shows.</summary>
internal static class EmbeddedFiles
{
    public const string RecordName = "examdocs.json";

    public const string OutcomeName = "outcome.json";

    public const string DocumentName = "document.json";

    public const string RecordDescription = "The examination as recorded (examdocs/1)";

    public const string OutcomeDescription = "What was determined from it, with the reasons (examdocs-findings/1)";

    public const string DocumentDescription = "What the document rests on besides (examdocs-document/1)";

    /// <summary>The embedded data of an issued document, byte for byte.</summary>
    /// <exception cref="PdfSyntaxException">The data are not whole.</exception>
    public static IReadOnlyList<AttachedData> Within(byte[] pdf) =>
        [
            .. new[] { (RecordName, RecordDescription), (OutcomeName, OutcomeDescription), (DocumentName, DocumentDescription) }.Select(
                f => new AttachedData(
                    f.Item1,
                    f.Item2,
                    AttachedFiles.Find(pdf, f.Item1, JsonRecordReader.MaxBytes) ?? throw new PdfSyntaxException("its data are missing")
                )
            ),
        ];
}

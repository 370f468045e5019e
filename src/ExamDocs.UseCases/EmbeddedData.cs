using ExamDocs.Core.Determination;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.PdfSyntax;
using ExamDocs.Intake.Json;
using ExamDocs.Templates;
using ExamDocs.Templates.Wording;

namespace ExamDocs.UseCases;

/// <summary>
/// What goes into a document besides its pages: the record of the whole visit, so that nothing an outcome rests on is
/// left out, the outcomes of the items it is about, and what else it rests on. Photos stand in the pages only.
/// </summary>
internal sealed class EmbeddedData
{
    public const string RecordName = "examdocs.json";

    public const string OutcomeName = "outcome.json";

    public const string DocumentName = "document.json";

    private readonly Dictionary<DeterminedVisit, AttachedData> _records = new(ReferenceEqualityComparer.Instance);

    public IReadOnlyList<AttachedData> Of(DocumentJob job, DocumentIdentity identity) =>
    [
        RecordOf(job.Visit),
        new AttachedData(OutcomeName, English.Attachments.Outcome, FindingsFile.Write(job.Items, RecordName)),
        new AttachedData(DocumentName, English.Attachments.Document, DocumentFile.Write(job.Basis(identity))),
    ];

    /// <summary>The data of a document that was issued, byte for byte.</summary>
    /// <exception cref="PdfSyntaxException">They are not whole.</exception>
    public static IReadOnlyList<AttachedData> Within(byte[] pdf) =>
    [
        .. new[] { (RecordName, English.Attachments.Record), (OutcomeName, English.Attachments.Outcome), (DocumentName, English.Attachments.Document) }
            .Select(f => new AttachedData(f.Item1, f.Item2, AttachedFiles.Find(pdf, f.Item1, JsonRecordReader.MaxBytes) ?? throw new PdfSyntaxException("its data are missing"))),
    ];

    private AttachedData RecordOf(DeterminedVisit visit)
    {
        if (!_records.TryGetValue(visit, out var record))
            _records[visit] = record = new AttachedData(RecordName, English.Attachments.Record, EmbeddedRecord.Write(visit.Record, visit.Reading));
        return record;
    }
}

using ExamDocs.Core.Determination;
using ExamDocs.Documents.Finishing;
using ExamDocs.Intake.Json;
using ExamDocs.Templates.Wording;

namespace ExamDocs.UseCases;

/// <summary>
/// What goes into a document besides its pages: the record of the whole visit, so that nothing an outcome rests on is
/// left out, and the outcomes of the items it is about.
/// </summary>
internal sealed class EmbeddedData
{
    public const string RecordName = "examdocs.json";

    public const string OutcomeName = "outcome.json";

    private readonly Dictionary<DeterminedVisit, AttachedData> _records = new(ReferenceEqualityComparer.Instance);

    public IReadOnlyList<AttachedData> Of(DocumentJob job) =>
    [
        RecordOf(job.Visit),
        new AttachedData(OutcomeName, English.Attachments.Outcome, FindingsFile.Write(job.Items, RecordName)),
    ];

    private AttachedData RecordOf(DeterminedVisit visit)
    {
        if (!_records.TryGetValue(visit, out var record))
            _records[visit] = record = new AttachedData(RecordName, English.Attachments.Record, EmbeddedRecord.Write(visit.Record, visit.Reading));
        return record;
    }
}

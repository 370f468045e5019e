using ExamDocs.Core.Determination;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.PdfSyntax;
using ExamDocs.Intake.Json;
using ExamDocs.Templates;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Issuing;

/// <summary>
/// What goes into a document besides its pages: the record of the whole visit, so that nothing an outcome rests on is
/// left out, the outcomes of the items it is about, and what else it rests on. Photos stand in the pages only.
/// </summary>
internal sealed class EmbeddedData
{
    private readonly Dictionary<DeterminedVisit, AttachedData> _records = new(ReferenceEqualityComparer.Instance);

    public IReadOnlyList<AttachedData> Of(DocumentJob job, DocumentIdentity identity) =>
        [
            RecordOf(job.Visit),
            new AttachedData(
                EmbeddedFiles.OutcomeName,
                EmbeddedFiles.OutcomeDescription,
                FindingsFile.Write(job.Items, EmbeddedFiles.RecordName)
            ),
            new AttachedData(EmbeddedFiles.DocumentName, EmbeddedFiles.DocumentDescription, DocumentFile.Write(job.Basis(identity))),
        ];

    private AttachedData RecordOf(DeterminedVisit visit)
    {
        if (!_records.TryGetValue(visit, out var record))
            _records[visit] = record = new AttachedData(
                EmbeddedFiles.RecordName,
                EmbeddedFiles.RecordDescription,
                EmbeddedRecord.Write(visit.Recorded, visit.Reading)
            );
        return record;
    }
}

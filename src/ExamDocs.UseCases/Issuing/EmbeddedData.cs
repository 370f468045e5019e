using System.Security.Cryptography;
using ExamDocs.Core.Cases;
using ExamDocs.Core.Determination;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.Rendering;
using ExamDocs.Intake;
using ExamDocs.Intake.Json;
using ExamDocs.Templates;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Issuing;

/// <summary>
/// What goes into a document besides its pages: the record of the visit, the outcomes of the items it is about, and what else it rests
/// on. Photos stand in the pages only. The record goes in whole, or, where the visit is large, as far as it bears on the document: then
/// the document was made once more from that part alone, and came out the same.
/// </summary>
/// <param name="renderer">Makes the pages.</param>
internal sealed class EmbeddedData(DocumentRenderer renderer)
{
    /// <summary>
    /// The largest visit of which every document holds the whole record, items, inclusive, and the largest part: each is determined for
    /// its document alone, and one that was nearly the whole visit would make that take as long as the visit squared.
    /// </summary>
    internal const int MostItemsWhole = 100;

    private readonly Dictionary<DeterminedVisit, Whole> _wholes = new(ReferenceEqualityComparer.Instance);

    private sealed record Whole(AttachedData Record, string Sha256);

    /// <param name="job">The job.</param>
    /// <param name="identity">Its number and day.</param>
    /// <param name="html">The page that it is printed from.</param>
    public async Task<IReadOnlyList<AttachedData>> OfAsync(DocumentJob job, DocumentIdentity identity, string html) =>
        await PartAsync(job, identity, html)
        ?? Files(
            WholeOf(job.Visit).Record,
            FindingsFile.Write(job.Items, EmbeddedFiles.RecordName),
            DocumentFile.Write(job.Basis(identity))
        );

    /// <returns>Null where the document holds the whole record.</returns>
    private async Task<IReadOnlyList<AttachedData>?> PartAsync(DocumentJob job, DocumentIdentity identity, string html)
    {
        var items = job.Visit.Recorded.Items.Count;
        // A schedule says which items of its visit it leaves out.
        if (items <= MostItemsWhole || job.IsSchedule)
            return null;
        var slice = job.Visit.Slices.Of(job.Items.Select(i => i.Item.Id));
        if (slice.Record.Items.Count > MostItemsWhole)
            return null;
        var record = EmbeddedRecord.Write(slice.Record, slice.Reading, new PartOfVisit(items, WholeOf(job.Visit).Sha256));
        var basis = job.Basis(identity) with { History = slice.History };
        // From here on as whoever verifies the document reads it.
        if (DocumentContents.Read(DocumentFile.Write(basis), record, []).Contents is not { } contents)
            return null;
        if (contents.Determined(job.Visit.Rules) is not { } visit)
            return null;
        foreach (var again in RecomposedDocument.Jobs(contents, visit))
        {
            if (IsDecidedAlike(job, again, slice.Places) && await IsPrintedAlikeAsync(again, identity, basis, html))
                return Files(
                    RecordFile(record),
                    FindingsFile.Write(again.Items, EmbeddedFiles.RecordName),
                    DocumentFile.Write(basis with { OwnRules = OwnRules.Of(visit) })
                );
        }
        return null;
    }

    private static bool IsDecidedAlike(DocumentJob job, DocumentJob again, SlicedPlaces places) =>
        FindingsFile
            .Write(job.Items, EmbeddedFiles.RecordName)
            .AsSpan()
            .SequenceEqual(FindingsFile.Write(again.Items, EmbeddedFiles.RecordName, places.InWhole));

    private async Task<bool> IsPrintedAlikeAsync(DocumentJob again, DocumentIdentity identity, DocumentBasis basis, string html)
    {
        var page = ComposedPage.Of(await again.RenderAsync(renderer, identity with { Signature = basis.Signature }));
        // The record has no photos: where they stand is known, not what they show.
        return ComposedPage.Of(html).IsSameAs(page with { Pictures = [.. page.Pictures.Select(_ => "")] });
    }

    private Whole WholeOf(DeterminedVisit visit)
    {
        if (!_wholes.TryGetValue(visit, out var whole))
        {
            var record = EmbeddedRecord.Write(visit.Recorded, visit.Reading);
            _wholes[visit] = whole = new(RecordFile(record), Convert.ToHexStringLower(SHA256.HashData(record)));
        }
        return whole;
    }

    private static AttachedData RecordFile(byte[] record) => new(EmbeddedFiles.RecordName, EmbeddedFiles.RecordDescription, record);

    private static IReadOnlyList<AttachedData> Files(AttachedData record, byte[] outcome, byte[] document) =>
        [
            record,
            new(EmbeddedFiles.OutcomeName, EmbeddedFiles.OutcomeDescription, outcome),
            new(EmbeddedFiles.DocumentName, EmbeddedFiles.DocumentDescription, document),
        ];
}

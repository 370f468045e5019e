using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates;
using ExamDocs.Templates.AuthorityCopy;
using ExamDocs.Templates.Report;
using ExamDocs.Templates.Shared;

namespace ExamDocs.UseCases.Issuing;

/// <summary>The reports of a visit.</summary>
internal static class ComposeReports
{
    /// <summary>The most items that one report takes, inclusive: to print and read back so many takes a gibibyte.</summary>
    internal const int MostItems = 1000;

    /// <summary>One report has one law, one author and one signature, and no more items than can be printed in bearable memory.</summary>
    /// <param name="visit">The determined visit.</param>
    /// <param name="perItem">One report for each item instead of a schedule of all.</param>
    /// <param name="photos">The photo of an observation, where there is one that can be printed; null for none.</param>
    /// <param name="leftOut">Items that a schedule goes without and names as not reported; null for none.</param>
    /// <param name="most">The most items of one report, inclusive, 1 or more.</param>
    public static IEnumerable<DocumentJob> Of(
        DeterminedVisit visit,
        bool perItem,
        Func<Observation, PhotoPrint?>? photos,
        LeftOutItems? leftOut,
        int most = MostItems
    )
    {
        var groups = visit.Items.Where(i => i.MayBeReported).GroupBy(i => (i.RegimeId, Author: Author(i), Signer: Signer(i))).ToList();
        var parts = groups.SelectMany(g => InParts([.. g], perItem ? int.MaxValue : most)).ToList();
        return from p in parts.Index()
            let left = leftOut is null ? LeftOutItems.None : leftOut with { Items = [.. p.Item.Where(leftOut.Items.Contains)] }
            let reported = p.Item.Except(left.Items).ToList()
            where reported.Count > 0
            from items in perItem
                ? reported.Select(i => (DeterminedItem[])[i])
                :
                [
                    [.. reported],
                ]
            select Report(
                visit,
                items,
                perItem,
                photos,
                left,
                parts.Count > groups.Count ? new ReportPart(p.Index + 1, parts.Count) : null
            );
    }

    /// <summary>Parts of nearly one size, in the order of the record.</summary>
    private static IEnumerable<DeterminedItem[]> InParts(IReadOnlyList<DeterminedItem> items, int most)
    {
        var parts = (int)Math.Ceiling((double)items.Count / most);
        return items.Chunk((items.Count + parts - 1) / parts);
    }

    private static DocumentJob Report(
        DeterminedVisit visit,
        IReadOnlyList<DeterminedItem> items,
        bool perItem,
        Func<Observation, PhotoPrint?>? photos,
        LeftOutItems left,
        ReportPart? part
    )
    {
        var (author, signer) = (visit.Person(Author(items[0]))!, visit.Person(Signer(items[0]))!);
        ReportModel Model(DocumentIdentity identity) => new(identity, visit, items, author, signer, photos, left, part);
        return new DocumentJob(DocumentTypes.Report, visit, items, (renderer, identity) => renderer.HtmlAsync(Model(identity)))
        {
            PerItem = perItem,
            SignedBy = signer.Name,
            Copy = items.Any(i => AuthorityDuty.IsOwedFor(visit, i)) ? original => CopyOf(original, visit, items, perItem, Model) : null,
            LeftOut = left,
            Without = less =>
                items.Except(less.Items).ToList() is { Count: > 0 } rest ? Report(visit, rest, perItem, photos, less, part) : null,
        };
    }

    /// <summary>The copy for the enforcing authority, with its cover: the same report under a number of its own.</summary>
    private static DocumentJob CopyOf(
        CopiedReport original,
        DeterminedVisit visit,
        IReadOnlyList<DeterminedItem> items,
        bool perItem,
        Func<DocumentIdentity, ReportModel> report
    ) =>
        new(DocumentTypes.Report, visit, items, (renderer, identity) =>
            renderer.HtmlAsync(new AuthorityCopyModel(report(identity), new OriginalReport(original.Number, original.Sha256)))
        )
        {
            PerItem = perItem,
            CopyOf = original,
        };

    private static string? Author(DeterminedItem item) => item.Examination!.Author ?? item.Examination.Examiner;

    private static string? Signer(DeterminedItem item) => item.Examination!.AuthenticatedBy ?? item.Examination.Examiner;
}

using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates;
using ExamDocs.Templates.Certificate;
using ExamDocs.Templates.DueLabel;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Notice;
using ExamDocs.Templates.Report;

namespace ExamDocs.UseCases;

/// <summary>What is to be issued for a visit, dangers first, and what is refused.</summary>
/// <param name="Jobs">In the order in which they are issued.</param>
/// <param name="Refused">Items that no report may speak of, and renewals that may not be certified.</param>
internal sealed record Composition(IReadOnlyList<DocumentJob> Jobs, IReadOnlyList<Refusal> Refused);

/// <summary>Decides which documents a determined visit calls for. Findings hold back reports and certificates, never a warning.</summary>
internal static class ComposeDocuments
{
    /// <param name="visit">The determined visit.</param>
    /// <param name="perItem">One report for each item instead of a schedule of all.</param>
    /// <param name="reading">From how far labels for what may not be used are to be read.</param>
    public static Composition Of(DeterminedVisit visit, bool perItem, ReadingDistance reading)
    {
        var certified = visit.Items.Select(i => (Item: i, Renewals: CertifiableRenewals.Of(visit, i))).ToList();
        var refused = visit.Everything.Where(i => !i.MayBeReported || visit.Strays.Contains(i))
            .Concat(certified.Where(c => c.Renewals.Refused).Select(c => c.Item)).Distinct().Select(Refusal.Of);
        return new Composition(
            [.. Labels(visit, reading), .. Notices(visit), .. Reports(visit, perItem), .. certified.SelectMany(c => Certificates(visit, c.Item, c.Renewals.Allowed)), .. DueLabels(visit)],
            [.. refused]);
    }

    public static IEnumerable<DocumentJob> Labels(DeterminedVisit visit, ReadingDistance reading) =>
        from item in visit.Everything
        where item.Outcome is Outcome.Withdraw or Outcome.Undetermined
        select new DocumentJob(DocumentTypes.QuarantineLabel, [item],
            (renderer, identity) => renderer.HtmlAsync(new LabelModel(identity, visit, item, reading)))
        {
            Shortfalls = () => LabelShortfalls.Of(new LabelModel(DocumentJob.Draft(DocumentTypes.QuarantineLabel), visit, item, reading)),
        };

    /// <summary>For whatever may stay in service and may be reported, after its report.</summary>
    public static IEnumerable<DocumentJob> DueLabels(DeterminedVisit visit) =>
        from item in visit.Items
        where DueLabelModel.IsFor(item)
        select new DocumentJob(DocumentTypes.DueLabel, [item],
            (renderer, identity) => renderer.HtmlAsync(new DueLabelModel(identity, visit, item)))
        {
            Shortfalls = () => LabelShortfalls.Of(new DueLabelModel(DocumentJob.Draft(DocumentTypes.DueLabel), visit, item)),
        };

    /// <summary>For whatever is withdrawn, and for every defect that is or could become a danger.</summary>
    private static IEnumerable<DocumentJob> Notices(DeterminedVisit visit) =>
        from item in visit.Everything
        where item.Outcome is Outcome.Withdraw || item.Examination?.Defects.Count > 0
        select new DocumentJob(DocumentTypes.Notice, [item],
            (renderer, identity) => renderer.HtmlAsync(new NoticeModel(identity, visit, item)));

    /// <summary>One report has one law, one author and one signature.</summary>
    private static IEnumerable<DocumentJob> Reports(DeterminedVisit visit, bool perItem)
    {
        var groups = visit.Items.Where(i => i.MayBeReported)
            .GroupBy(i => (i.RegimeId, Author: Author(i), Signer: Signer(i)));
        return from g in groups
               let author = visit.Person(g.Key.Author)!
               let signer = visit.Person(g.Key.Signer)!
               from items in perItem ? g.Select(i => (DeterminedItem[])[i]) : [[.. g]]
               select new DocumentJob(DocumentTypes.Report, items,
                   (renderer, identity) => renderer.HtmlAsync(new ReportModel(identity, visit, items, author, signer)));
    }

    private static IEnumerable<DocumentJob> Certificates(DeterminedVisit visit, DeterminedItem item, IReadOnlyList<Renewal> renewals)
    {
        if (renewals.Count == 0)
            yield break;
        DeterminedItem[] parts = [.. visit.Items.Where(p => renewals.Any(r => string.Equals(r.FittedPart, p.Item.Id, StringComparison.Ordinal)))];
        yield return new DocumentJob(DocumentTypes.Certificate, [item, .. parts],
            (renderer, identity) => renderer.HtmlAsync(new CertificateModel(identity, visit, item, renewals, parts)));
    }

    private static string? Author(DeterminedItem item) => item.Examination!.Author ?? item.Examination.Examiner;

    private static string? Signer(DeterminedItem item) => item.Examination!.AuthenticatedBy ?? item.Examination.Examiner;
}

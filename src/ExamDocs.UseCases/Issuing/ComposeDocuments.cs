using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates;
using ExamDocs.Templates.Certificate;
using ExamDocs.Templates.CheckSheet;
using ExamDocs.Templates.DueLabel;
using ExamDocs.Templates.EquipmentRecord;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Notice;
using ExamDocs.Templates.Report;

namespace ExamDocs.UseCases.Issuing;

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
    /// <param name="photos">The photo of an observation, where there is one that can be printed.</param>
    /// <param name="leftOut">Items that a schedule goes without and names as not reported; left out, none.</param>
    /// <param name="mostInReport">The most items of one report, inclusive.</param>
    public static Composition Of(
        DeterminedVisit visit,
        bool perItem,
        ReadingDistance reading,
        Func<Observation, PhotoPrint?>? photos = null,
        LeftOutItems? leftOut = null,
        int mostInReport = ComposeReports.MostItems
    )
    {
        var certified = visit.Items.Select(i => (Item: i, Renewals: CertifiableRenewals.Of(visit, i))).ToList();
        var refused = visit
            .Everything.Where(i => !i.MayBeReported || visit.Unlisted.Contains(i))
            .Concat(certified.Where(c => c.Renewals.Refused).Select(c => c.Item))
            .Distinct()
            .Select(Refusal.Of);
        return new Composition(
            [
                .. Labels(visit, reading),
                .. Notices(visit, photos),
                .. ComposeReports.Of(visit, perItem, photos, leftOut, mostInReport),
                .. certified.SelectMany(c => Certificates(visit, c.Item, c.Renewals.Allowed)),
                .. DueLabels(visit),
                .. Records(visit),
                .. CheckSheets(visit),
                .. ComposeEvidence.Of(visit, perItem, photos, leftOut),
            ],
            [.. refused]
        );
    }

    public static IEnumerable<DocumentJob> Labels(DeterminedVisit visit, ReadingDistance reading) =>
        from item in visit.Everything
        where item.Outcome is Outcome.Withdraw or Outcome.Undetermined
        select new DocumentJob(DocumentTypes.QuarantineLabel, visit, [item], (renderer, identity) =>
            renderer.HtmlAsync(new LabelModel(identity, visit, item, reading))
        )
        {
            Shortfalls = () => LabelShortfalls.Of(new LabelModel(DocumentJob.Draft(DocumentTypes.QuarantineLabel), visit, item, reading)),
            Reading = reading,
        };

    /// <summary>For whatever may stay in service and may be reported, after its report.</summary>
    public static IEnumerable<DocumentJob> DueLabels(DeterminedVisit visit) =>
        from item in visit.Items
        where DueLabelModel.IsFor(item)
        select new DocumentJob(DocumentTypes.DueLabel, visit, [item], (renderer, identity) =>
            renderer.HtmlAsync(new DueLabelModel(identity, visit, item))
        )
        {
            Shortfalls = () => LabelShortfalls.Of(new DueLabelModel(DocumentJob.Draft(DocumentTypes.DueLabel), visit, item)),
        };

    /// <summary>For every item, whatever its outcome: the keeper needs the record of what may not be used, too.</summary>
    private static IEnumerable<DocumentJob> Records(DeterminedVisit visit) =>
        from item in visit.Items
        select new DocumentJob(DocumentTypes.EquipmentRecord, visit, [item], (renderer, identity) =>
            renderer.HtmlAsync(new EquipmentRecordModel(identity, visit, item))
        );

    /// <summary>For whatever is to be examined next time: every item, and what was withdrawn under an id that no item has.</summary>
    public static IEnumerable<DocumentJob> CheckSheets(DeterminedVisit visit) =>
        from item in visit.Everything
        select new DocumentJob(DocumentTypes.CheckSheet, visit, [item], (renderer, identity) =>
            renderer.HtmlAsync(new CheckSheetModel(identity, visit, item))
        );

    /// <summary>For whatever is withdrawn, and for every defect that is or could become a danger.</summary>
    private static IEnumerable<DocumentJob> Notices(DeterminedVisit visit, Func<Observation, PhotoPrint?>? photos) =>
        from item in visit.Everything
        where item.Outcome is Outcome.Withdraw || item.Examination?.Defects.Count > 0
        select new DocumentJob(DocumentTypes.Notice, visit, [item], (renderer, identity) =>
            renderer.HtmlAsync(new NoticeModel(identity, visit, item, photos))
        )
        {
            SignedBy = visit.Person(item.Examination?.Examiner)?.Name,
        };

    private static IEnumerable<DocumentJob> Certificates(DeterminedVisit visit, DeterminedItem item, IReadOnlyList<Renewal> renewals)
    {
        if (renewals.Count == 0)
            yield break;
        DeterminedItem[] parts =
        [
            .. visit.Items.Where(p => renewals.Any(r => string.Equals(r.FittedPart, p.Item.Id, StringComparison.Ordinal))),
        ];
        yield return new DocumentJob(DocumentTypes.Certificate, visit, [item, .. parts], (renderer, identity) =>
            renderer.HtmlAsync(new CertificateModel(identity, visit, item, renewals, parts))
        )
        {
            SignedBy = (visit.Person(item.Examination?.AuthenticatedBy) ?? visit.Person(item.Examination?.Examiner))?.Name,
        };
    }
}

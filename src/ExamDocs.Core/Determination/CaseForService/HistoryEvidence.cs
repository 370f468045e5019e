using ExamDocs.Core.Cases;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Determination.CaseForService;

/// <summary>What happened to the item: use, examinations, events, renewals and remedies.</summary>
internal static class HistoryEvidence
{
    public static IEnumerable<LedgerEntry> Of(ItemCase item, IReadOnlyList<Reason> reasons) =>
        [
            Use(item.Item),
            .. item.Examination?.Examination.Exposure is { } exposure ? Exposure(exposure) : [],
            .. Last(item),
            .. item.Before.DistinctBy(e => (e.On, e.Examination.Conclusion)).Select(Earlier),
            .. item
                .Before.Select(e => e.EventInService)
                .Concat(item.Deciding.Select(e => e.EventInService))
                .Where(e => e is not null)
                .Distinct()
                .Select(e => Entry(Bearing.Neutral, w => w.Evidence.EventHappened(e!.On, e.What))),
            .. item
                .Context.Renewals.Where(r => Concerns(r.Row, item.ItemId))
                .Select(r => Entry(Bearing.Neutral, w => w.Evidence.Renewed(r.Row))),
            .. item.Remedies.Select(r => Entry(Bearing.Neutral, w => w.Evidence.Remedied(r.Row))),
            .. Ledger.Reasons(reasons, Heading.History, "W10", "U0"),
        ];

    private static LedgerEntry Use(Item item) =>
        item switch
        {
            { NeverUsed: true } => Entry(Bearing.For, w => w.Evidence.NeverUsed),
            { FirstUsed: { } first } => Entry(Bearing.Neutral, w => w.Evidence.FirstUsed(first)),
            _ => Entry(Bearing.Open, w => w.Evidence.FirstUseNotRecorded),
        };

    /// <summary>The last examination. Nothing where only a store has one: a finding says so.</summary>
    private static IEnumerable<LedgerEntry> Last(ItemCase item) =>
        item.LastExamined is { } last ? [Entry(Bearing.For, w => w.Evidence.LastExamined(last))]
        : item.Before.Count == 0 ? [Entry(Bearing.Open, w => w.Evidence.NoEarlierExamination)]
        : [];

    private static IEnumerable<LedgerEntry> Exposure(Exposure exposure) =>
        exposure is { Use: null, Hardware: null, Ground: null, UserMassKg: null }
            ? []
            : [Entry(Bearing.Neutral, w => w.Evidence.Exposed(exposure))];

    private static LedgerEntry Earlier(EarlierExamination examination) =>
        Entry(examination.Examination.Conclusion is Conclusion.Fit ? Bearing.For : Bearing.Neutral, w =>
            w.Evidence.ExaminedEarlier(examination.On, examination.Examination.Conclusion)
        );

    private static bool Concerns(Renewal renewal, string? id) =>
        id is not null && (Same(renewal.Item, id) || Same(renewal.FittedPart, id) || Same(renewal.RemovedPart, id));

    private static bool Same(string? one, string? other) => string.Equals(one, other, StringComparison.Ordinal);

    private static LedgerEntry Entry(Bearing bearing, Func<SentenceBook, string> say) =>
        new(Heading.History, bearing, new(say), Ledger.TheRecord);
}

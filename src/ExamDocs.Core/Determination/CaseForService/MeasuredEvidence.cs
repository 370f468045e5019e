using ExamDocs.Core.Cases;

namespace ExamDocs.Core.Determination.CaseForService;

/// <summary>What was measured and tested.</summary>
internal static class MeasuredEvidence
{
    public static IEnumerable<LedgerEntry> Of(ItemCase item, IReadOnlyList<Reason> reasons) =>
        (item.Measured?.Sentences ?? [])
            .Select(s => new LedgerEntry(Heading.Measurements, Bearing.Neutral, s.Said, s.Source))
            .Concat(
                item.Deciding.SelectMany(e => e.Examination.Tests)
                    .Select(t => new LedgerEntry(Heading.Measurements, Bearing.Neutral, new(w => w.Evidence.Tested(t)), Ledger.TheRecord))
            )
            .Concat(Ledger.Reasons(reasons, Heading.Measurements, "W7"));
}

using ExamDocs.Core.Cases;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Determination.CaseForService;

/// <summary>How long the item may serve, and when it is examined next.</summary>
internal static class LimitsEvidence
{
    public static IEnumerable<LedgerEntry> Of(ItemCase item, IReadOnlyList<Reason> reasons)
    {
        var against = Ledger.Reasons(reasons, Heading.Limits, "W5", "U4", "U5", "D2").ToList();
        if (!against.Exists(e => e.Code is "W5" or "U5" or "D2"))
            yield return new(Heading.Limits, IsKnown(item) ? Bearing.For : Bearing.Open, item.Life.Sentence, SourceOf(item));
        foreach (var entry in against)
            yield return entry;
        if (!reasons.Any(r => r.Code[0] is 'W' or 'U') && NextExamination.LatestForAssembly(item) is { } next)
            yield return new(Heading.Limits, Bearing.Neutral, new(w => w.Evidence.NextExaminationBy(next)), string.Join("; ", Whys(item)));
    }

    private static bool IsKnown(ItemCase item) => item.Life.End is not null || item.Life.UseHasNotBegun || !item.LacksTimeLimit;

    private static string SourceOf(ItemCase item) =>
        item.Limits.All.Count == 0
            ? Ledger.TheRecord
            : string.Join("; ", item.Limits.All.Select(l => LimitsSourceText.Of(l)).Distinct(StringComparer.Ordinal));

    private static IEnumerable<string> Whys(ItemCase item) =>
        item
            .Deciding.Where(e => e.On is not null)
            .Select(e => e.IntervalFrom(e.On!.Value)?.Why)
            .OfType<string>()
            .Distinct(StringComparer.Ordinal);
}

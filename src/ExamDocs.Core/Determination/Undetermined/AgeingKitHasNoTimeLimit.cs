using ExamDocs.Core.Cases;

namespace ExamDocs.Core.Determination.Undetermined;

/// <summary>U5. For kit of metal alone the same gap is a warning.</summary>
internal sealed class AgeingKitHasNoTimeLimit : IItemRule
{
    public OutcomeRuleInfo Info { get; } =
        new(
            "U5",
            "Textile or plastic kit has no time limit recorded",
            "Textile and plastic age unseen; only the maker can say how long they serve, or that there is no limit.",
            "Regulation (EU) 2016/425 Annex II 2.4 (from memory)"
        );

    public IEnumerable<Reason> Reasons(ItemCase item, Verdicts verdicts)
    {
        if (item.Category is { Ages: true } && item.LacksTimeLimit)
            yield return Info.Because(w => w.Reasons.NoTimeLimit);
    }
}

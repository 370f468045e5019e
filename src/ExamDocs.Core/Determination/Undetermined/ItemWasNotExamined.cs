using ExamDocs.Core.Cases;

namespace ExamDocs.Core.Determination.Undetermined;

/// <summary>U0. Examinations from before the visit are history and decide nothing now.</summary>
internal sealed class ItemWasNotExamined : IItemRule
{
    public OutcomeRuleInfo Info { get; } =
        new("U0", "It has no examination at this visit", "What nobody has looked at cannot be called safe.", "SI 1998/2307 reg 9(3)");

    public IEnumerable<Reason> Reasons(ItemCase item, Verdicts verdicts)
    {
        if (item.Deciding.Count == 0)
            yield return Info.Because(w => w.Reasons.NotExamined);
    }
}

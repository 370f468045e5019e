using ExamDocs.Core.Cases;

namespace ExamDocs.Core.Determination.Withdraw;

/// <summary>W9. From the part to the whole, never the other way round.</summary>
internal sealed class FittedPartIsWithdrawn : IItemRule
{
    public OutcomeRuleInfo Info { get; } = new("W9", "A part fitted to it is withdrawn",
        "An item is used with the parts on it: it is no safer than the worst of them until that part is renewed.",
        "common practice, no source");

    public IEnumerable<Reason> Reasons(ItemCase item, Verdicts verdicts) =>
        from part in item.Parts
        where verdicts[part].Outcome is Outcome.Withdraw
        select Info.Because(w => w.PartWithdrawn(w.Name(part)));
}

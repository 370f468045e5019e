using ExamDocs.Core.Cases;

namespace ExamDocs.Core.Determination.Undetermined;

/// <summary>U6. From the part to the whole, never the other way round.</summary>
internal sealed class FittedPartIsUndetermined : IItemRule
{
    public OutcomeRuleInfo Info { get; } = new("U6", "A part fitted to it is undetermined",
        "An item is used with the parts on it: nothing can be said of the whole that cannot be said of the part.",
        "common practice, no source");

    public IEnumerable<Reason> Reasons(ItemCase item, Verdicts verdicts) =>
        from part in item.Parts
        where verdicts[part].Outcome is Outcome.Undetermined
        select Info.Because(w => w.PartUndetermined(w.Name(part)));
}

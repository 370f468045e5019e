using ExamDocs.Core.Cases;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Determination.Withdraw;

/// <summary>W9. From the part to the whole, never the other way round.</summary>
internal sealed class FittedPartIsWithdrawn : IItemRule
{
    public OutcomeRuleInfo Info { get; } =
        new(
            "W9",
            "A part fitted to it is withdrawn",
            "An item is used with the parts on it: it is no safer than the worst of them until that part is renewed.",
            "common practice, no source"
        );

    public IEnumerable<Reason> Reasons(ItemCase item, Verdicts verdicts) =>
        item
            .Parts.Where(part => verdicts[part].Outcome is Outcome.Withdraw)
            .Select(part => Info.Because(w => w.Reasons.PartWithdrawn(w.Name(part.Item))) with { Other = part.ItemId })
            .Concat(Elsewhere(item));

    /// <summary>
    /// The same for parts in other records. Where the maker of this item does not permit one, it counts as withdrawn too: here it
    /// would be (W8).
    /// </summary>
    private IEnumerable<Reason> Elsewhere(ItemCase item) =>
        from part in item.PartsElsewhere
        where part.Outcome is Outcome.Withdraw || item.Limits.All.Any(l => l.Permits(part.PartNumber) is false)
        select Info.Because(w => w.Reasons.PartWithdrawn(part.Id)) with
        {
            Other = part.Id,
        };
}

using ExamDocs.Core.Cases;
using ExamDocs.Core.Service;

namespace ExamDocs.Core.Determination.Withdraw;

/// <summary>W8. Part numbers are compared letter by letter.</summary>
internal sealed class PartIsNotPermitted : IItemRule
{
    public OutcomeRuleInfo Info { get; } = new("W8", "It is fitted to an item whose maker does not permit it",
        "A part that the maker has not tried on the item changes how the whole holds.",
        "the maker's instructions recorded in the limits of the item it is fitted to");

    public IEnumerable<Reason> Reasons(ItemCase item, Verdicts verdicts) =>
        from whole in item.Wholes
        from limits in whole.Limits.All
        where limits.Row.Permits(item.Item.PartNumber) is false
        select Info.Because(w => w.PartNotPermitted(item.Item.PartNumber, w.Name(whole), string.Join(", ", limits.Row.PermittedParts!), limits.Row));
}

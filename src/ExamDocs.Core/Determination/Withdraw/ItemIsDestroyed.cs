using ExamDocs.Core.Cases;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Determination.Withdraw;

/// <summary>W11. Recorded in this record or in an earlier one.</summary>
internal sealed class ItemIsDestroyed : IItemRule
{
    public OutcomeRuleInfo Info { get; } =
        new(
            "W11",
            "It was recorded as destroyed",
            "What was destroyed cannot be in service: what bears its id now is something else, or the record is wrong.",
            "common practice, no source"
        );

    public IEnumerable<Reason> Reasons(ItemCase item, Verdicts verdicts)
    {
        var disposals = item.Disposals.Where(d => d.Row.Action is DisposalAction.Destroyed).ToList();
        if (disposals.Count > 0 || item.Item.Status is ItemStatus.Destroyed)
            yield return Info.Because(w => w.Reasons.Destroyed(disposals.Min(d => d.Row.On), null));
        foreach (var earlier in EarlierWithdrawals.Of(item).Where(w => IsForThat(w) && EarlierWithdrawals.IsOpen(item, w)))
            yield return Info.Because(w => w.Reasons.Destroyed(earlier.On, earlier.Document));
    }

    /// <summary>True where an earlier withdrawal is only for being destroyed.</summary>
    public static bool IsForThat(EarlierWithdrawal withdrawal) => withdrawal.Past.Codes is ["W11"];
}

using ExamDocs.Core.Cases;

namespace ExamDocs.Core.Determination.Withdraw;

/// <summary>
/// W10. A withdrawal lasts until a competent person releases it in writing. Saw contact, severe loading and an expired life can be
/// released only where they were recorded in error. A withdrawal that was only for a part ends when that part is renewed.
/// </summary>
internal sealed class EarlierWithdrawalIsOpen : IItemRule
{
    public OutcomeRuleInfo Info { get; } =
        new(
            "W10",
            "An earlier withdrawal is still open",
            "What was taken out stays out until someone competent says in writing why it may come back.",
            "EN 365:2004 (from memory): not used again until a competent person confirms it in writing"
        );

    /// <summary>
    /// A withdrawal of another version of this visit, or one that only repeats an earlier one, is not repeated where this visit
    /// withdraws the item itself: it may derive from that very reason.
    /// </summary>
    public IEnumerable<Reason> Reasons(ItemCase item, Verdicts verdicts) =>
        from withdrawal in EarlierWithdrawals.Of(item)
        where !ItemIsDestroyed.IsForThat(withdrawal) && EarlierWithdrawals.IsOpen(item, withdrawal)
        where
            !IsEcho(withdrawal)
            || (verdicts.EchoesCount && verdicts[item].Withdraw.TrueForAll(r => string.Equals(r.Code, Info.Code, StringComparison.Ordinal)))
        let released = item.Releases.Any(r =>
            EarlierWithdrawals.EffectOf(item, r.Row, withdrawal) is not (Known.ReleaseEffect.OfAnother or Known.ReleaseEffect.Ends)
        )
        select Because(withdrawal, released);

    private Reason Because(EarlierWithdrawal withdrawal, bool released) =>
        Info.Because(w => w.Reasons.WithdrawalIsOpen(withdrawal.On, withdrawal.Document, withdrawal.Why.In(w), released));

    private static bool IsEcho(EarlierWithdrawal withdrawal) => withdrawal.Past.IsOfThisVisit || withdrawal.Past.Codes is ["W10"];
}

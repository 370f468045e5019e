using ExamDocs.Core.Cases;

namespace ExamDocs.Core.Determination.Withdraw;

/// <summary>
/// W10. A withdrawal lasts until a competent person releases it in writing. Saw contact, severe loading and an expired life are
/// released only where they were recorded in error; a withdrawal for a part alone ends with that part's renewal.
/// </summary>
internal sealed class EarlierWithdrawalIsOpen : IItemRule
{
    public OutcomeRuleInfo Info { get; } = new("W10", "An earlier withdrawal is still open",
        "What was taken out stays out until someone competent says in writing why it may come back.",
        "EN 365:2004 (from memory): not used again until a competent person confirms it in writing");

    /// <summary>What another version of this same visit withdrew is not said again where this one withdraws the item itself.</summary>
    public IEnumerable<Reason> Reasons(ItemCase item, Verdicts verdicts) =>
        from withdrawal in EarlierWithdrawals.Of(item)
        where EarlierWithdrawals.IsOpen(item, withdrawal)
        where !withdrawal.Past.IsOfThisVisit || (verdicts.OtherVersionsCount && verdicts[item].Withdraw.TrueForAll(r => IsOfVersion(r, withdrawal)))
        let released = item.Releases.Any(r => EarlierWithdrawals.EffectOf(item, r.Row, withdrawal) is not (Known.ReleaseEffect.OfAnother or Known.ReleaseEffect.Ends))
        select Because(withdrawal, released);

    private Reason Because(EarlierWithdrawal withdrawal, bool released) =>
        Info.Because(w => w.WithdrawalIsOpen(withdrawal.On, withdrawal.Document, withdrawal.Why.In(w), released));

    /// <summary>Said in the same step, of this or of a further version.</summary>
    private bool IsOfVersion(Reason reason, EarlierWithdrawal withdrawal) =>
        string.Equals(reason.Code, Info.Code, StringComparison.Ordinal) && withdrawal.Past.IsOfThisVisit;
}

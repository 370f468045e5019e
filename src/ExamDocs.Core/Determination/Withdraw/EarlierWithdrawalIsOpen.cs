using ExamDocs.Core.Cases;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Determination.Withdraw;

/// <summary>
/// W10. A withdrawal lasts until a competent person releases it in writing. Saw contact, severe loading and an expired
/// life are never released; a withdrawal that rested on a part alone ends with that part's renewal.
/// </summary>
internal sealed class EarlierWithdrawalIsOpen : IItemRule
{
    public OutcomeRuleInfo Info { get; } = new("W10", "An earlier withdrawal is still open",
        "What was taken out stays out until someone competent says in writing why it may come back.",
        "EN 365:2004 (from memory): not used again until a competent person confirms it in writing");

    public IEnumerable<Reason> Reasons(ItemCase item, Verdicts verdicts) =>
        from withdrawal in EarlierWithdrawals.Of(item)
        where !EndedWithRenewal(item, withdrawal)
        let released = item.Releases.Any(r => withdrawal.IsReleasedBy(r))
        where withdrawal.NeverReleasable || !released
        select Info.Because($"withdrawn on {Say.Day(withdrawal.On)}{(withdrawal.Document is { } d ? $" by {d}" : "")} ({withdrawal.Why}), {(released ? "which no release can end" : "and not released since")}");

    private static bool EndedWithRenewal(ItemCase item, EarlierWithdrawal withdrawal) =>
        withdrawal.RestsOnPartsAlone
        && item.Renewals.Any(r => r.Row.DoneOn >= withdrawal.On && (item.ExaminedOn is null || r.Row.DoneOn <= item.ExaminedOn));
}

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
        withdrawal.RestsOnPartsAlone && withdrawal.Codes.All(code => item.Context.Renewals.Any(renewal =>
            (code is "W8" ? TookOff(renewal.Row, item) : TookPartOff(renewal.Row, item)) && IsSince(renewal.Row, item, withdrawal)));

    private static bool TookOff(Renewal renewal, ItemCase part) =>
        renewal.Item is not null && part.Item.Id is { } id && string.Equals(renewal.RemovedPart, id, StringComparison.Ordinal);

    private static bool TookPartOff(Renewal renewal, ItemCase whole) =>
        renewal.RemovedPart is not null && whole.Item.Id is { } id && string.Equals(renewal.Item, id, StringComparison.Ordinal);

    private static bool IsSince(Renewal renewal, ItemCase item, EarlierWithdrawal withdrawal) =>
        renewal.DoneOn >= withdrawal.On && (item.ExaminedOn is null || renewal.DoneOn <= item.ExaminedOn);
}

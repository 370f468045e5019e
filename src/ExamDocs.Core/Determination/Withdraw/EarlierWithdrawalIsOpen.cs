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
        where IsOpen(item, withdrawal)
        let released = item.Releases.Any(r => withdrawal.IsReleasedBy(r))
        select Info.Because(w => w.WithdrawalIsOpen(withdrawal.On, withdrawal.Document, withdrawal.Why.In(w), released));

    /// <summary>Neither released by a release that can end it, nor ended with the renewal of the parts it rested on alone.</summary>
    public static bool IsOpen(ItemCase item, EarlierWithdrawal withdrawal) =>
        !EndedWithRenewal(item, withdrawal) && (withdrawal.NeverReleasable || !item.Releases.Any(withdrawal.IsReleasedBy));

    /// <summary>Every code it rested on must be undone, and where the parts are known, each of them taken off.</summary>
    private static bool EndedWithRenewal(ItemCase item, EarlierWithdrawal withdrawal) =>
        withdrawal.RestsOnPartsAlone && withdrawal.Codes.All(code => withdrawal.Parts.Count == 0
            ? item.Context.Renewals.Any(r => Undoes(code, r.Row, item, null) && IsSince(r.Row, item, withdrawal))
            : withdrawal.Parts.All(part => item.Context.Renewals.Any(r => Undoes(code, r.Row, item, part) && IsSince(r.Row, item, withdrawal))));

    /// <summary>The part was taken off the whole that does not permit it; or off the whole that it withdrew.</summary>
    private static bool Undoes(string code, Renewal renewal, ItemCase item, string? other) => item.Item.Id is { } id
        && (code is "W8"
            ? renewal.Item is { } whole && Same(renewal.RemovedPart, id) && (other is null || Same(whole, other))
            : renewal.RemovedPart is { } part && Same(renewal.Item, id) && (other is null || Same(part, other)));

    private static bool Same(string? one, string? other) => string.Equals(one, other, StringComparison.Ordinal);

    private static bool IsSince(Renewal renewal, ItemCase item, EarlierWithdrawal withdrawal) =>
        renewal.DoneOn >= withdrawal.On && (item.ExaminedOn is null || renewal.DoneOn <= item.ExaminedOn);
}

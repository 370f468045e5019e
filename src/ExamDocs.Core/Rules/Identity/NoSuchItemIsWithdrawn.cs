using ExamDocs.Core.Cases;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Determination.Withdraw;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Identity;

/// <summary>A warning, since batch numbers are shared; the withdrawal itself holds only under the id it was made of.</summary>
public sealed class NoSuchItemIsWithdrawn : Rule<ItemCase>
{
    public NoSuchItemIsWithdrawn() : base(new RuleInfo("IDN010", Severity.Warning, "Nothing of the same maker, model and serial is withdrawn under another id",
        "What was taken out of service and comes back under a new id comes back without its history.",
        "Hold the item against the document named: where it is the same, record it under its old id; it then stays withdrawn until it is released.",
        "common practice, no source")) =>
        Each(i => i.Item.Serial is null ? [] : i.Context.WithdrawalsOfMarked(ItemMarking.Of(i.Item))
            .Where(w => !string.Equals(w.ItemId, i.ItemId, StringComparison.Ordinal) && EarlierWithdrawals.IsOpen(i.Context, w))
            .OrderBy(w => w.On).ThenBy(w => w.ItemId, StringComparer.Ordinal).ThenBy(w => w.Document, StringComparer.Ordinal)
            .Select(w => new Fault("/serial", Words(w))).Distinct());

    private static string Words(PastWithdrawal w) =>
        $"the same maker, model and serial were withdrawn as {w.ItemId} {(w.Document is null ? "" : $"by {w.Document} ")}on {Say.Day(w.On)}; if it is the same item, it stays withdrawn";
}

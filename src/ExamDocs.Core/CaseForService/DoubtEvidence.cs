using ExamDocs.Core.Cases;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Determination.Withdraw;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.CaseForService;

/// <summary>Doubts and withdrawals there were, what resolved them, and what the examiner concludes.</summary>
internal static class DoubtEvidence
{
    public static IEnumerable<LedgerEntry> Of(ItemCase item, IReadOnlyList<Reason> reasons) =>
        EarlierWithdrawals.Of(item).SelectMany(w => Ended(item, w))
            .Concat(EarlierDefects.Of(item).Select(Defect))
            .Concat(Ledger.Reasons(reasons, Heading.Doubts, "U1", "U2"));

    /// <summary>The examiner's own word, last.</summary>
    public static IEnumerable<LedgerEntry> Conclusion(ItemCase item) => item.Deciding.Select(e => e.Examination.Conclusion switch
    {
        Records.Conclusion.Fit => Entry(Bearing.For, "the examiner concludes: fit"),
        Records.Conclusion.Withdraw => Entry(Bearing.Against, "the examiner concludes: withdraw") with { Code = "W6" },
        _ => Entry(Bearing.Open, "the examiner's conclusion is not recorded"),
    });

    /// <summary>A withdrawal that is over, and by what; one that is open stands under history as a reason.</summary>
    private static IEnumerable<LedgerEntry> Ended(ItemCase item, EarlierWithdrawal withdrawal)
    {
        if (EarlierWithdrawalIsOpen.IsOpen(item, withdrawal))
            yield break;
        var release = item.Releases.FirstOrDefault(withdrawal.IsReleasedBy)?.Row;
        var how = release is null
            ? "ended with the renewal of what it rested on"
            : $"released on {Say.Day(release.On!.Value)} by {item.Context.PersonWithId(release.By)?.Name ?? release.By}: {release.Grounds}";
        yield return Entry(Bearing.For, $"withdrawn on {Say.Day(withdrawal.On)} ({withdrawal.Why}); {how}");
    }

    private static LedgerEntry Defect(EarlierDefect earlier) => earlier switch
    {
        { IsStillThere: true } => Entry(Bearing.Neutral, $"{earlier.Words}; recorded again at this examination"),
        { AnsweredBy: { } by } => Entry(Bearing.For, $"{earlier.Words}; resolved by: {by}"),
        _ => Entry(Bearing.Open, $"{earlier.Words}; not found again, and no remedy is recorded") with { Code = EarlierDefects.Unanswered },
    };

    private static LedgerEntry Entry(Bearing bearing, string text) => new(Heading.Doubts, bearing, text, Ledger.TheRecord);
}

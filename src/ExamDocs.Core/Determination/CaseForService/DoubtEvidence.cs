using ExamDocs.Core.Cases;
using ExamDocs.Core.Determination.Withdraw;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Determination.CaseForService;

/// <summary>Earlier doubts and withdrawals, what resolved them, and what the examiner concludes.</summary>
internal static class DoubtEvidence
{
    public static IEnumerable<LedgerEntry> Of(ItemCase item, IReadOnlyList<Reason> reasons)
    {
        var withdrawals = EarlierWithdrawals.Of(item);
        return withdrawals
            .Where(w => !withdrawals.Any(own => IsTold(item, w, own)))
            .SelectMany(w => Ended(item, w))
            .Concat(EarlierDefects.Of(item).Select(Defect))
            .Concat(Ledger.Reasons(reasons, Heading.Doubts, "U1", "U2"));
    }

    /// <summary>
    /// True where this record's own history tells of the same withdrawal and the same end: an earlier version of the visit has both too.
    /// </summary>
    private static bool IsTold(ItemCase item, EarlierWithdrawal withdrawal, EarlierWithdrawal own) =>
        !withdrawal.IsInRecord
        && own.IsInRecord
        && own.On == withdrawal.On
        && own.Past.Codes.ToHashSet(StringComparer.Ordinal).SetEquals(withdrawal.Past.Codes)
        && Equals(EarlierWithdrawals.EndedBy(item, own)?.Release, EarlierWithdrawals.EndedBy(item, withdrawal)?.Release);

    /// <summary>The examiner's own conclusion, which comes last.</summary>
    public static IEnumerable<LedgerEntry> Conclusion(ItemCase item) =>
        item.Deciding.Select(e =>
            e.Examination.Conclusion switch
            {
                Records.Conclusion.Fit => Entry(Bearing.For, w => w.Evidence.ExaminerConcludes(Records.Conclusion.Fit)),
                Records.Conclusion.Withdraw => Entry(Bearing.Against, w => w.Evidence.ExaminerConcludes(Records.Conclusion.Withdraw)) with
                {
                    Code = "W6",
                },
                _ => Entry(Bearing.Open, w => w.Evidence.ExaminerConcludes(null)),
            }
        );

    /// <summary>A withdrawal that has ended, and what ended it; an open one is a reason under history.</summary>
    private static IEnumerable<LedgerEntry> Ended(ItemCase item, EarlierWithdrawal withdrawal)
    {
        if (EarlierWithdrawals.IsOpen(item, withdrawal))
            yield break;
        yield return EarlierWithdrawals.EndedBy(item, withdrawal) is { } release
            ? Entry(Bearing.For, w =>
                w.Evidence.EndedWithRelease(
                    withdrawal.On,
                    withdrawal.Why.In(w),
                    release.Release.On!.Value,
                    release.By,
                    release.Release.Grounds,
                    release.Release.Because is ReleaseReason.RecordedInError
                )
            )
            : Entry(Bearing.For, w => w.Evidence.EndedWithRenewal(withdrawal.On, withdrawal.Why.In(w)));
    }

    private static LedgerEntry Defect(EarlierDefect earlier) =>
        earlier switch
        {
            { IsStillThere: true } => Entry(Bearing.Neutral, w => w.Evidence.RecordedAgain(earlier.Words.In(w))),
            { AnsweredBy: { } by } => Entry(Bearing.For, w => w.Evidence.ResolvedBy(earlier.Words.In(w), by.In(w))),
            _ => Entry(Bearing.Open, w => w.Evidence.NotFoundAgain(earlier.Words.In(w))) with { Code = EarlierDefects.Unanswered },
        };

    private static LedgerEntry Entry(Bearing bearing, Func<SentenceBook, string> say) =>
        new(Heading.Doubts, bearing, new(say), Ledger.TheRecord);
}

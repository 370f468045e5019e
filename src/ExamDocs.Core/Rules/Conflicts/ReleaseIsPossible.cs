using ExamDocs.Core.Cases;
using ExamDocs.Core.Determination.Withdraw;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Known;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using NodaTime;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class ReleaseIsPossible : Rule<RowCase<Release>>
{
    public ReleaseIsPossible()
        : base(
            new RuleInfo(
                "CON013",
                Severity.Error,
                "A release is for a reason that can end the withdrawal",
                "A doubt may be looked at again. A defect stays one until it is put right; saw contact, severe loading and "
                    + "an expired life leave nothing that a later look could set right.",
                $"Record the renewal or remedy that put it right; or type recorded-in-error under because, where the "
                    + $"withdrawal should not have been recorded, and say how that is known. Otherwise take the release out; the "
                    + $"item stays withdrawn.",
                "common practice, no source"
            )
        ) =>
        Each(r =>
            r.Context.ItemsWithId(r.Row.Item)
                .SelectMany(item =>
                    EarlierWithdrawals.Of(item).Select(w => (Withdrawal: w, Effect: EarlierWithdrawals.EffectOf(item, r.Row, w)))
                )
                .Where(w => Words(w.Effect, w.Withdrawal.On) is not null)
                .Select(w => new Fault("", Words(w.Effect, w.Withdrawal.On)!))
                .Distinct()
        );

    private static Message? Words(ReleaseEffect effect, LocalDate on) =>
        effect switch
        {
            ReleaseEffect.OnlyInError =>
                $"the withdrawal of {on} is for saw contact, severe loading, a diameter outside its limits, an expired life or "
                    + $"kit destroyed: it "
                    + $"ends only where it was recorded in error",
            ReleaseEffect.WrongReason => $"the withdrawal of {on} is for a defect; to look at it again does not end it",
            ReleaseEffect.NothingMadeGood =>
                $"the release of the withdrawal of {on} says made-good, but no renewal or remedy of the item is recorded from that day "
                    + $"to the day of the release",
            _ => null,
        };
}

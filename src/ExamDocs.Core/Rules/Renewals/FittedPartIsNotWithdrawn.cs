using ExamDocs.Core.Cases;
using ExamDocs.Core.Determination.Withdraw;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Rules.Renewals;

public sealed class FittedPartIsNotWithdrawn : Rule<RowCase<Renewal>>
{
    public FittedPartIsNotWithdrawn()
        : base(
            new RuleInfo(
                "REN009",
                Severity.Error,
                "The part fitted was not withdrawn when it was fitted",
                "A part out of the quarantine bin is no renewal.",
                $"Fit another part; or record the release that let this one back into service before it was fitted.",
                "common practice, no source"
            )
        ) =>
        Each(r =>
            r.FittedNow()
                .SelectMany(fitted =>
                    EarlierWithdrawals
                        .UpTo(fitted.Part, r.Row.DoneOn)
                        .Where(w => EarlierWithdrawals.EndedBy(fitted.Part, w, r.Row.DoneOn) is null)
                        .Select(w => new Fault(
                            "/fittedPart",
                            $"{r.Row.FittedPart} was withdrawn on {w.On}, and fitted on "
                                + $"{r.Row.DoneOn!.Value} without a release before: {w.Why}"
                        ))
                )
        );
}

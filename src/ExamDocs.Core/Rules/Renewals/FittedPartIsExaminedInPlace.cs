using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Rules.Renewals;

public sealed class FittedPartIsExaminedInPlace : Rule<RowCase<Renewal>>
{
    public FittedPartIsExaminedInPlace()
        : base(
            new RuleInfo(
                "REN010",
                Severity.Error,
                "The part fitted is examined no earlier than the day it was fitted",
                "How it is tied, and what it runs on, can only be seen in its place.",
                $"Examine the part again where it is fitted, or correct the day of the renewal.",
                "common practice, no source"
            )
        ) =>
        Forbid(
            r => r.FittedNow().Any(fitted => fitted.Part.ExaminedOn < r.Row.DoneOn && !(r.Row.DoneOn > fitted.Whole.ExaminedOn)),
            "/doneOn",
            r => $"{r.Row.FittedPart} was fitted on {r.Row.DoneOn!.Value}, after it was examined"
        );
}

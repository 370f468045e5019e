using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Rules.Renewals;

public sealed class RenewalBeforeExamination : Rule<RowCase<Renewal>>
{
    public RenewalBeforeExamination()
        : base(
            new RuleInfo(
                "REN002",
                Severity.Error,
                "The item is examined after the renewal",
                "A part fitted after the examination was never looked at in its place.",
                $"Examine the item again, or correct the day of the renewal.",
                "common practice, no source"
            )
        ) =>
        Forbid(
            r => r.Context.ItemsWithId(r.Row.Item).Any(i => r.Row.DoneOn > i.ExaminedOn),
            "/doneOn",
            r => $"renewed on {r.Row.DoneOn!.Value}, after the item was examined"
        );
}

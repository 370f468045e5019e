using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Dates;

public sealed class LastExaminationBeforeThisOne : Rule<ItemCase>
{
    public LastExaminationBeforeThisOne()
        : base(
            new RuleInfo(
                "DAT008",
                Severity.Error,
                "The last examination was before this one",
                "The report tells both dates; they cannot be in the wrong order.",
                $"Type the date of the examination before this one.",
                "SI 1998/2307 Schedule 1 para 4"
            )
        ) =>
        Forbid(
            i => i.Item.LastExamined is { } last && last.Earliest >= i.ExaminedOn,
            "/lastExamined",
            i => $"last examined on {i.Item.LastExamined}, not before the day examined"
        );
}

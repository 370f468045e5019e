using ExamDocs.Core.Findings;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Rules.Dates;

public sealed class EventBeforeExamination : ExaminationRule
{
    public EventBeforeExamination()
        : base(
            new RuleInfo(
                "DAT014",
                Severity.Error,
                "The event was no later than the examination it called for",
                "An examination cannot look for the traces of what had not happened.",
                $"Correct the date of the event or of the examination.",
                "SI 1998/2307 reg 9(3)(a)(iv)"
            )
        ) =>
        Forbid(
            e => e.Examination.Event?.On > e.On,
            "/event/on",
            e => $"the event of {e.Examination.Event!.On!.Value} is after the day examined"
        );
}

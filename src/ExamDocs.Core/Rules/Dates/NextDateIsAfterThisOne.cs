using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Dates;

public sealed class NextDateIsAfterThisOne : ExaminationRule
{
    public NextDateIsAfterThisOne()
        : base(
            new RuleInfo(
                "DAT012",
                Severity.Error,
                "The examiner's next date is after the day examined",
                "A next examination due before this one is a slip of the year.",
                $"Type a date after the day examined, or leave it to the interval.",
                "SI 1998/2307 Schedule 1 para 8(d) (from memory)"
            )
        ) => Forbid(e => e.Examination.NextBy <= e.On, "/nextBy", _ => $"the next examination is due on or before the day examined");
}

using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class EventIsNamed : ExaminationRule
{
    public EventIsNamed()
        : base(
            new RuleInfo(
                "PAR020",
                Severity.Error,
                "An exceptional examination names the event",
                "What happened tells the examiner what to look for, and the reader why the examination was made.",
                $"Say what happened and when.",
                "SI 1998/2307 reg 9(3)(a)(iv)"
            )
        )
    {
        Forbid(
            e => IsExceptional(e.Examination) && e.Examination.Event?.What is null,
            "/event/what",
            _ => $"the exceptional circumstance is not described"
        );
        Forbid(
            e => IsExceptional(e.Examination) && e.Examination.Event?.On is null,
            "/event/on",
            _ => $"the date of the exceptional circumstance is missing"
        );
    }

    private static bool IsExceptional(Examination examination) => examination.Basis is Basis.Exceptional;
}

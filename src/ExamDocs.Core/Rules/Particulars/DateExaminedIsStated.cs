using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class DateExaminedIsStated : ExaminationRule
{
    public DateExaminedIsStated()
        : base(
            new RuleInfo(
                "PAR013",
                Severity.Error,
                "The date of the examination is stated",
                "Every limit and the next due date are counted from it.",
                $"Type the date examined, for the visit or for the examination itself.",
                "SI 1998/2307 Schedule 1 para 8(f) (from memory)"
            )
        ) => Each(e => e.On is null ? [new Fault("/examinedOn", Words, Cause: UnknownDay.CauseOf(e))] : []);

    private static Message Words => $"the date of the examination is missing or cannot be read";
}

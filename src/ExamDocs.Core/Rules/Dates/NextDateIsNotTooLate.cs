using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Rules.Dates;

public sealed class NextDateIsNotTooLate : ExaminationRule
{
    public NextDateIsNotTooLate()
        : base(
            new RuleInfo(
                "DAT013",
                Severity.Warning,
                "The examiner's next date is no later than the interval allows",
                "No examiner can lengthen the interval: the earlier date is taken.",
                $"Nothing to type: the shorter interval applies.",
                "SI 1998/2307 reg 9(3)(a)"
            )
        ) =>
        Forbid(
            e => e.Item is { } item && e.Examination.NextBy > item.NextBy,
            "/nextBy",
            e => $"the next date typed is later than the interval allows; {e.Item!.NextBy!.Value} applies"
        );
}

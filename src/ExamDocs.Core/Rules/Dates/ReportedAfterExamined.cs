using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Dates;

public sealed class ReportedAfterExamined : Rule<VisitCase>
{
    public ReportedAfterExamined()
        : base(
            new RuleInfo(
                "DAT009",
                Severity.Error,
                "The report is dated no earlier than any examination in it",
                "A report written before the examination reports nothing.",
                $"Correct the date of the report or the date examined.",
                "SI 1998/2307 Schedule 1 paras 8(f) and 11 (from memory)"
            )
        ) => Forbid(v => v.Visit.ReportedOn < Last(v), "/reportedOn", _ => $"the report is dated before the examination");

    private static NodaTime.LocalDate? Last(VisitCase v) => v.Context.Examinations.Select(e => e.On).Append(v.Visit.ExaminedOn).Max();
}

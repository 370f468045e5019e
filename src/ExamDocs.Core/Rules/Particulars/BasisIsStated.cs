using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class BasisIsStated : ExaminationRule
{
    public BasisIsStated()
        : base(
            new RuleInfo(
                "PAR007",
                Severity.Error,
                "The basis of the examination is stated",
                "The report says whether the examination was due by interval, by scheme, by an event, or before first use.",
                $"Type six-month, twelve-month, scheme, exceptional, first-use or installation.",
                "SI 1998/2307 Schedule 1 paras 6 and 7(a)"
            )
        ) => Forbid(e => e.Examination.Basis is null, "/basis", _ => $"the basis of the examination is missing");
}

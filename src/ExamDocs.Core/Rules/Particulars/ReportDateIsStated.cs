using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class ReportDateIsStated : Rule<VisitCase>
{
    public ReportDateIsStated()
        : base(
            new RuleInfo(
                "PAR016",
                Severity.Error,
                "The visit has its reference, its date and the date of the report",
                "The law keeps the date of the report apart from the date of the examination.",
                $"Type the visit's reference, the date examined and the date of the report.",
                "SI 1998/2307 Schedule 1 paras 8(f) and 11 (from memory)"
            )
        )
    {
        Require(v => v.Visit.Reference, "/reference", $"the visit has no reference");
        Forbid(v => v.Visit.ExaminedOn is null, "/examinedOn", _ => $"the date examined is missing or cannot be read");
        Forbid(v => v.Visit.ReportedOn is null, "/reportedOn", _ => $"the date of the report is missing or cannot be read");
    }
}

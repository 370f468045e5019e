using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class EmployerIsNamed : Rule<VisitCase>
{
    public EmployerIsNamed()
        : base(
            new RuleInfo(
                "PAR001",
                Severity.Error,
                "The employer has a name and an address",
                "The report is made for the employer, who must act on it; the law asks for name and address first of all.",
                $"Type the name and the address of the employer for whom the examination was made.",
                "SI 1998/2307 Schedule 1 para 1"
            )
        )
    {
        Require(v => v.Visit.Employer?.Name, "/employer/name", $"the employer's name is missing");
        Require(v => v.Visit.Employer?.Address, "/employer/address", $"the employer's address is missing");
    }
}

using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class PremisesAreNamed : Rule<VisitCase>
{
    public PremisesAreNamed()
        : base(
            new RuleInfo(
                "PAR002",
                Severity.Error,
                "The premises have a name and an address",
                "Where the examination was made decides which authority is notified of an imminent risk.",
                $"Type the name and the address of the place where the examination was made.",
                "SI 1998/2307 Schedule 1 para 2"
            )
        )
    {
        Require(v => v.Visit.Premises?.Name, "/premises/name", $"the name of the premises is missing");
        Require(v => v.Visit.Premises?.Address, "/premises/address", $"the address of the premises is missing");
    }
}

using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class OwnerHiredFromIsNamed : Rule<VisitCase>
{
    public OwnerHiredFromIsNamed()
        : base(
            new RuleInfo(
                "PAR023",
                Severity.Error,
                "The owner that kit is hired from has a name and an address",
                "The owner receives the report as well as the employer.",
                $"Type both, or leave both empty where nothing is hired.",
                "SI 1998/2307 reg 10(1)(b)"
            )
        )
    {
        Forbid(
            v => v.Visit.HiredFrom is { Name: null, Address: not null },
            "/hiredFrom/name",
            _ => $"the name of the owner it is hired from is missing"
        );
        Forbid(
            v => v.Visit.HiredFrom is { Address: null, Name: not null },
            "/hiredFrom/address",
            _ => $"the address of the owner it is hired from is missing"
        );
    }
}

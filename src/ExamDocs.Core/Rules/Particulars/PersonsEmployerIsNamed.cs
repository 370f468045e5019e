using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class PersonsEmployerIsNamed : Rule<RowCase<Person>>
{
    public PersonsEmployerIsNamed()
        : base(
            new RuleInfo(
                "PAR015",
                Severity.Error,
                "Every person is self-employed or has an employer with name and address",
                "The report says whether the person making it is self-employed and, if not, who the employer is.",
                $"Type true for selfEmployed, or false with the employer's name and address.",
                "SI 1998/2307 Schedule 1 para 9 (from memory)"
            )
        )
    {
        Forbid(p => p.Row.SelfEmployed is null, "/selfEmployed", _ => $"it is not recorded whether the person is self-employed");
        Forbid(
            p => p.Row.SelfEmployed is false && p.Row.Employer?.Name is null,
            "/employer/name",
            _ => $"the name of the person's employer is missing"
        );
        Forbid(
            p => p.Row.SelfEmployed is false && p.Row.Employer?.Address is null,
            "/employer/address",
            _ => $"the address of the person's employer is missing"
        );
        Forbid(
            p => p.Row is { SelfEmployed: true, Employer: { Name: not null } or { Address: not null } },
            "/employer",
            _ => $"the person is recorded as self-employed, and an employer is recorded too"
        );
    }
}

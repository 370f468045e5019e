using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Identity;

public sealed class PersonIdIsUnique : Rule<RowCase<Person>>
{
    public PersonIdIsUnique()
        : base(
            new RuleInfo(
                "IDN005",
                Severity.Error,
                "Every person has an id of their own",
                "Of two people with the same id nobody can say who signed.",
                $"Give one of the two another id.",
                "SI 1998/2307 Schedule 1 para 9 (from memory)"
            )
        ) => Forbid(p => p.Context.PeopleWithId(p.Row.Id).Skip(1).Any(), "/id", p => $"there is more than one person '{p.Row.Id}'");
}

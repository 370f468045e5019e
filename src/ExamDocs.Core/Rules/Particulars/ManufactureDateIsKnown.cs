using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class ManufactureDateIsKnown : Rule<ItemCase>
{
    public ManufactureDateIsKnown()
        : base(
            new RuleInfo(
                "PAR003",
                Severity.Warning,
                "The date of manufacture is recorded where it is known",
                "Age cannot be told without it; the report gives it where it is known.",
                $"Type the month or year of manufacture marked on the item; leave it empty only if nobody knows it.",
                "SI 1998/2307 Schedule 1 para 3"
            )
        ) => Forbid(i => i.Item.Manufactured is null, "/manufactured", _ => $"the date of manufacture is not known");
}

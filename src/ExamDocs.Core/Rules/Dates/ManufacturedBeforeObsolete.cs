using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Dates;

public sealed class ManufacturedBeforeObsolete : Rule<ItemCase>
{
    public ManufacturedBeforeObsolete()
        : base(
            new RuleInfo(
                "DAT007",
                Severity.Error,
                "It was made before it became obsolete",
                "An obsolescence date before manufacture was misread from the label.",
                $"Correct the date that is wrong.",
                "common practice, no source"
            )
        ) =>
        Forbid(
            i => Order.IsImpossible(i.Item.Manufactured, i.Item.ObsoleteOn),
            "/obsoleteOn",
            i => $"obsolete on {i.Item.ObsoleteOn}, before it was made in {i.Item.Manufactured}"
        );
}

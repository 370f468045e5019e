using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Dates;

public sealed class ManufacturedBeforeFirstUse : Rule<ItemCase>
{
    public ManufacturedBeforeFirstUse()
        : base(
            new RuleInfo(
                "DAT003",
                Severity.Error,
                "It was made before it was first used",
                "The time in use is counted from first use; before manufacture there was none.",
                $"Correct the date that is wrong.",
                "common practice, no source"
            )
        ) =>
        Forbid(
            i => Order.IsImpossible(i.Item.Manufactured, i.Item.FirstUsed),
            "/firstUsed",
            i => $"first used on {i.Item.FirstUsed}, before it was made in {i.Item.Manufactured}"
        );
}

using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Dates;

public sealed class ManufacturedBeforePurchased : Rule<ItemCase>
{
    public ManufacturedBeforePurchased()
        : base(
            new RuleInfo(
                "DAT001",
                Severity.Error,
                "It was made before it was bought",
                "A date of purchase before the date of manufacture shows that one of them belongs to another item.",
                $"Correct the date that is wrong.",
                "common practice, no source"
            )
        ) =>
        Forbid(
            i => Order.IsImpossible(i.Item.Manufactured, i.Item.Purchased),
            "/purchased",
            i => $"bought on {i.Item.Purchased}, before it was made in {i.Item.Manufactured}"
        );
}

using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Dates;

public sealed class ManufacturedBeforeLastExamination : Rule<ItemCase>
{
    public ManufacturedBeforeLastExamination()
        : base(
            new RuleInfo(
                "DAT006",
                Severity.Error,
                "It was made before it was last examined",
                "The earlier examination must have been of another item.",
                $"Correct the date that is wrong.",
                "common practice, no source"
            )
        ) =>
        Forbid(
            i => Order.IsImpossible(i.Item.Manufactured, i.Item.LastExamined),
            "/lastExamined",
            i => $"last examined on {i.Item.LastExamined}, before it was made in {i.Item.Manufactured}"
        );
}

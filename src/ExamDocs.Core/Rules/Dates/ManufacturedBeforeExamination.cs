using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Dates;

public sealed class ManufacturedBeforeExamination : Rule<ItemCase>
{
    public ManufacturedBeforeExamination()
        : base(
            new RuleInfo(
                "DAT005",
                Severity.Error,
                "It was made no later than it was examined",
                "What was not made yet could not be examined.",
                $"Correct the date that is wrong.",
                "common practice, no source"
            )
        ) =>
        Forbid(
            i => Order.IsImpossible(i.Item.Manufactured, i.ExaminedOn),
            "/manufactured",
            i => $"made in {i.Item.Manufactured}, after the day examined"
        );
}

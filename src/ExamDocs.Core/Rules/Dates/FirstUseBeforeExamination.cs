using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Dates;

public sealed class FirstUseBeforeExamination : Rule<ItemCase>
{
    public FirstUseBeforeExamination()
        : base(
            new RuleInfo(
                "DAT004",
                Severity.Error,
                "It was first used no later than it was examined",
                "A first use after the day examined has not happened yet.",
                $"Correct the date that is wrong.",
                "common practice, no source"
            )
        ) =>
        Forbid(
            i => Order.IsImpossible(i.Item.FirstUsed, i.ExaminedOn),
            "/firstUsed",
            i => $"first used on {i.Item.FirstUsed}, after the day examined"
        );
}

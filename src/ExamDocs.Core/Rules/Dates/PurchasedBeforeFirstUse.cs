using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Dates;

public sealed class PurchasedBeforeFirstUse : Rule<ItemCase>
{
    public PurchasedBeforeFirstUse()
        : base(
            new RuleInfo(
                "DAT002",
                Severity.Error,
                "It was bought before it was first used, unless it came second-hand",
                "Kit first used before it was bought was somebody else's: its history must come with it.",
                $"Correct the date that is wrong; for kit bought second-hand record the evidence of its last examination "
                    + $"that came with it.",
                "SI 1998/2307 reg 9(4) (from memory)"
            )
        ) =>
        Forbid(
            i => i.Item.TransferEvidence is null && Order.IsImpossible(i.Item.Purchased, i.Item.FirstUsed),
            "/firstUsed",
            i => $"first used on {i.Item.FirstUsed}, before it was bought on {i.Item.Purchased}"
        );
}

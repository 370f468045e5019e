using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class LiftingKitStandsUnderLifting : RegimeRule
{
    public LiftingKitStandsUnderLifting()
        : base(
            new RuleInfo(
                "CON021",
                Severity.Error,
                "Kit that lifts is not examined under gb-wah",
                "The law on lifting asks for a report with particulars of its own; under another regime they would be missing.",
                $"Type gb-loler as the regime; or type fall-arrest-only as the purpose where the item lifts nobody.",
                "SI 1998/2307 reg 9(3); what gb-wah is left with: HSE ACOP L113 (from memory)"
            )
        ) =>
        Forbid(
            e => e.Item is not null && !RegimeSuitsItem.OnlyProtects(e),
            "/regime",
            e =>
                e.Item!.Item.Purpose is null
                    ? (Message)$"the purpose is not stated, and the item is examined under the law on work at height"
                    : $"kit that lifts is examined under the law on work at height, which asks for no report of thorough examination"
        );
}

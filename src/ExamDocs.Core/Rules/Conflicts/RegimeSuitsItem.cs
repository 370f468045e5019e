using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class RegimeSuitsItem : RegimeRule
{
    private const string Helmet = "helmet";

    private const string GreatBritain = "gb-loler";

    private static Message ElsewhereHint =>
        $"Nothing to type where no regime for personal kit is known for this country: the interval of lifting kit applies, "
        + $"which is as short or shorter.";

    public RegimeSuitsItem()
        : base(
            new RuleInfo(
                "CON020",
                Severity.Warning,
                "Helmets and kit that only arrests falls are examined under gb-wah",
                "They lift nobody: the law on lifting does not ask for their report.",
                $"Type gb-wah as the regime of this examination.",
                "HSE ACOP L113 (from memory)"
            )
        ) =>
        Each(e =>
            OnlyProtects(e)
                ?
                [
                    new Fault(
                        "/regime",
                        $"a helmet, or kit that only arrests falls, is examined under the law on lifting",
                        e.RegimeId is GreatBritain ? null : ElsewhereHint
                    ),
                ]
                : []
        );

    internal static bool OnlyProtects(ExaminationCase e) => e.Item is { Item.Purpose: Purpose.FallArrestOnly } or { Category.Id: Helmet };
}

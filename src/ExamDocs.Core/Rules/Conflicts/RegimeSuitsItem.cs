using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class RegimeSuitsItem : ExaminationRule
{
    private const string Helmet = "helmet";

    public RegimeSuitsItem() : base(new RuleInfo("CON020", Severity.Warning, "The regime suits the purpose of the item",
        "Helmets and kit that only arrests falls lift nobody: the law on lifting does not ask for their report. What lifts persons, and accessories, must have one.",
        "Type gb-wah as the regime of a helmet or of kit that only arrests falls, and gb-loler for what lifts.", "HSE ACOP L113 (from memory)"))
    {
        Forbid(e => Is(e, GbLoler.RegimeId) && OnlyProtects(e), "/regime",
            _ => "a helmet, or kit that only arrests falls, is examined under the law on lifting");
        Forbid(e => Is(e, GbWah.RegimeId) && !OnlyProtects(e) && e.Item?.Item.Purpose is not null, "/regime",
            _ => "kit that lifts is examined under the law on work at height, which asks for no report of thorough examination");
    }

    private static bool Is(ExaminationCase e, string regime) => string.Equals(e.RegimeId, regime, StringComparison.Ordinal);

    private static bool OnlyProtects(ExaminationCase e) =>
        e.Item is { Item.Purpose: Purpose.FallArrestOnly } or { Category.Id: Helmet };
}

using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class RegimeSuitsItem : LolerRule
{
    private const string Helmet = "helmet";

    public RegimeSuitsItem() : base(new RuleInfo("CON020", Severity.Warning, "Helmets and kit that only arrests falls stand under gb-wah",
        "They lift nobody: the law on lifting does not ask for their report.",
        "Type gb-wah as the regime of this examination.", "HSE ACOP L113 (from memory)")) =>
        Forbid(OnlyProtects, "/regime", _ => "a helmet, or kit that only arrests falls, is examined under the law on lifting");

    internal static bool OnlyProtects(ExaminationCase e) =>
        e.Item is { Item.Purpose: Purpose.FallArrestOnly } or { Category.Id: Helmet };
}

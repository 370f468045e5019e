using ExamDocs.Core.Findings;

namespace ExamDocs.UseCases;

/// <summary>What printing can find wrong with a record that reading and checking had nothing against.</summary>
public static class PrintRules
{
    public static readonly RuleInfo GlyphIsMissing = new("PRN001", Severity.Error, "Every character can be printed",
        "A character that no installed font has leaves the page without a sign, and the page then says something else than what was typed.",
        "Install a font that has it, for example the Debian package fonts-noto-cjk, or type it in other letters.",
        "found by reading the printed file back");

    public static IReadOnlyList<RuleInfo> All { get; } = [GlyphIsMissing];
}

using ExamDocs.Core.Findings;

namespace ExamDocs.UseCases;

/// <summary>What printing can find wrong with a record that reading and checking had nothing against.</summary>
public static class PrintRules
{
    public static readonly RuleInfo GlyphIsMissing = new("PRN001", Severity.Error, "Every character can be printed",
        "A character that no installed font has leaves the page without a sign, and the page then says something else than what was typed.",
        "Install a font that has it, for example the Debian package fonts-noto-cjk, or type it in other letters.",
        "found by reading the printed file back");

    public static readonly RuleInfo PrintIsFaithful = new("PRN002", Severity.Error, "Every text of a page is printed whole",
        "A text that is cut off, hidden or left out makes the page say something else than what was recorded.",
        "Shorten the text named, or part a long word with a blank. If nothing in the record is unusual, it is a fault of the template: report it.",
        "found by reading the printed file back");

    public static IReadOnlyList<RuleInfo> All { get; } = [GlyphIsMissing, PrintIsFaithful];
}

using ExamDocs.Core.Findings;

namespace ExamDocs.UseCases.Issuing;

/// <summary>What can be wrong with a record and shows only when it is printed.</summary>
public static class PrintRules
{
    public static readonly RuleInfo GlyphIsMissing = new(
        "PRN001",
        Severity.Error,
        "Every character can be printed",
        "A character that no installed font has leaves the page without a sign, and the page then says something else than what was typed.",
        $"Install a font that has it, for example the Debian package fonts-noto-cjk, or type it in other letters.",
        "found by reading the printed file back"
    );

    public static readonly RuleInfo PrintIsFaithful = new(
        "PRN002",
        Severity.Error,
        "Every text of a page is printed whole",
        "A text that is cut off, hidden or left out makes the page say something else than what was recorded.",
        $"Shorten the text named, or part a long word with a blank. If nothing in the record is unusual, it is a fault of the "
            + $"template: report it.",
        "found by reading the printed file back"
    );

    public static readonly RuleInfo LabelHoldsItsText = new(
        "PRN003",
        Severity.Error,
        "Every text fits on its label",
        "What does not fit on a label is not printed, or not whole. A next-examination label is then held back, or left off a "
            + "sheet of small labels; a label that says not to use the item is printed with the text cut short, which it says itself.",
        $"Type it shorter, mark the item with a shorter identity, or take a larger stock.",
        "common practice, no source"
    );

    public static readonly RuleInfo LabelIsLegible = new(
        "PRN004",
        Severity.Warning,
        "The words of a label are read from the reading distance",
        "With much to say, the words of a quarantine or hold label are set smaller than can be read from there. Its sign and "
            + "its signal word are not.",
        $"Type notes and descriptions shorter, or go nearer: --read-from says from how far labels are to be read.",
        "h = l / Z, ISO 3864-1:2011 annex A; five minutes of arc for the letters, from memory"
    );

    public static readonly RuleInfo BrowserPrints = new(
        "PRN005",
        Severity.Error,
        "The browser prints every document",
        "A page on which the browser crashes, hangs or gives no whole file is no document. The others are printed, if it prints them.",
        $"Run the command again. If it happens again, shorten what is long or large in the record, such as notes and photos, and report "
            + $"it as a fault of the program.",
        "found while printing"
    );

    public static IReadOnlyList<RuleInfo> All { get; } =
    [GlyphIsMissing, PrintIsFaithful, LabelHoldsItsText, LabelIsLegible, BrowserPrints];
}

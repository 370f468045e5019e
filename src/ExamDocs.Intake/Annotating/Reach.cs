using System.Text.RegularExpressions;

namespace ExamDocs.Intake.Annotating;

/// <summary>Formulas that take something from beyond their workbook: another file, a server, a program.</summary>
internal static partial class Reach
{
    /// <summary>What spreadsheet programs write themselves where a formula has lost what it referred to.</summary>
    public const string Lost = "#REF!";

    /// <summary>Elements of any part that hold a formula.</summary>
    public static bool HoldsFormula(string element) =>
        element is "f" or "formula" or "formula1" or "formula2" or "definedName" or "calculatedColumnFormula" or "totalsRowFormula";

    /// <summary>A text in quotation marks alone, such as a list to choose from, takes nothing from anywhere.</summary>
    public static bool IsBeyond(string formula) => !Literal().IsMatch(formula) && Outside().IsMatch(formula);

    /// <summary>
    /// Whether a link that leaves the workbook may stay: one that somebody must click, and that leads to a page or an address.
    /// </summary>
    public static bool IsHarmless(string kind, string target) =>
        kind.EndsWith("/hyperlink", StringComparison.Ordinal) && Page().IsMatch(target);

    [GeneratedRegex("\\A\\s*\"([^\"]|\"\")*\"\\s*\\z", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Literal();

    /// <summary>Other workbooks are numbered in brackets, DDE has a bar between program and topic; the functions are from memory.</summary>
    [GeneratedRegex(
        @"\[[0-9]+\]|\||://|\\\\|\b(WEBSERVICE|RTD|IMAGE|STOCKHISTORY|CUBE[A-Z]+|HYPERLINK|CALL|REGISTER(\.ID)?|EXEC|DDE|"
            + @"SQL\.REQUEST|FILTERXML|PY|COPILOT|TRANSLATE|DETECTLANGUAGE)\s*\(",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Outside();

    [GeneratedRegex(
        @"\A(https?://|mailto:|tel:)",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Page();
}

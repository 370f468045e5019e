using System.Text.RegularExpressions;

namespace ExamDocs.Intake.Workbook.Shape;

/// <summary>When two headings, or two names of sheets, are the same.</summary>
internal static partial class Heading
{
    /// <summary>
    /// What is left when case, hyphens and blanks, dots, colons, brackets and stars make no difference: what headings are matched by.
    /// </summary>
    public static string Key(string typed) => Blanks().Replace(Marks().Replace(Normal(typed), " "), " ").Trim();

    /// <summary>In lower case, with single blanks and straight apostrophes.</summary>
    public static string Normal(string typed) => Blanks().Replace(typed.Trim(), " ").Replace('’', '\'').ToLowerInvariant();

    [GeneratedRegex(@"[-_./:;*()\[\]#]", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Marks();

    [GeneratedRegex(@"\s+", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Blanks();
}

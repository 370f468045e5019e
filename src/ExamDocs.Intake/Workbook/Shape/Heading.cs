using System.Text.RegularExpressions;

namespace ExamDocs.Intake.Workbook.Shape;

/// <summary>Headings and sheet names are the same when they differ in case, blanks and the shape of apostrophes only.</summary>
internal static partial class Heading
{
    public static string Normal(string typed) =>
        Blanks().Replace(typed.Trim(), " ").Replace('’', '\'').ToLowerInvariant();

    [GeneratedRegex(@"\s+", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Blanks();
}

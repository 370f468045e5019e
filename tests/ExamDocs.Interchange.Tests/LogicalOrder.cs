using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace ExamDocs.Interchange.Tests;

/// <summary>
/// What pdftotext reads, in the order in which it is written. It goes along a line from left to right: of words that run to the
/// left it turns each round and puts it between U+202B and U+202C, but leaves them in the order they lie in, and a vowel point
/// before the letter it stands at.
/// </summary>
internal static partial class LogicalOrder
{
    public static string Of(string read) =>
        Stretch()
            .Replace(read, stretch =>
                string.Concat(
                    Part().Matches(stretch.Value).Reverse().Select(part => part.Value[0] == '\u202B' ? Word(part.Value[1..^1]) : part.Value)
                )
            );

    /// <summary>Each letter before the points that were read before it.</summary>
    private static string Word(string turned)
    {
        var (word, points) = (new StringBuilder(turned.Length), new StringBuilder());
        foreach (var rune in turned.EnumerateRunes())
        {
            if (Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark)
            {
                points.Append(rune);
                continue;
            }
            word.Append(rune);
            if (!Rune.IsLetter(rune))
                continue;
            word.Append(points);
            points.Clear();
        }
        return word.Append(points).ToString();
    }

    /// <summary>Words that run to the left, and what lies between them; at the line's beginning, before them too.</summary>
    [GeneratedRegex(
        @"(^[^\p{L}\p{N}\u202B\u202C\n]+)?\u202B[^\u202C\n]*\u202C([^\p{L}\p{N}\u202B\u202C\n]*\u202B[^\u202C\n]*\u202C)*",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.Multiline,
        5_000
    )]
    private static partial Regex Stretch();

    [GeneratedRegex(@"\u202B[^\u202C\n]*\u202C|[^\u202B\u202C]+", RegexOptions.CultureInvariant, 5_000)]
    private static partial Regex Part();
}

using System.Text;
using ExamDocs.Core.Identity;

namespace ExamDocs.Core.Service;

/// <summary>
/// Gives all ways to write a maker, a model or a part number one spelling. Letter case, blanks and separators make no
/// difference, but a separator between two digits stays: 1-12 is not 11-2.
/// </summary>
/// <remarks>
/// Only this class says which spellings of limits are the same. It is stricter than <see cref="Identity.Folded"/>, which looks for
/// an item's past and would rather ask once too often. Here leading zeros, O for 0 and signs such as + make another model, because
/// the limits of another model could let an item serve too long.
/// </remarks>
internal static class LimitsSpelling
{
    private const string Separators = "-‐‑‒–—−_./\\'’";

    private static readonly FoldedLately<string> Lately = new(Fold);

    public static bool AreSame(string one, string? other) =>
        other is not null && string.Equals(Folded(one), Folded(other), StringComparison.Ordinal);

    /// <summary>The one spelling. A text of separators alone keeps them: else all such texts would be the same name.</summary>
    public static string Folded(string text) => Lately.Of(text);

    private static string Fold(string text)
    {
        var folded = new StringBuilder(text.Length);
        var divided = false;
        foreach (var letter in text.ToUpperInvariant())
        {
            if (IsSeparator(letter))
            {
                divided = true;
                continue;
            }
            if (divided && folded.Length > 0 && char.IsDigit(folded[^1]) && char.IsDigit(letter))
                folded.Append('-');
            folded.Append(letter);
            divided = false;
        }
        return folded.Length == 0 ? text.Trim() : folded.ToString();
    }

    private static bool IsSeparator(char letter) => char.IsWhiteSpace(letter) || Separators.Contains(letter, StringComparison.Ordinal);
}

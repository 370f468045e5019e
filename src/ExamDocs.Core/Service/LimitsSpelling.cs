using System.Text;

namespace ExamDocs.Core.Service;

/// <summary>
/// One spelling for all ways in which a maker, a model or a part number is written. Letter case, blanks and separators make no
/// difference, except that between two digits something still divides them: 1-12 is not 11-2.
/// </summary>
/// <remarks>
/// The one place that says which spellings of limits are the same; nothing else in this folder compares names. It is stricter than
/// <see cref="Identity.Folded"/>, which looks for an item's past and would rather ask once too often: leading zeros, O for 0 and
/// signs such as + make another model here, because limits of another model could let an item serve too long.
/// </remarks>
internal static class LimitsSpelling
{
    private const string Separators = "-‐‑‒–—−_./\\'’";

    public static bool AreSame(string one, string? other) =>
        other is not null && string.Equals(Folded(one), Folded(other), StringComparison.Ordinal);

    /// <summary>What has nothing but separators keeps them: it must not be the same as everything else of the kind.</summary>
    public static string Folded(string text)
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

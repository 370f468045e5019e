using System.Globalization;
using System.Text;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>
/// Finds texts that run from right to left. Their letters stand in the file in the order in which they are seen. How the
/// words of a line are mixed cannot be undone with certainty; each word must be there whole, from either side.
/// </summary>
internal sealed class RightToLeftWords(BodyText body, IReadOnlyList<IReadOnlyList<PrintedLetter>> pages)
{
    private readonly Lazy<string> _reversed = new(() =>
        string.Concat(pages.SelectMany(p => p).Reverse().Select(l => FoldedText.Of(l.Text)))
    );

    /// <summary>Whether each word is there; letters are not counted, so one word may serve for two.</summary>
    public bool AreIn(string text) =>
        text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
            .SelectMany(OfOneDirection)
            .All(run => run.Length == 0 || body.Contains(run) || _reversed.Value.Contains(run, StringComparison.Ordinal));

    /// <summary>A word parted where its direction changes.</summary>
    private static IEnumerable<string> OfOneDirection(string word)
    {
        var run = new StringBuilder();
        bool? left = null;
        foreach (var rune in word.EnumerateRunes())
        {
            // An accent goes with the letter that it is put on.
            var runsLeft =
                FoldedText.IsRightToLeft(rune) || (left is true && Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark);
            if (left is { } before && before != runsLeft)
            {
                yield return FoldedText.Of(run.ToString());
                run.Clear();
            }
            left = runsLeft;
            run.Append(rune.ToString());
        }
        yield return FoldedText.Of(run.ToString());
    }
}

using System.Net;
using System.Text;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>
/// Finds what was typed and did not reach the page: a character that no installed font has leaves the printed text
/// without a sign. Found by reading the printed file back.
/// </summary>
public static class MissingGlyphs
{
    /// <summary>Whether the page holds anything beyond the letters that every font we print with has.</summary>
    public static bool MayOccurIn(string html) => Unusual(html).Count > 0;

    /// <summary>The characters of the page that are not in the printed file, in the order of their code points.</summary>
    /// <param name="html">What was printed.</param>
    /// <param name="pdf">The file that came of it.</param>
    public static IReadOnlyList<Rune> In(string html, byte[] pdf)
    {
        var unusual = Unusual(html);
        if (unusual.Count == 0)
            return [];
        // What the font says that each sign stands for: a tag around a sign can say so too, whatever the sign looks like.
        var printed = PrintedText
            .Of(pdf)
            .SelectMany(page => page)
            .SelectMany(l => l.Drawn.EnumerateRunes().Concat(Folded(l.Drawn, NormalizationForm.FormKD)))
            .ToHashSet();
        return
        [
            .. unusual.Where(r => !printed.Contains(r) && !Folded(r.ToString(), NormalizationForm.FormD).All(printed.Contains)).Order(),
        ];
    }

    /// <summary>The characters as a user reads them: 漢 (U+6F22).</summary>
    public static string Name(IEnumerable<Rune> runes) =>
        string.Join(
            ", ",
            runes.Take(8).Select(r => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{r} (U+{r.Value:X4})"))
        );

    private static HashSet<Rune> Unusual(string html) =>
        [.. WebUtility.HtmlDecode(html).EnumerateRunes().Where(r => !IsUsual(r) && !Rune.IsWhiteSpace(r) && !Rune.IsControl(r))];

    /// <summary>Latin with its accents, and the signs that the templates use.</summary>
    private static bool IsUsual(Rune rune) => rune.Value is < 0x0180 or (>= 0x2010 and <= 0x2027);

    /// <summary>
    /// Shaped and joined forms count as the letter where they are printed, not where they are typed: a wide bracket was not
    /// printed because a plain one was.
    /// </summary>
    private static IEnumerable<Rune> Folded(string text, NormalizationForm form)
    {
        // Half of a pair or an unassigned code cannot be normalised; it stands for itself.
        var whole = text.EnumerateRunes().All(r => r != Rune.ReplacementChar);
        return (whole ? text.Normalize(form) : text).EnumerateRunes();
    }
}

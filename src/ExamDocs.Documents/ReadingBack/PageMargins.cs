using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>What our own style sheets print in the margins of each page: title, number, day of issue and page number.</summary>
internal sealed partial class PageMargins
{
    /// <summary>
    /// In the order in which they are written; each with the number of the page as the first, of the pages as the second value.
    /// </summary>
    private readonly List<string> _contents;

    /// <param name="html">A page with its style sheets.</param>
    public PageMargins(string html) => _contents = [.. Content().Matches(html).Select(m => Text(m.Groups["value"].Value))];

    /// <summary>What stands in the margins besides, a stretch for each page; empty where nothing does.</summary>
    public IEnumerable<string> Leftovers(IReadOnlyList<IReadOnlyList<PrintedLetter>> pages) =>
        pages
            .Select(
                (page, index) =>
                    Leftover(string.Concat(page.Where(l => l.IsMargin).Select(l => FoldedText.Of(l.Text))), index + 1, pages.Count)
            )
            .Where(l => l.Length > 0);

    private string Leftover(string margin, int page, int pages)
    {
        var expected = _contents.Select(c => FoldedText.Of(string.Format(CultureInfo.InvariantCulture, c, page, pages)));
        foreach (var content in expected.Where(c => c.Length > 0).OrderByDescending(c => c.Length))
        {
            var at = margin.IndexOf(content, StringComparison.Ordinal);
            margin = at < 0 ? margin : margin.Remove(at, content.Length);
        }
        return margin;
    }

    private static string Text(string value) =>
        string.Concat(
            Token()
                .Matches(value)
                .Select(t =>
                    t.Groups["counter"] is { Success: true } counter
                        ? counter.ValueSpan is "page"
                            ? "{0}"
                            : "{1}"
                        : Unescaped(t.Groups["text"].Value)
                            .Replace("{", "{{", StringComparison.Ordinal)
                            .Replace("}", "}}", StringComparison.Ordinal)
                )
        );

    /// <summary>A backslash and hexadecimal digits stand for the letter of that number (CSS Syntax 3, section 4.3.7).</summary>
    private static string Unescaped(string text) =>
        Escape()
            .Replace(text, e =>
                new Rune(int.Parse(e.Groups["code"].ValueSpan, NumberStyles.HexNumber, CultureInfo.InvariantCulture)).ToString()
            );

    [GeneratedRegex(
        """content: (?<value>(?:"[^"]*"|counter\([a-z]+\)|\s)+);""",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Content();

    [GeneratedRegex(
        """counter\((?<counter>[a-z]+)\)|"(?<text>[^"]*)["]""",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Token();

    [GeneratedRegex("""\\(?<code>[0-9a-fA-F]{1,6}) ?""", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Escape();
}

using System.Globalization;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>Holds a printed file against the page it was printed from: every text must be there, whole and uncut.</summary>
public static class FaithfulPrint
{
    private const int LongestQuote = 60;

    /// <param name="html">What was printed.</param>
    /// <param name="pdf">The file that came of it.</param>
    /// <returns>What is wrong, a few words each; empty where nothing is.</returns>
    /// <exception cref="Finishing.PdfSyntaxException">The file is none that the browser writes.</exception>
    public static IReadOnlyList<string> Faults(string html, byte[] pdf)
    {
        var pages = PrintedText.Of(pdf);
        var body = new PrintedBody(pages);
        return
        [
            .. VisibleText.Of(html).OrderByDescending(text => FoldedText.Of(text).Length).Where(text => !body.Strike(text)).Select(text => $"\"{Quote(text)}\" is not printed whole"),
            .. pages.SelectMany(Cut),
        ];
    }

    private static IEnumerable<string> Cut(IReadOnlyList<PrintedLetter> page, int index)
    {
        var cut = string.Concat(page.Where(l => l.IsCut).Select(l => l.Text));
        if (cut.Length > 0)
            yield return string.Create(CultureInfo.InvariantCulture, $"\"{Quote(cut)}\" is cut off on page {index + 1}");
    }

    private static string Quote(string text)
    {
        var line = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return line.Length <= LongestQuote ? line : line[..LongestQuote] + "…";
    }
}

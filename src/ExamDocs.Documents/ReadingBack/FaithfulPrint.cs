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
            .. Missing(body, VisibleText.Of(html)),
            .. pages.SelectMany(Cut),
        ];
    }

    /// <summary>Holds them against each other in both directions: nothing is missing or cut, and nothing stands in the file that is not of the page.</summary>
    /// <remarks>Pictures and lines are not compared, nor where on the paper a text stands.</remarks>
    /// <inheritdoc cref="Faults"/>
    public static IReadOnlyList<string> Differences(string html, byte[] pdf)
    {
        var pages = PrintedText.Of(pdf);
        var (body, texts, heads) = (new PrintedBody(pages), VisibleText.Of(html), VisibleText.Heads(html));
        return
        [
            .. body.Says(texts, heads) ? [] : OfBody(body, texts, heads),
            .. new PageMargins(html).Leftovers(pages).Select(Besides),
            .. pages.SelectMany(Cut),
        ];
    }

    /// <summary>In which order texts from right to left are drawn cannot be told: there it is enough that all are there and none besides.</summary>
    private static IReadOnlyList<string> OfBody(PrintedBody body, IReadOnlyList<string> texts, IReadOnlyList<string> heads)
    {
        List<string> found = [.. Missing(body, texts), .. body.Leftovers(texts, heads).Select(Besides)];
        return found.Count > 0 || texts.Any(FoldedText.RunsLeft) ? found : ["its texts stand in another order"];
    }

    private static IEnumerable<string> Missing(PrintedBody body, IReadOnlyList<string> texts) =>
        texts.OrderByDescending(text => FoldedText.Of(text).Length).Where(text => !body.Strike(text)).Select(text => $"\"{Quote(text)}\" is not printed whole");

    private static string Besides(string text) => $"\"{Quote(text)}\" is printed and does not belong there";

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

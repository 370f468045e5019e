using System.Globalization;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>Holds a printed file against the page it was printed from: every text must be there, whole, uncut and readable.</summary>
public static class FaithfulPrint
{
    private const int LongestQuote = 60;

    /// <param name="html">What was printed.</param>
    /// <param name="pdf">The file that came of it.</param>
    /// <returns>What is wrong, and with which item's part; empty where nothing is.</returns>
    /// <exception cref="PdfSyntax.PdfSyntaxException">The file is not one that the browser writes.</exception>
    public static IReadOnlyList<PrintFault> Faults(string html, byte[] pdf)
    {
        var (pages, texts) = (PrintedText.Pages(pdf), VisibleText.Texts(html));
        var body = new PrintedBody([.. pages.Select(p => p.Letters)], VisibleText.Heads(html));
        IReadOnlyList<PrintFault> found = [.. Missing(body, texts), .. Unreadable(body, pages, texts)];
        // The head of a table that runs on is printed again on the next page, and must be whole there too.
        return found.Count > 0 ? found : [.. body.Leftovers(texts.Select(t => t.Text)).Select(left => new PrintFault(Besides(left), null))];
    }

    /// <summary>The texts of a page that no installed font has a sign for, each with its item.</summary>
    /// <param name="html">The page.</param>
    /// <param name="missing">The characters that no font has.</param>
    public static IReadOnlyList<PrintFault> Lacking(string html, IReadOnlyList<System.Text.Rune> missing) =>
        missing.Count == 0
            ? []
            :
            [
                .. VisibleText
                    .Texts(html)
                    .Where(t => t.Text.EnumerateRunes().Any(missing.Contains))
                    .SelectMany(t => ItemsOf(t).Select(item => (t.Text, Item: item)))
                    .GroupBy(t => t.Item, StringComparer.Ordinal)
                    .Select(g => new PrintFault(
                        "no installed font has "
                            + $"{MissingGlyphs.Name(g.SelectMany(t => t.Text.EnumerateRunes()).Where(missing.Contains).Distinct())}",
                        g.Key
                    ))
                    .DefaultIfEmpty(new PrintFault($"no installed font has {MissingGlyphs.Name(missing)}", null)),
            ];

    /// <summary>
    /// Holds them against each other in both directions: nothing is missing, cut or covered, and nothing stands in the file that is not of
    /// the page.
    /// </summary>
    /// <remarks>Pictures and lines are not compared, nor where on the paper a text stands.</remarks>
    /// <inheritdoc cref="Faults"/>
    public static IReadOnlyList<string> Differences(string html, byte[] pdf)
    {
        var (pages, texts) = (PrintedText.Pages(pdf), VisibleText.Texts(html));
        IReadOnlyList<IReadOnlyList<PrintedLetter>> letters = [.. pages.Select(p => p.Letters)];
        var body = new PrintedBody(letters, VisibleText.Heads(html));
        return
        [
            .. body.Says(texts.Select(t => t.Text)) ? [] : OfBody(body, texts),
            .. new PageMargins(html).Leftovers(letters).Select(Besides),
            .. Unreadable(body, pages, texts).Select(f => f.Words),
        ];
    }

    /// <summary>
    /// Texts from right to left may be drawn in any order: for them it is enough that all are there, and none besides.
    /// </summary>
    private static IReadOnlyList<string> OfBody(PrintedBody body, IReadOnlyList<PageText> texts)
    {
        List<string> found = [.. Missing(body, texts).Select(f => f.Words), .. body.Leftovers(texts.Select(t => t.Text)).Select(Besides)];
        return found.Count > 0 || texts.Any(t => FoldedText.RunsLeft(t.Text)) ? found : ["its texts stand in another order"];
    }

    private static IEnumerable<PrintFault> Missing(PrintedBody body, IReadOnlyList<PageText> texts) =>
        from missing in body.Missing([.. texts.Select(t => t.Text)])
        from item in ItemsOf(texts[missing])
        select new PrintFault($"\"{Quote(texts[missing].Text)}\" is not printed whole", item);

    /// <summary>The heading of a group is about each of its items; null stands for a text that is about none.</summary>
    private static IReadOnlyList<string?> ItemsOf(PageText text) => text.Items.Count == 0 ? NoItem : text.Items;

    private static readonly IReadOnlyList<string?> NoItem = [null];

    private static string Besides(string text) => $"\"{Quote(text)}\" is printed and does not belong there";

    /// <summary>Each stretch of letters that are cut, covered or otherwise not to be read, with the item whose text took them.</summary>
    private static IEnumerable<PrintFault> Unreadable(PrintedBody body, IReadOnlyList<PrintedPage> pages, IReadOnlyList<PageText> texts)
    {
        for (var page = 0; page < pages.Count; page++)
        {
            var where = string.Create(CultureInfo.InvariantCulture, $"on page {page + 1}");
            var unreadable = pages[page]
                .Letters.Where(l => l.IsCut)
                .Select(l => (Letter: l, Why: "is cut off"))
                .Concat(ObscuredLetters.On(pages[page]))
                .SelectMany(u => ItemsOf(body.TextsAt(u.Letter), texts).Select(item => (u.Letter, u.Why, Item: item)))
                .GroupBy(u => (u.Why, u.Item));
            foreach (var group in unreadable)
                yield return new PrintFault(
                    $"\"{Quote(string.Concat(group.Select(u => u.Letter.Text)))}\" {group.Key.Why} {where}",
                    group.Key.Item
                );
        }
    }

    /// <summary>The items that all texts around a letter are about; null where they are about none, or about different ones.</summary>
    private static IReadOnlyList<string?> ItemsOf(IReadOnlyList<int> around, IReadOnlyList<PageText> texts)
    {
        var items = around.Select(t => texts[t].Items).ToList();
        return items.Count > 0 && items[0].Count > 0 && items.TrueForAll(i => i.SequenceEqual(items[0], StringComparer.Ordinal))
            ? items[0]
            : NoItem;
    }

    private static string Quote(string text)
    {
        var line = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return line.Length <= LongestQuote ? line : line[..LongestQuote] + "…";
    }
}

using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>One text of a page.</summary>
/// <param name="Text">As it stands in the page.</param>
/// <param name="Item">The id, as printed, of the item whose block or row it stands in; null outside of them.</param>
internal sealed record PageText(string Text, string? Item);

/// <summary>What a page has to say: every text of our own HTML that is there to be read, in its order.</summary>
internal static class VisibleText
{
    /// <summary>What these hold is never shown.</summary>
    private static readonly HashSet<string> Silent = new(
        ["head", "style", "script", "template", "title", "desc", "metadata", "noscript"],
        StringComparer.OrdinalIgnoreCase
    );

    public static IReadOnlyList<string> Of(string html) => [.. Texts(html).Select(t => t.Text)];

    /// <summary>The same, each with the item that it is about.</summary>
    public static IReadOnlyList<PageText> Texts(string html)
    {
        var texts = new List<PageText>();
        Add(new HtmlParser().ParseDocument(html).DocumentElement, texts, null);
        return texts;
    }

    /// <summary>The head of each table, as it is compared: a table that runs on has it on every page.</summary>
    public static IReadOnlyList<string> Heads(string html) =>
        [
            .. new HtmlParser()
                .ParseDocument(html)
                .QuerySelectorAll("thead")
                .Select(head =>
                {
                    var texts = new List<PageText>();
                    Add(head, texts, null);
                    return string.Concat(texts.Select(t => FoldedText.Of(t.Text)));
                })
                .Distinct(StringComparer.Ordinal),
        ];

    private static void Add(INode node, List<PageText> texts, string? item)
    {
        foreach (var child in node.ChildNodes)
        {
            if (child is IText { Data: var text } && !string.IsNullOrWhiteSpace(text))
                texts.Add(new PageText(text, item));
            else if (child is IElement element && !Silent.Contains(element.LocalName))
                Add(element, texts, ItemOf(element) ?? item);
        }
    }

    /// <summary>A report has a block for each item, headed by its id, and rows that begin with it.</summary>
    private static string? ItemOf(IElement element) =>
        element.LocalName switch
        {
            "section" when element.ClassList.Contains("item") => element.QuerySelector("h3")?.TextContent,
            "tr" => element.QuerySelector("th.id")?.TextContent,
            _ => null,
        };
}

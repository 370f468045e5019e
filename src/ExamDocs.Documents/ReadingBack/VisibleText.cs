using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>One text of a page.</summary>
/// <param name="Text">As it stands in the page.</param>
/// <param name="Items">The ids, as printed, of the items that it is about: one in a block or a line, all of its lines in the heading of a
/// group; empty outside of them.</param>
internal sealed record PageText(string Text, IReadOnlyList<string> Items);

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
        Add(new HtmlParser().ParseDocument(html).DocumentElement, texts, []);
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
                    Add(head, texts, []);
                    return string.Concat(texts.Select(t => FoldedText.Of(t.Text)));
                })
                .Distinct(StringComparer.Ordinal),
        ];

    private static void Add(INode node, List<PageText> texts, IReadOnlyList<string> items)
    {
        foreach (var child in node.ChildNodes)
        {
            if (child is IText { Data: var text } && !string.IsNullOrWhiteSpace(text))
                texts.Add(new PageText(text, items));
            else if (child is IElement element && !Silent.Contains(element.LocalName))
                Add(element, texts, ItemsOf(element) ?? items);
        }
    }

    /// <summary>
    /// A report has a block for some items, headed by its id, and groups of others, in rows that begin with it; what is noted of one stands
    /// in a row below.
    /// </summary>
    private static IReadOnlyList<string>? ItemsOf(IElement element) =>
        element.LocalName switch
        {
            "section" when element.ClassList.Contains("item") => Texts(element.QuerySelectorAll(".item-name > :first-child")),
            "tbody" when element.ClassList.Contains("group") => Texts(element.QuerySelectorAll("th.id")),
            "tr" when element.ClassList.Contains("note") => Texts(
                element.PreviousElementSibling?.QuerySelectorAll("th.id") ?? Enumerable.Empty<IElement>()
            ),
            "tr" => element.QuerySelector("th.id[scope]") is { } id ? [id.TextContent] : null,
            _ => null,
        };

    private static IReadOnlyList<string> Texts(IEnumerable<IElement> elements) => [.. elements.Select(e => e.TextContent)];
}

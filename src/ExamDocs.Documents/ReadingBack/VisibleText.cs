using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>What a page has to say: every text of our own HTML that is there to be read, in its order.</summary>
internal static class VisibleText
{
    /// <summary>What these hold is never shown.</summary>
    private static readonly HashSet<string> Silent = new(["head", "style", "script", "template", "title", "desc", "metadata", "noscript"], StringComparer.OrdinalIgnoreCase);

    public static IReadOnlyList<string> Of(string html)
    {
        var document = new HtmlParser().ParseDocument(html);
        var texts = new List<string>();
        Add(document.DocumentElement, texts);
        return texts;
    }

    /// <summary>The head of each table, as it is compared: a table that runs on has it on every page.</summary>
    public static IReadOnlyList<string> Heads(string html) => [.. new HtmlParser().ParseDocument(html).QuerySelectorAll("thead").Select(head =>
    {
        var texts = new List<string>();
        Add(head, texts);
        return string.Concat(texts.Select(FoldedText.Of));
    }).Distinct(StringComparer.Ordinal)];

    private static void Add(INode node, List<string> texts)
    {
        foreach (var child in node.ChildNodes)
        {
            if (child is IText { Data: var text } && !string.IsNullOrWhiteSpace(text))
                texts.Add(text);
            else if (child is IElement element && !Silent.Contains(element.LocalName))
                Add(element, texts);
        }
    }
}

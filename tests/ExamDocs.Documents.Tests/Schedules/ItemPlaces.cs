using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using ExamDocs.Documents.Tests.Printing;

namespace ExamDocs.Documents.Tests.Schedules;

/// <summary>Where a report's page has an item: in a block, or in a line with the heading of its group.</summary>
/// <param name="Line">Text of the item's own line with its note, or of its block.</param>
/// <param name="Group">Text of the heading of its group, or of its block.</param>
/// <param name="IsBlock">Whether it has a block.</param>
internal sealed record ItemPlace(string Line, string Group, bool IsBlock);

/// <summary>Reads a report's page by its tags alone, so that a value in another item's place is not found.</summary>
internal sealed class ItemPlaces
{
    private readonly IDocument _page;

    public ItemPlaces(string html)
    {
        _page = new HtmlParser().ParseDocument(html);
        foreach (var block in _page.QuerySelectorAll("section.item"))
            Add(block.QuerySelector("h3")!.TextContent, new ItemPlace(Text(block), Text(block), IsBlock: true));
        foreach (var body in _page.QuerySelectorAll("tbody.group"))
        {
            var heading = Text(body.QuerySelector(".group-head")!);
            foreach (var line in body.QuerySelectorAll("tr").Where(r => r.QuerySelector("th.id") is not null))
            {
                var note = line.NextElementSibling is { } next && next.ClassList.Contains("note") ? Text(next) : "";
                Add(line.QuerySelector("th.id")!.TextContent, new ItemPlace(Text(line) + note, heading, IsBlock: false));
            }
        }
        Outside = Text(Without(_page.DocumentElement));
    }

    public Dictionary<string, ItemPlace> Items { get; } = new(StringComparer.Ordinal);

    /// <summary>All that stands in no block and no group: the first page, signatures, the last page.</summary>
    public string Outside { get; }

    public string Last => Text(_page.QuerySelectorAll("section.closing").Select(s => s.TextContent));

    public int Groups => _page.QuerySelectorAll("tbody.group").Count(b => !Text(b.QuerySelector(".group-head")!).Contains("continued:"));

    private void Add(string id, ItemPlace place) => Assert.True(Items.TryAdd(id, place), $"{id} has two places");

    private static IElement Without(IElement root)
    {
        var copy = (IElement)root.Clone();
        foreach (var part in copy.QuerySelectorAll("section.item, tbody.group, style").ToList())
            part.Remove();
        return copy;
    }

    private static string Text(IElement element) => Text([element.TextContent]);

    private static string Text(IEnumerable<string> texts) => Tool.Squeeze(string.Concat(texts));
}

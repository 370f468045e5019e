using System.Text;

namespace ExamDocs.Documents.PdfSyntax;

/// <summary>A page with what it draws with.</summary>
internal sealed class PdfPage(PdfSource source, PdfObject page)
{
    /// <summary>No page of ours unpacks to more, bytes.</summary>
    public const int MostContent = 64 * 1024 * 1024;

    private readonly PdfDictionary _page = page.Dictionary();

    public int Number => page.Number;

    /// <summary>The numbers of its links, notes and fields.</summary>
    public IEnumerable<int> Annotations =>
        _page.Find("Annots") is not { } list
            ? []
            : PageTree.References(_page.Reference("Annots") is { } number ? source.Object(number).Body : list);

    public int ContentNumber => _page.Reference("Contents") ?? throw new PdfSyntaxException("a page has no content");

    public byte[] Content() => source.Object(ContentNumber).Stream(MostContent);

    public PdfResources Resources => PdfResources.Of(source, _page);

    /// <summary>Left, bottom, right and top, points.</summary>
    public double[] Box()
    {
        var numbers = new List<double>();
        var lexer = new PdfLexer((_page.Find("MediaBox") ?? throw new PdfSyntaxException("a page has no size")).Span);
        while (lexer.Next())
        {
            if (PdfNumber.Real(lexer.Token) is { } number)
                numbers.Add(number);
        }
        return numbers.Count == 4 ? [.. numbers] : throw new PdfSyntaxException("a page has no size");
    }
}

/// <summary>The fonts and objects that a page, or an object drawn on it, names.</summary>
internal sealed class PdfResources(PdfSource source, PdfDictionary? resources)
{
    public static PdfResources Of(PdfSource source, PdfDictionary owner) => new(source, Inner(source, owner, "Resources"));

    public PdfObject? Font(string name) => Find("Font", name);

    public PdfObject? Drawn(string name) => Find("XObject", name);

    /// <summary>The drawing settings of this name; null where there are none.</summary>
    public PdfDictionary? State(string name) => Find("ExtGState", name)?.Dictionary();

    public bool IsPicture(string name) => string.Equals(Drawn(name)?.Dictionary().Word("Subtype"), "/Image", StringComparison.Ordinal);

    private PdfObject? Find(string kind, string name) =>
        resources is not null && Inner(source, resources, kind)?.Reference(name) is { } number ? source.Object(number) : null;

    private static PdfDictionary? Inner(PdfSource source, PdfDictionary owner, string name) =>
        owner.Reference(name) is { } number ? source.Object(number).Dictionary()
        : owner.Find(name) is { } value ? PdfDictionary.Read(value)
        : null;
}

/// <summary>The pages of a file in their order.</summary>
internal static class PageTree
{
    private const int MostDepth = 32;

    /// <exception cref="PdfSyntaxException">The pages do not form a tree.</exception>
    public static IReadOnlyList<PdfPage> Of(PdfSource source)
    {
        var pages = new List<PdfPage>();
        Add(source, source.Object(source.Catalog.Dictionary().Reference("Pages")), pages, MostDepth);
        return pages;
    }

    private static void Add(PdfSource source, PdfObject node, List<PdfPage> pages, int depth)
    {
        if (depth == 0)
            throw new PdfSyntaxException("its pages nest too deeply");
        if (node.Dictionary().Find("Kids") is not { } kids)
        {
            pages.Add(new PdfPage(source, node));
            return;
        }
        foreach (var kid in References(kids))
            Add(source, source.Object(kid), pages, depth - 1);
    }

    public static IEnumerable<int> References(ReadOnlyMemory<byte> list) =>
        Encoding
            .Latin1.GetString(list.Span)
            .Trim('[', ']')
            .Split('R', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(r =>
                PdfNumber.Reference(Encoding.Latin1.GetBytes(r + " R"))
                ?? throw new PdfSyntaxException("its pages are listed in an unknown way")
            );
}

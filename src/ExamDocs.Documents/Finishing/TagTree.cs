using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.Finishing;

/// <summary>The tags of a file in the order in which they are read aloud.</summary>
internal static class TagTree
{
    private static readonly string[] Levels = ["/H1", "/H2", "/H3", "/H4", "/H5", "/H6"];

    /// <summary>
    /// Whether every picture has words (ISO 14289-1, 7.3), and the headings begin with the first level and leave none out
    /// (7.4.2).
    /// </summary>
    public static bool IsAccessible(PdfSource source, PdfDictionary catalog)
    {
        if (
            catalog.Reference("StructTreeRoot") is not { } root
            || catalog.Find("MarkInfo") is not { } info
            || info.Span.IndexOf("/Marked true"u8) < 0
        )
            return false;
        var deepest = 0;
        foreach (var tag in Under(source, root))
        {
            var kind = tag.Word("S");
            if (string.Equals(kind, "/Figure", StringComparison.Ordinal) && !tag.Has("Alt"))
                return false;
            var level = Array.IndexOf(Levels, kind) + 1;
            if (level > deepest + 1)
                return false;
            deepest = level > 0 ? level : deepest;
        }
        return deepest > 0;
    }

    private static IEnumerable<PdfDictionary> Under(PdfSource source, int root)
    {
        var open = new Stack<int>([root]);
        var passed = new HashSet<int>();
        while (open.TryPop(out var number))
        {
            // A tag within itself would be gone through without end.
            if (!passed.Add(number))
                throw new PdfSyntaxException("its tags run in a circle");
            var tag = source.Object(number).Dictionary();
            yield return tag;
            foreach (var kid in Kids(source, tag).AsEnumerable().Reverse())
                open.Push(kid);
        }
    }

    /// <summary>The tags within a tag; what is not a tag is a place on a page.</summary>
    private static List<int> Kids(PdfSource source, PdfDictionary tag)
    {
        var kids = new List<int>();
        if (tag.Find("K") is not { } within)
            return kids;
        if (PdfNumber.Reference(within.Span) is { } list && source.Object(list).Body.Span.StartsWith("["u8))
            within = source.Object(list).Body;
        var inner = within.Span.StartsWith("["u8) ? within[1..^1] : within;
        var lexer = new PdfLexer(inner.Span);
        for (var ahead = lexer; ahead.Next(); ahead = lexer)
        {
            var (start, end) = lexer.Value();
            if (PdfNumber.Reference(inner.Span[start..end]) is { } kid && IsTag(source.Object(kid)))
                kids.Add(kid);
        }
        return kids;
    }

    private static bool IsTag(PdfObject o) => o.Body.Span.IndexOf("/StructElem"u8) >= 0;
}

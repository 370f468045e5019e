using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.Finishing;

/// <summary>
/// Titles of bookmarks. A heading that the browser first sets at the foot of a page and then moves to the next one comes out of it
/// with its words twice.
/// </summary>
internal static class BookmarkTitles
{
    public static void Tidy(PdfSource source, PdfTarget target, PdfDictionary catalog)
    {
        if (catalog.Reference("Outlines") is not { } root)
            return;
        var open = new Stack<int>([root]);
        var passed = new HashSet<int>();
        while (open.TryPop(out var number))
        {
            // A bookmark that comes after itself would be gone through without end.
            if (!passed.Add(number))
                throw new PdfSyntaxException("its bookmarks run in a circle");
            var bookmark = source.Object(number).Dictionary();
            foreach (var other in new[] { bookmark.Reference("First"), bookmark.Reference("Next") }.OfType<int>())
                open.Push(other);
            if (bookmark.Find("Title") is { } title && Once(PdfText.Read(title.Span)) is { } once)
                target.Replace(number, bookmark.Set("Title", PdfText.Write(once)).Bytes());
        }
    }

    /// <summary>The words once; null where they do not stand there twice. What has a digit may be an id, and stays as it is.</summary>
    internal static string? Once(string title)
    {
        var half = title[..(title.Length / 2)];
        return half.Length > 0 && !half.Any(char.IsDigit) && string.Equals(half + half, title, StringComparison.Ordinal) ? half : null;
    }
}

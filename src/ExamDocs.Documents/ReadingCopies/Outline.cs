using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.ReadingCopies;

/// <summary>A bookmark with those under it.</summary>
/// <param name="Title">What it says.</param>
/// <param name="Target">Where it leads, as a file has it.</param>
internal sealed record Bookmark(string Title, string Target)
{
    public List<Bookmark> Under { get; } = [];
}

/// <summary>The bookmarks of a reading copy.</summary>
internal static class Outline
{
    private const int Deepest = 8;

    /// <summary>Adds a bookmark below others, which are made where they are missing and lead to the same place.</summary>
    public static void Add(List<Bookmark> to, IReadOnlyList<string> above, Bookmark bookmark)
    {
        var list = to;
        foreach (var title in above)
        {
            if (list.Count == 0 || !string.Equals(list[^1].Title, title, StringComparison.Ordinal))
                list.Add(new Bookmark(title, bookmark.Target));
            list = list[^1].Under;
        }
        list.Add(bookmark);
    }

    /// <summary>The bookmarks that a file brings, leading to where its pages are now.</summary>
    /// <param name="source">The file.</param>
    /// <param name="pages">The new number of each of its pages.</param>
    public static List<Bookmark> Of(PdfSource source, IReadOnlyDictionary<int, int> pages) =>
        source.Catalog.Dictionary().Reference("Outlines") is { } root ? Under(source, root, pages, Deepest) : [];

    private static List<Bookmark> Under(PdfSource source, int above, IReadOnlyDictionary<int, int> pages, int depth)
    {
        var (found, passed) = (new List<Bookmark>(), new HashSet<int>());
        for (var at = source.Object(above).Dictionary().Reference("First"); at is { } number && depth > 0 && passed.Add(number); )
        {
            var entry = source.Object(number).Dictionary();
            if (Target(entry, pages) is { } target)
            {
                var title = PdfText.Read((entry.Find("Title") ?? default).Span);
                found.Add(new Bookmark(BookmarkTitles.Once(title) ?? title, target));
                found[^1].Under.AddRange(Under(source, number, pages, depth - 1));
            }
            at = entry.Reference("Next");
        }
        return found;
    }

    private static string? Target(PdfDictionary entry, IReadOnlyDictionary<int, int> pages)
    {
        if (entry.Word("Dest") is not { } target || !target.StartsWith('['))
            return null;
        var end = target.IndexOf('R', StringComparison.Ordinal);
        return end > 0 && PdfNumber.Reference(StreamedPdf.Latin(target[1..(end + 1)])) is { } page && pages.TryGetValue(page, out var now)
            ? $"[{StreamedPdf.Reference(now)}{target[(end + 1)..]}"
            : null;
    }

    /// <returns>The number of the root; null where there is no bookmark.</returns>
    public static int? Write(StreamedPdf pdf, IReadOnlyList<Bookmark> bookmarks)
    {
        if (bookmarks.Count == 0)
            return null;
        var root = pdf.Reserve();
        pdf.Put(root, $"<</Type /Outlines {Level(pdf, root, bookmarks)}/Count {Printed(bookmarks.Count)}>>");
        return root;
    }

    /// <returns>The entries First and Last of what these stand under.</returns>
    private static string Level(StreamedPdf pdf, int above, IReadOnlyList<Bookmark> level)
    {
        var numbers = level.Select(_ => pdf.Reserve()).ToList();
        foreach (var (n, bookmark) in level.Index())
        {
            var under =
                bookmark.Under.Count == 0
                    ? ""
                    // Closed: whoever opens the file sees the chapters.
                    : $"{Level(pdf, numbers[n], bookmark.Under)}/Count -{Printed(bookmark.Under.Count)}\n";
            var next = n + 1 < level.Count ? $"/Next {StreamedPdf.Reference(numbers[n + 1])}\n" : "";
            var before = n > 0 ? $"/Prev {StreamedPdf.Reference(numbers[n - 1])}\n" : "";
            pdf.Put(
                numbers[n],
                $"<</Title {PdfText.Write(bookmark.Title)}\n/Parent {StreamedPdf.Reference(above)}\n{before}{next}{under}"
                    + $"/Dest {bookmark.Target}>>"
            );
        }
        return $"/First {StreamedPdf.Reference(numbers[0])}\n/Last {StreamedPdf.Reference(numbers[^1])}\n";
    }

    private static string Printed(int count) => count.ToString(System.Globalization.CultureInfo.InvariantCulture);
}

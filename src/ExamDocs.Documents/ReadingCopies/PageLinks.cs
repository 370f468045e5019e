using System.Text;
using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.ReadingCopies;

/// <summary>The links of our own pages that lead to other pages of a reading copy.</summary>
internal static class PageLinks
{
    /// <param name="source">The file that the page is in.</param>
    /// <param name="page">The page.</param>
    /// <param name="links">The first page of each part, by its key.</param>
    /// <returns>A note for each, as it is written; links to elsewhere are left out.</returns>
    public static IEnumerable<string> On(PdfSource source, PdfPage page, IReadOnlyDictionary<string, int> links) =>
        from number in page.Annotations
        let note = source.Object(number).Dictionary()
        let rectangle = note.Word("Rect")
        where rectangle is not null && string.Equals(note.Word("Subtype"), "/Link", StringComparison.Ordinal)
        let key = Key(source, note)
        where key is not null && links.ContainsKey(key)
        select $"<</Type /Annot /Subtype /Link /F 4 /Border [0 0 0] /Rect {rectangle} /Dest [{StreamedPdf.Reference(links[key])} /Fit]>>";

    private static string? Key(PdfSource source, PdfDictionary note)
    {
        var action =
            note.Reference("A") is { } number ? source.Object(number).Dictionary()
            : note.Find("A") is { } within ? PdfDictionary.Read(within)
            : null;
        if (action?.Find("URI") is not { } uri)
            return null;
        var address = Encoding.UTF8.GetString(PdfText.Bytes(uri.Span));
        return address.StartsWith(ReadingCopy.LinkStart, StringComparison.Ordinal)
            ? Uri.UnescapeDataString(address[ReadingCopy.LinkStart.Length..])
            : null;
    }
}

using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.ReadingCopies;

/// <summary>A file whose pages go into a reading copy.</summary>
/// <param name="Key">What links lead to it by; differs from those of other parts.</param>
/// <param name="Title">Of its bookmark; null for a part that brings its own.</param>
/// <param name="Above">Titles of the bookmarks that its own stands under, the outermost first.</param>
/// <param name="Pages">How many it has.</param>
/// <param name="Open">Gives the whole file, each time the same.</param>
public sealed record CopyPart(string Key, string? Title, IReadOnlyList<string> Above, int Pages, Func<byte[]> Open)
{
    /// <summary>Its pages are numbered apart, in Roman figures: it comes before what is numbered.</summary>
    public bool IsFront { get; init; }

    /// <summary>What else is on its first page: keys and titles, each with a bookmark and links of its own.</summary>
    public IReadOnlyList<(string Key, string Title)> Also { get; init; } = [];

    /// <summary>How many pages a file has, if they can go into a reading copy as it is; null where they cannot.</summary>
    public static int? PagesOf(byte[] pdf)
    {
        try
        {
            return PageTree.Of(PdfSource.Read(pdf)).Count is > 0 and var pages ? pages : null;
        }
        catch (PdfSyntaxException)
        {
            return null;
        }
    }
}

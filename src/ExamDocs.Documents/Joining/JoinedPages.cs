using PdfSharp.Pdf;
using PdfSharp.Pdf.IO;

namespace ExamDocs.Documents.Joining;

/// <summary>
/// Puts the pages of several documents into one file, to be printed in one go. Each page is as it was issued; the tags that
/// make a document accessible are not carried over, so the single documents stay the ones to keep.
/// </summary>
public static class JoinedPages
{
    /// <param name="documents">Whole PDFs, in the order of their pages.</param>
    /// <param name="title">Title of the file.</param>
    /// <exception cref="ArgumentException">There is no document.</exception>
    public static byte[] Of(IReadOnlyList<byte[]> documents, string title)
    {
        if (documents.Count == 0)
            throw new ArgumentException("there is nothing to join", nameof(documents));
        using var joined = new PdfDocument();
        joined.Info.Title = title;
        foreach (var document in documents)
            Add(joined, document);
        using var result = new MemoryStream();
        joined.Save(result, closeStream: false);
        return result.ToArray();
    }

    private static void Add(PdfDocument joined, byte[] document)
    {
        using var bytes = new MemoryStream(document);
        using var source = PdfReader.Open(bytes, PdfDocumentOpenMode.Import);
        for (var page = 0; page < source.PageCount; page++)
        {
            var added = joined.AddPage(source.Pages[page]);
            // A signature is one over its own file; what is left of it here would only look broken.
            added.Elements.Remove("/Annots");
        }
    }
}

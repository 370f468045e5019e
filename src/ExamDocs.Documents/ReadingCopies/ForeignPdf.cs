using PdfSharp.Pdf;
using PdfSharp.Pdf.IO;

namespace ExamDocs.Documents.ReadingCopies;

/// <summary>Files of other programs.</summary>
public static class ForeignPdf
{
    /// <summary>Deeper lists and dictionaries are no document of anybody's; the library would come to the end of its stack.</summary>
    private const int Deepest = 200;

    public static bool Is(ReadOnlySpan<byte> file) => file.StartsWith("%PDF"u8);

    /// <summary>The same pages, written so that they can go into a reading copy.</summary>
    /// <returns>Null where it is locked, damaged or of a kind that cannot be read.</returns>
    public static byte[]? Readable(byte[] pdf)
    {
        if (NestsTooDeeply(pdf))
            return null;
        try
        {
            using var bytes = new MemoryStream(pdf);
            using var theirs = PdfReader.Open(bytes, PdfDocumentOpenMode.Import);
            using var written = new PdfDocument();
            for (var page = 0; page < theirs.PageCount; page++)
                written.AddPage(theirs.Pages[page]);
            using var result = new MemoryStream();
            written.Save(result, closeStream: false);
            return CopyPart.PagesOf(result.ToArray()) is null ? null : result.ToArray();
        }
        // A stranger's file may break the library in any way.
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            return null;
        }
    }

    private static bool NestsTooDeeply(ReadOnlySpan<byte> pdf)
    {
        var depth = 0;
        for (var at = 0; at < pdf.Length; at++)
        {
            if (pdf[at..].StartsWith("stream"u8))
            {
                var end = pdf[at..].IndexOf("endstream"u8);
                (at, depth) = (end < 0 ? pdf.Length : at + end + "endstream"u8.Length, 0);
            }
            else if (pdf[at] is (byte)'[' or (byte)'<')
                depth++;
            else if (pdf[at] is (byte)']' or (byte)'>')
                depth = Math.Max(0, depth - 1);
            if (depth > Deepest)
                return true;
        }
        return false;
    }
}

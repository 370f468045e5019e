using ExamDocs.Documents.PdfSyntax;
using ExamDocs.Documents.ReadingBack;

namespace ExamDocs.Documents.Comparing;

/// <summary>A photo or a logo as it lies in a file.</summary>
/// <param name="Jpeg">The JPEG; empty where it is kept in another form.</param>
/// <param name="WidthPx">Pixels.</param>
/// <param name="HeightPx">Pixels.</param>
public sealed record DrawnPicture(ReadOnlyMemory<byte> Jpeg, int WidthPx, int HeightPx);

/// <summary>Takes the pictures out of a file, so that the same document can be printed a second time with them.</summary>
public static class DrawnPictures
{
    /// <param name="pdf">The whole file.</param>
    /// <returns>One for each time that a picture is drawn, in the order of drawing.</returns>
    /// <exception cref="PdfSyntaxException">It is not a file that the browser writes.</exception>
    public static IReadOnlyList<DrawnPicture> Of(byte[] pdf) =>
        [.. PrintedText.Pages(pdf).SelectMany(p => p.Shapes).Select(s => s.Picture).OfType<PdfObject>().Select(Read)];

    private static DrawnPicture Read(PdfObject picture)
    {
        var dictionary = picture.Dictionary();
        var isJpeg = string.Equals(dictionary.Word("Filter"), "/DCTDecode", StringComparison.Ordinal);
        return new DrawnPicture(isJpeg ? picture.Raw() : default, dictionary.Number("Width") ?? 1, dictionary.Number("Height") ?? 1);
    }
}

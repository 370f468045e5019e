using System.Globalization;
using System.Text;

namespace ExamDocs.Documents.ReadingCopies;

/// <summary>
/// The page number of a reading copy, at the top of a page. It is a note laid over the page, so that the page itself stays as it was
/// printed.
/// </summary>
internal static class PageMark
{
    private const double Width = 120,
        Height = 10,
        FromTop = 12,
        FromRight = 18,
        Size = 7.5;

    /// <summary>A label has no room for it.</summary>
    private const double Narrowest = 300;

    /// <returns>The number of the note; null where the page is too narrow for it.</returns>
    /// <param name="pdf">Where it is written.</param>
    /// <param name="box">Left, bottom, right and top of the page, points.</param>
    /// <param name="font">The font that it is set in.</param>
    /// <param name="words">Of ASCII characters.</param>
    public static int? Add(StreamedPdf pdf, double[] box, int font, string words)
    {
        if (box[2] - box[0] < Narrowest)
            return null;
        // Helvetica's figures and small letters are about half as wide as they are high.
        var (left, top) = (box[2] - FromRight - (words.Length * Size * 0.52), box[3] - FromTop);
        var draw = string.Create(CultureInfo.InvariantCulture, $"BT /F {Size} Tf 0.3 g 1 2 Td ({words}) Tj ET");
        var form = pdf.Add(
            Latin(
                $"""
                <</Type /XObject /Subtype /Form /BBox [0 0 {Width} {Height}] /Resources <</Font <</F {font} 0 R>>>> /Length {draw.Length}>>
                stream
                {draw}
                endstream
                """
            )
        );
        return pdf.Add(
            Latin(
                $"""
                <</Type /Annot /Subtype /Stamp /F 196 /AP <</N {form} 0 R>>
                /Rect [{left:0.##} {top - Height:0.##} {left + Width:0.##} {top:0.##}]>>
                """
            )
        );
    }

    public static int Font(StreamedPdf pdf) => pdf.Add("<</Type /Font /Subtype /Type1 /BaseFont /Helvetica /Encoding /WinAnsiEncoding>>");

    private static byte[] Latin(FormattableString text) => Encoding.Latin1.GetBytes(text.ToString(CultureInfo.InvariantCulture));
}

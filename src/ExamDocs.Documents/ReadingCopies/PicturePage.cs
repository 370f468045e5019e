using System.Globalization;
using System.Text;

namespace ExamDocs.Documents.ReadingCopies;

/// <summary>An A4 page with one picture, as large as fits and never larger than it was.</summary>
public static class PicturePage
{
    private const double Width = 595.28,
        Height = 841.89,
        Margin = 42;

    /// <summary>Points for a pixel of a picture of 150 pixels to the inch.</summary>
    private const double Largest = 0.48;

    /// <param name="jpeg">A baseline JPEG in colour.</param>
    /// <param name="widthPx">Its width in pixels.</param>
    /// <param name="heightPx">Its height in pixels.</param>
    /// <returns>The whole file.</returns>
    public static byte[] Of(ReadOnlyMemory<byte> jpeg, int widthPx, int heightPx)
    {
        var scale = Math.Min(Largest, Math.Min((Width - (2 * Margin)) / widthPx, (Height - (2 * Margin)) / heightPx));
        var (w, h) = (widthPx * scale, heightPx * scale);
        using var file = new MemoryStream();
        using var pdf = new StreamedPdf(file);
        var picture = pdf.Add([
            .. Latin(
                $"""
                <</Type /XObject /Subtype /Image /Width {widthPx} /Height {heightPx}
                /ColorSpace /DeviceRGB /BitsPerComponent 8 /Filter /DCTDecode /Length {jpeg.Length}>>
                stream

                """
            ),
            .. jpeg.Span,
            .. "\nendstream"u8,
        ]);
        var draw = FormattableString.Invariant($"q {w:0.##} 0 0 {h:0.##} {(Width - w) / 2:0.##} {(Height - h) / 2:0.##} cm /P Do Q");
        var content = pdf.Add(FormattableString.Invariant($"<</Length {draw.Length}>>\nstream\n{draw}\nendstream"));
        var (page, pages) = (pdf.Reserve(), pdf.Reserve());
        pdf.Put(
            page,
            FormattableString.Invariant(
                $"""
                <</Type /Page /Parent {pages} 0 R /MediaBox [0 0 {Width} {Height}]
                /Resources <</XObject <</P {picture} 0 R>>>> /Contents {content} 0 R>>
                """
            )
        );
        pdf.Put(pages, FormattableString.Invariant($"<</Type /Pages /Kids [{page} 0 R] /Count 1>>"));
        pdf.Finish(pdf.Add(FormattableString.Invariant($"<</Type /Catalog /Pages {pages} 0 R>>")), pdf.Add("<</Creator (ExamDocs)>>"));
        return file.ToArray();
    }

    private static byte[] Latin(FormattableString text) => Encoding.Latin1.GetBytes(text.ToString(CultureInfo.InvariantCulture));
}

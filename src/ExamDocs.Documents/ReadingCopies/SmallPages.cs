using System.Globalization;
using System.Text;
using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.ReadingCopies;

/// <summary>The size of a label, points, and how many like it fit on a page.</summary>
public sealed record SmallSize(double Width, double Height, int PerPage);

/// <summary>
/// Puts labels onto A4 pages, each in its own size and with a fine line around it: a file of pages of many sizes is hard to read. These
/// pages are not for printing labels.
/// </summary>
public static class SmallPages
{
    private const double Width = 595.28,
        Height = 841.89,
        Margin = 40,
        Gap = 14;

    /// <summary>Points; a page of A5 is read as it is.</summary>
    private const double LargestWidth = 400,
        LargestHeight = 560;

    /// <summary>How large a file is, if it is to share a page with others; null where it is to stay a page of its own.</summary>
    public static SmallSize? Of(byte[] pdf)
    {
        if (PageTree.Of(PdfSource.Read(pdf)) is not [var only])
            return null;
        var (width, height) = SizeOf(only);
        return width > LargestWidth || height > LargestHeight ? null : new(width, height, Columns(width) * Rows(height));
    }

    /// <param name="labels">Files of one page each, of one size; no more than fit.</param>
    /// <returns>A file of one page.</returns>
    public static byte[] Sheet(IReadOnlyList<byte[]> labels)
    {
        using var file = new MemoryStream();
        using var pdf = new StreamedPdf(file);
        var (shared, draw, drawn) = (new Dictionary<string, int>(StringComparer.Ordinal), new StringBuilder(), new StringBuilder());
        foreach (var (n, label) in labels.Index())
        {
            var source = PdfSource.Read(label);
            var page = PageTree.Of(source)[0];
            var (width, height) = SizeOf(page);
            var columns = Columns(width);
            var (x, y) = (Margin + (n % columns * (width + Gap)), Height - Margin - height - (n / columns * (height + Gap)));
            var box = page.Box();
            draw.Append(CultureInfo.InvariantCulture, $"0.6 G 0.3 w {x:0.##} {y:0.##} {width:0.##} {height:0.##} re S\n");
            draw.Append(CultureInfo.InvariantCulture, $"q 1 0 0 1 {x - box[0]:0.##} {y - box[1]:0.##} cm /L{n} Do Q\n");
            drawn.Append(CultureInfo.InvariantCulture, $"/L{n} {Drawn(pdf, source, page, shared)} 0 R ");
        }
        var content = pdf.Add($"<</Length {draw.Length.ToString(CultureInfo.InvariantCulture)}>>\nstream\n{draw}endstream");
        var (sheet, pages) = (pdf.Reserve(), pdf.Reserve());
        pdf.Put(
            sheet,
            string.Create(
                CultureInfo.InvariantCulture,
                $"""
                <</Type /Page /Parent {pages} 0 R /MediaBox [0 0 {Width} {Height}]
                /Resources <</XObject <<{drawn}>>>> /Contents {content} 0 R>>
                """
            )
        );
        pdf.Put(pages, $"<</Type /Pages /Kids [{StreamedPdf.Reference(sheet)}] /Count 1>>");
        pdf.Finish(pdf.Add($"<</Type /Catalog /Pages {StreamedPdf.Reference(pages)}>>"), pdf.Add("<</Creator (ExamDocs)>>"));
        return file.ToArray();
    }

    /// <summary>A page as an object that another page draws.</summary>
    private static int Drawn(StreamedPdf pdf, PdfSource source, PdfPage page, Dictionary<string, int> shared)
    {
        var entries = new CopiedObjects(source, pdf, shared).Entries(page, "Resources", "Group");
        var box = string.Join(' ', page.Box().Select(b => b.ToString("0.##", CultureInfo.InvariantCulture)));
        return pdf.Add(PdfTarget.Stream($"/Type /XObject /Subtype /Form /BBox [{box}]\n{entries}", page.Content()));
    }

    private static (double Width, double Height) SizeOf(PdfPage page) =>
        page.Box() is var box ? (box[2] - box[0], box[3] - box[1]) : default;

    private static int Columns(double width) => Math.Max(1, (int)((Width - (2 * Margin) + Gap) / (width + Gap)));

    private static int Rows(double height) => Math.Max(1, (int)((Height - (2 * Margin) + Gap) / (height + Gap)));
}

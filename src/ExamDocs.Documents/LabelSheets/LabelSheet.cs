using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace ExamDocs.Documents.LabelSheets;

/// <summary>Puts labels that are already issued onto sheets, each as it was printed, none altered.</summary>
public static class LabelSheet
{
    private const double ToleranceMm = 0.5;

    /// <param name="labels">PDFs of one page each, in the order they are placed.</param>
    /// <param name="stock">How labels lie on the sheet.</param>
    /// <param name="start">The first place used on the first sheet, counted from 1 along the rows.</param>
    /// <param name="offset">How far a printer's sheet is off, millimetres to the right and down.</param>
    /// <exception cref="ArgumentException">A label has more than one page or another shape, or would lie off the sheet.</exception>
    public static byte[] Impose(IReadOnlyList<byte[]> labels, LabelStock stock, int start = 1, (double X, double Y) offset = default)
    {
        if (labels.Count == 0)
            throw new ArgumentException("there is no label to place", nameof(labels));
        if (start < 1 || start > stock.PerSheet)
            throw new ArgumentOutOfRangeException(nameof(start), $"a sheet of {stock.Name} has places 1 to {stock.PerSheet}");
        Refuse(stock, offset);
        using var sheets = new PdfDocument();
        sheets.Info.Title = "Labels";
        sheets.Options.CompressContentStreams = false;
        var sheet = NewSheet(sheets, stock);
        var place = start - 1;
        foreach (var label in labels)
        {
            if (place == stock.PerSheet)
                (sheet, place) = (NewSheet(sheets, stock), 0);
            Draw(label, sheet, stock, place++, offset);
        }
        using var result = new MemoryStream();
        sheets.Save(result, closeStream: false);
        return result.ToArray();
    }

    private static PdfPage NewSheet(PdfDocument sheets, LabelStock stock)
    {
        var page = sheets.AddPage();
        page.Width = XUnit.FromMillimeter(stock.PageWidthMm);
        page.Height = XUnit.FromMillimeter(stock.PageHeightMm);
        return page;
    }

    private static void Draw(byte[] label, PdfPage sheet, LabelStock stock, int place, (double X, double Y) offset)
    {
        using var bytes = new MemoryStream(label);
        using var form = XPdfForm.FromStream(bytes);
        if (form.PageCount != 1)
            throw new ArgumentException("a label has one page", nameof(label));
        var (width, height) = (stock.LabelWidthMm, form.PointHeight / form.PointWidth * stock.LabelWidthMm);
        if (Math.Abs(height - stock.LabelHeightMm) > ToleranceMm)
            throw new ArgumentException($"the label has not the shape of {stock.Name}", nameof(label));
        var (x, y) = stock.Place(place);
        using var paper = XGraphics.FromPdfPage(sheet);
        paper.DrawImage(form, Points(x + offset.X), Points(y + offset.Y), Points(width), Points(height));
    }

    private static void Refuse(LabelStock stock, (double X, double Y) offset)
    {
        var (x, y) = stock.Place(0);
        var (lastX, lastY) = stock.Place(stock.PerSheet - 1);
        var isOn = x + offset.X >= 0 && y + offset.Y >= 0
            && lastX + offset.X + stock.LabelWidthMm <= stock.PageWidthMm && lastY + offset.Y + stock.LabelHeightMm <= stock.PageHeightMm;
        if (!isOn)
            throw new ArgumentException("with this offset a label would lie off the sheet", nameof(offset));
    }

    private static double Points(double millimetres) => XUnit.FromMillimeter(millimetres).Point;
}

using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace ExamDocs.Documents.LabelSheets;

/// <summary>Puts labels that are already issued onto sheets, each as it was printed, none altered.</summary>
public static class LabelSheet
{
    private const double ToleranceMm = 0.3;

    /// <param name="labels">PDFs of one page each, in the order they are placed.</param>
    /// <param name="stock">How labels lie on the sheet.</param>
    /// <param name="placing">Where to begin.</param>
    /// <exception cref="ArgumentException">A label has more than one page or another size, or cannot be placed so.</exception>
    public static byte[] Impose(IReadOnlyList<byte[]> labels, LabelStock stock, Placing placing)
    {
        if (labels.Count == 0)
            throw new ArgumentException("there is no label to place", nameof(labels));
        if (placing.Objection(stock) is { } objection)
            throw new ArgumentException(objection, nameof(placing));
        using var sheets = new PdfDocument();
        sheets.Info.Title = "Labels";
        sheets.Options.CompressContentStreams = false;
        for (var at = 0; at < labels.Count; )
        {
            using var paper = NewSheet(sheets, stock);
            for (var place = at == 0 ? placing.Start - 1 : 0; place < stock.PerSheet && at < labels.Count; place++, at++)
                Draw(labels[at], paper, stock, placing.Corner(stock, place));
            if (placing.CropMarks)
                CropMarks.Draw(paper, stock, placing);
        }
        using var result = new MemoryStream();
        sheets.Save(result, closeStream: false);
        return result.ToArray();
    }

    private static XGraphics NewSheet(PdfDocument sheets, LabelStock stock)
    {
        var page = sheets.AddPage();
        page.Width = XUnit.FromMillimeter(stock.PageWidthMm);
        page.Height = XUnit.FromMillimeter(stock.PageHeightMm);
        return XGraphics.FromPdfPage(page);
    }

    // The page of a label is up to 0.2 mm smaller than the label, as the browser cuts it: its place is counted from
    // the upper left corner and the size that it has by its format, not by what was cut.
    private static void Draw(byte[] label, XGraphics paper, LabelStock stock, (double X, double Y) corner)
    {
        using var bytes = new MemoryStream(label);
        using var form = XPdfForm.FromStream(bytes);
        if (form.PageCount != 1)
            throw new ArgumentException("a label has one page", nameof(label));
        if (!IsNear(form.PointWidth, stock.Format.WidthMm) || !IsNear(form.PointHeight, stock.Format.HeightMm))
            throw new ArgumentException($"the label does not fit {stock.Name}", nameof(label));
        paper.DrawImage(form, Points(corner.X), Points(corner.Y), form.PointWidth * stock.Scale, form.PointHeight * stock.Scale);
    }

    private static bool IsNear(double points, double millimetres) =>
        Math.Abs(XUnit.FromPoint(points).Millimeter - millimetres) <= ToleranceMm;

    private static double Points(double millimetres) => XUnit.FromMillimeter(millimetres).Point;
}

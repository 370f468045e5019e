using PdfSharp.Drawing;

namespace ExamDocs.Documents.LabelSheets;

/// <summary>
/// Fine lines in the margins of a sheet that show where to cut: one for each edge of each row and column, none of them
/// on a label.
/// </summary>
internal static class CropMarks
{
    /// <summary>Margin that the marks need on every side, millimetres.</summary>
    public const double RoomMm = 4;

    private const double GapMm = 1;
    private const double WidthMm = 0.1;

    public static bool HaveRoom(LabelStock stock, Placing placing)
    {
        var (left, top, right, bottom) = Block(stock, placing);
        return left >= RoomMm && top >= RoomMm && stock.PageWidthMm - right >= RoomMm && stock.PageHeightMm - bottom >= RoomMm;
    }

    public static void Draw(XGraphics paper, LabelStock stock, Placing placing)
    {
        var pen = new XPen(XColors.Black, Points(WidthMm));
        var (left, top, right, bottom) = Block(stock, placing);
        foreach (var x in Edges(left, stock.Columns, stock.PitchXMm, stock.LabelWidthMm))
        {
            Line(paper, pen, (x, top - RoomMm), (x, top - GapMm));
            Line(paper, pen, (x, bottom + GapMm), (x, bottom + RoomMm));
        }
        foreach (var y in Edges(top, stock.Rows, stock.PitchYMm, stock.LabelHeightMm))
        {
            Line(paper, pen, (left - RoomMm, y), (left - GapMm, y));
            Line(paper, pen, (right + GapMm, y), (right + RoomMm, y));
        }
    }

    private static (double Left, double Top, double Right, double Bottom) Block(LabelStock stock, Placing placing)
    {
        var (left, top) = placing.Corner(stock, 0);
        var (lastX, lastY) = placing.Corner(stock, stock.PerSheet - 1);
        return (left, top, lastX + stock.LabelWidthMm, lastY + stock.LabelHeightMm);
    }

    private static IEnumerable<double> Edges(double first, int count, double pitch, double size) =>
        Enumerable.Range(0, count).SelectMany(n => new[] { first + (n * pitch), first + (n * pitch) + size });

    private static void Line(XGraphics paper, XPen pen, (double X, double Y) from, (double X, double Y) to) =>
        paper.DrawLine(pen, Points(from.X), Points(from.Y), Points(to.X), Points(to.Y));

    private static double Points(double millimetres) => XUnit.FromMillimeter(millimetres).Point;
}

namespace ExamDocs.Documents.LabelSheets;

/// <summary>Where on its stock a sheet begins, and what is printed beside the labels.</summary>
/// <param name="Start">The first place used on the first sheet, counted from 1 along the rows.</param>
/// <param name="OffsetX">How far a printer's sheet is off to the right, millimetres.</param>
/// <param name="OffsetY">How far it is off downwards, millimetres.</param>
/// <param name="CropMarks">Marks in the margins that show where to cut.</param>
public sealed record Placing(int Start = 1, double OffsetX = 0, double OffsetY = 0, bool CropMarks = false)
{
    // Half a hundredth: sums of decimal figures are not exact, and no printer is.
    private const double Slack = 0.005;

    /// <summary>Why labels cannot be placed so, in one sentence without a full stop; null where they can.</summary>
    public string? Objection(LabelStock stock)
    {
        if (Start < 1 || Start > stock.PerSheet)
            return FormattableString.Invariant($"a sheet of {stock.Name} has places 1 to {stock.PerSheet}");
        if (!IsOn(stock))
            return "with this offset a label would lie off the sheet";
        if (stock.Eyelet is { } eyelet && !IsFree(eyelet, stock))
            return $"the eyelet of {stock.Name} would lie on what is printed";
        return CropMarks && !LabelSheets.CropMarks.HaveRoom(stock, this)
            ? FormattableString.Invariant($"{stock.Name} has no margins of {LabelSheets.CropMarks.RoomMm} mm for crop marks")
            : null;
    }

    /// <summary>Upper left corner of the place, counted from 0 along the rows, with the offset.</summary>
    internal (double X, double Y) Corner(LabelStock stock, int place)
    {
        var (x, y) = stock.Place(place);
        return (x + OffsetX, y + OffsetY);
    }

    private bool IsOn(LabelStock stock)
    {
        var (x, y) = Corner(stock, 0);
        var (lastX, lastY) = Corner(stock, stock.PerSheet - 1);
        return x >= -Slack
            && y >= -Slack
            && lastX + stock.LabelWidthMm <= stock.PageWidthMm + Slack
            && lastY + stock.LabelHeightMm <= stock.PageHeightMm + Slack;
    }

    // Beside the label, or within what the label leaves free.
    private bool IsFree(Circle eyelet, LabelStock stock)
    {
        var (x, y) = Corner(stock, 0);
        var beside = Distance(
            eyelet.XMm - Math.Clamp(eyelet.XMm, x, x + stock.LabelWidthMm),
            eyelet.YMm - Math.Clamp(eyelet.YMm, y, y + stock.LabelHeightMm)
        );
        if (beside >= (eyelet.DiameterMm / 2) - Slack)
            return true;
        return stock.Format.Free is { } free
            && Distance(eyelet.XMm - x - (free.XMm * stock.Scale), eyelet.YMm - y - (free.YMm * stock.Scale)) + (eyelet.DiameterMm / 2)
                <= (free.DiameterMm / 2 * stock.Scale) + Slack;
    }

    private static double Distance(double x, double y) => Math.Sqrt((x * x) + (y * y));
}

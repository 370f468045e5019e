using SkiaSharp;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace ExamDocs.Documents.Tests.Printing;

/// <summary>A QR code as another program reads it from a picture.</summary>
/// <param name="Text">What it says.</param>
/// <param name="FinderDistance">From the middle of one finder pattern to the next along a side, pixels.</param>
internal sealed record QrCode(string Text, double FinderDistance)
{
    /// <summary>Null where there is none, or it cannot be read.</summary>
    public static QrCode? Read(byte[] png)
    {
        using var bitmap = SKBitmap.Decode(png);
        byte[] grey = [.. bitmap.Pixels.Select(p => p.Red)];
        var source = new RGBLuminanceSource(grey, bitmap.Width, bitmap.Height, RGBLuminanceSource.BitmapFormat.Gray8);
        var hints = new Dictionary<DecodeHintType, object> { [DecodeHintType.TRY_HARDER] = true, [DecodeHintType.CHARACTER_SET] = "UTF-8" };
        if (new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(source)), hints) is not { } result)
            return null;
        // Lower left, upper left, upper right.
        var (from, to) = (result.ResultPoints[1], result.ResultPoints[2]);
        return new QrCode(result.Text, Math.Sqrt(Math.Pow(to.X - from.X, 2) + Math.Pow(to.Y - from.Y, 2)));
    }

    /// <summary>Side of a module in pixels: the middles of two finder patterns are seven modules nearer than the code is wide.</summary>
    /// <param name="modules">Modules along one side, the quiet zone of four on either side included.</param>
    public double Module(int modules) => FinderDistance / (modules - 8 - 7);
}

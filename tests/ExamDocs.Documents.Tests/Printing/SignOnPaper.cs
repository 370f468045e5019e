using SkiaSharp;

namespace ExamDocs.Documents.Tests.Printing;

/// <summary>The prohibition sign of a quarantine label, measured on a picture of it.</summary>
/// <param name="DiameterMm">From the left to the right edge.</param>
/// <param name="HeightMm">From the upper to the lower edge.</param>
/// <param name="RingMm">Width of the ring, at its left.</param>
/// <param name="BarMm">Width of the bar, across it through the middle.</param>
/// <param name="BarGoesDown">From upper left to lower right.</param>
internal sealed record SignOnPaper(double DiameterMm, double HeightMm, double RingMm, double BarMm, bool BarGoesDown)
{
    public static SignOnPaper Measure(byte[] png, int dpi)
    {
        using var bitmap = SKBitmap.Decode(png);
        var perMm = dpi / 25.4;
        bool IsInk(double x, double y) => bitmap.GetPixel((int)Math.Round(x), (int)Math.Round(y)).Red < 160;
        // The sign is what begins at the left of the words, below the eyelet and within the border.
        var (left, top) = ((int)(5 * perMm), (int)(17.3 * perMm));
        var first = Enumerable.Range(left, (int)(30 * perMm)).First(x => Enumerable.Range(top, (int)(40 * perMm)).Any(y => IsInk(x, y)));
        var middleY = Enumerable.Range(top, (int)(40 * perMm)).Where(y => IsInk(first, y)).Average();
        var ring = Run(t => IsInk(first + t, middleY));
        // The right half of the ring begins after the bar; nothing else is printed between the two.
        var bar = first + ring + Run(t => !IsInk(first + ring + t, middleY));
        var afterBar = bar + Run(t => IsInk(bar + t, middleY));
        var inner = afterBar + Run(t => !IsInk(afterBar + t, middleY));
        var last = inner + Run(t => IsInk(inner + t, middleY)) - 1;
        var d = last - first + 1.0;
        var middleX = first + (d / 2);
        var upper = Run(t => !IsInk(middleX, middleY - (0.53 * d) + t));
        var lower = Run(t => !IsInk(middleX, middleY + (0.53 * d) - t));
        double across =
            Run(t => IsInk(middleX + (t / Math.Sqrt(2)), middleY - (t / Math.Sqrt(2))))
            + Run(t => IsInk(middleX - (t / Math.Sqrt(2)), middleY + (t / Math.Sqrt(2))))
            - 1;
        return new SignOnPaper(
            d / perMm,
            ((1.06 * d) - upper - lower) / perMm,
            ring / perMm,
            across / perMm,
            IsInk(middleX - (0.25 * d), middleY - (0.25 * d)) && !IsInk(middleX + (0.25 * d), middleY - (0.25 * d))
        );
    }

    private static int Run(Func<int, bool> holds)
    {
        var length = 0;
        while (holds(length))
            length++;
        return length;
    }
}

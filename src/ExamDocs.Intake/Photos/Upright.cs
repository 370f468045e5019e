namespace ExamDocs.Intake.Photos;

/// <summary>Turns a picture the way its camera says it was held: Exif 2.3 (CIPA DC-008), tag 0x0112.</summary>
internal static class Upright
{
    /// <param name="rgba">Four bytes a pixel.</param>
    /// <param name="orientation">1 to 8; any other counts as 1.</param>
    public static (byte[] Rgba, int Width, int Height) Turn(byte[] rgba, int width, int height, int orientation)
    {
        var (turnedWidth, turnedHeight) = orientation is >= 5 and <= 8 ? (height, width) : (width, height);
        var turned = new byte[rgba.Length];
        for (var y = 0; y < turnedHeight; y++)
        {
            for (var x = 0; x < turnedWidth; x++)
            {
                var (column, row) = Stored(x, y, width, height, orientation);
                rgba.AsSpan(((row * width) + column) * 4, 4).CopyTo(turned.AsSpan(((y * turnedWidth) + x) * 4));
            }
        }
        return (turned, turnedWidth, turnedHeight);
    }

    /// <summary>Where the pixel that is seen at x, y is stored. The tag says on which side its first row and column are seen.</summary>
    private static (int Column, int Row) Stored(int x, int y, int width, int height, int orientation) =>
        orientation switch
        {
            2 => (width - 1 - x, y),
            3 => (width - 1 - x, height - 1 - y),
            4 => (x, height - 1 - y),
            5 => (y, x),
            6 => (y, height - 1 - x),
            7 => (width - 1 - y, height - 1 - x),
            8 => (width - 1 - y, x),
            _ => (x, y),
        };
}

namespace ExamDocs.Intake.Photos;

/// <summary>How large a photo is printed, and how finely.</summary>
internal static class PrintSize
{
    /// <summary>Millimetres of the longer side on paper.</summary>
    public const int LongestSideMm = 85;

    /// <summary>Dots per inch.</summary>
    public const int Dpi = 220;

    /// <summary>Of the JPEG that is printed, 1 to 100.</summary>
    public const int Quality = 88;

    /// <summary>Pixels of the longer side; an inch is 25.4 mm.</summary>
    public const int LongestSidePx = (int)(LongestSideMm * Dpi / 25.4);

    /// <summary>The size to print a picture of this size at, in pixels; never larger than it is, never less than one pixel.</summary>
    public static (int Width, int Height) Of(int width, int height)
    {
        var longest = Math.Max(width, height);
        return longest <= LongestSidePx ? (width, height) : (Reduced(width, longest), Reduced(height, longest));
    }

    private static int Reduced(int side, int longest) => (int)Math.Max(1, (((long)side * LongestSidePx) + (longest / 2)) / longest);
}

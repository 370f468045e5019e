using System.Globalization;
using System.Runtime.InteropServices;
using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Photos;

/// <summary>What a picture says of itself before it is unpacked.</summary>
/// <param name="Width">Pixels as stored, before it is turned upright.</param>
/// <param name="Height">Pixels as stored.</param>
/// <param name="BytesHeldWhole">What unpacking must hold at once; 0 where it goes line by line.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct PictureHeader(int Width, int Height, long BytesHeldWhole)
{
    /// <summary>As Exif has it, 1 to 8; null where that is left to the decoder to find.</summary>
    public int? Orientation { get; init; }

    public long Pixels => (long)Width * Height;

    /// <exception cref="PhotoRefusedException">It would unpack to more than a picture may.</exception>
    public PictureHeader WithinLimits()
    {
        if (Width > PhotoLimits.Side || Height > PhotoLimits.Side || Pixels > PhotoLimits.Pixels)
            throw TooLarge($"is larger than we read");
        return BytesHeldWhole > PhotoLimits.BytesHeldWhole ? throw TooLarge($"is larger than we read of pictures stored in passes") : this;
    }

    private PhotoRefusedException TooLarge(Message why) => new(PhotoRules.TooLarge, $"{why}: {Width} × {Height} pixels");
}

using SkiaSharp;

namespace ExamDocs.Intake.Photos;

/// <summary>
/// Unpacks a picture that is within the limits straight to the size of print, and packs it again: what the file says beside
/// its pixels is used to turn and to colour them, and goes no further.
/// </summary>
internal static class PictureDecoder
{
    /// <param name="file">An array that begins with a whole JPEG or PNG file.</param>
    /// <param name="length">The file's bytes.</param>
    /// <exception cref="PhotoRefusedException">It cannot be unpacked to its last line.</exception>
    public static (byte[] Jpeg, int Width, int Height) ToPrint(byte[] file, int length, PictureHeader header)
    {
        using var pinned = new PinnedBytes(file);
        using var data = SKData.Create(pinned.Address, length);
        using var codec = SKCodec.Create(data) ?? throw PhotoRefusedException.Damaged();
        if (codec.Info.Width != header.Width || codec.Info.Height != header.Height)
            throw PhotoRefusedException.Damaged();
        var (width, height) = PrintSize.Of(header.Width, header.Height);
        var unpacked = UnpackedSize(codec, Math.Max(width, height));
        var shrink = new AreaShrink(unpacked.Width, unpacked.Height, Math.Min(width, unpacked.Width), Math.Min(height, unpacked.Height));
        PictureLines.Read(codec, unpacked, line => shrink.Take(line.Span));
        var upright = Upright.Turn(shrink.Rgba, shrink.Width, shrink.Height, header.Orientation ?? (int)codec.EncodedOrigin);
        return (Packed(upright.Rgba, upright.Width, upright.Height), upright.Width, upright.Height);
    }

    /// <summary>The least size to which the decoder itself can reduce, and which is no smaller than the print.</summary>
    private static SKSizeI UnpackedSize(SKCodec codec, int longest) =>
        Enumerable
            .Range(1, 8)
            .Select(eighths => codec.GetScaledDimensions(eighths / 8f))
            .First(s => Math.Max(s.Width, s.Height) >= longest);

    private static byte[] Packed(byte[] rgba, int width, int height)
    {
        using var pinned = new PinnedBytes(rgba);
        // Without a colour space none is written: a JPEG that names none is sRGB.
        using var pixels = new SKPixmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque), pinned.Address);
        using var packed = pixels.Encode(
            new SKJpegEncoderOptions(PrintSize.Quality, SKJpegEncoderDownsample.Downsample444, SKJpegEncoderAlphaOption.Ignore)
        ) ?? throw new InvalidOperationException("the picture cannot be packed");
        return packed.ToArray();
    }
}

using SkiaSharp;

namespace ExamDocs.Intake.Photos;

/// <summary>Hands on the lines of a picture from top to bottom, in sRGB, and holds no more of them than it must.</summary>
internal static class PictureLines
{
    /// <param name="size">One that the codec can reduce to.</param>
    /// <param name="take">Given red, green, blue and cover of each pixel; the colours multiplied by the cover.</param>
    /// <exception cref="PhotoRefusedException">The file ends before the picture does, or is damaged.</exception>
    public static void Read(SKCodec codec, SKSizeI size, Action<Memory<byte>> take)
    {
        using var colours = SKColorSpace.CreateSrgb();
        var info = new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Premul, colours);
        if (codec.EncodedFormat is SKEncodedImageFormat.Jpeg)
            OneByOne(codec, info, take);
        else
            InBands(codec, info, take);
    }

    private static void OneByOne(SKCodec codec, SKImageInfo info, Action<Memory<byte>> take)
    {
        Sound(codec.StartScanlineDecode(info));
        using var line = new PinnedBytes(new byte[info.RowBytes]);
        for (var y = 0; y < info.Height; y++)
        {
            if (codec.GetScanlines(line.Address, 1, info.RowBytes) != 1)
                throw PhotoRefusedException.Damaged();
            take(line.Bytes);
        }
    }

    /// <summary>Each band is read from the beginning of the file again, what lies above it being passed over.</summary>
    private static void InBands(SKCodec codec, SKImageInfo info, Action<Memory<byte>> take)
    {
        var most = Math.Clamp(PhotoLimits.PixelsAtATime / info.Width, 1, info.Height);
        using var band = new PinnedBytes(new byte[most * info.RowBytes]);
        for (var top = 0; top < info.Height; top += most)
        {
            var bottom = Math.Min(info.Height, top + most);
            Sound(
                codec.StartIncrementalDecode(info, band.Address, info.RowBytes, new SKCodecOptions(new SKRectI(0, top, info.Width, bottom)))
            );
            Sound(codec.IncrementalDecode());
            for (var y = top; y < bottom; y++)
                take(band.Bytes.AsMemory((y - top) * info.RowBytes, info.RowBytes));
        }
    }

    private static void Sound(SKCodecResult result)
    {
        if (result is not SKCodecResult.Success)
            throw PhotoRefusedException.Damaged();
    }
}

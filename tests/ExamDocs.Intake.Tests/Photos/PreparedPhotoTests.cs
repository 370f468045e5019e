using System.Security.Cryptography;
using ExamDocs.Intake.Photos;
using SkiaSharp;

namespace ExamDocs.Intake.Tests.Photos;

/// <summary>A prepared photo is upright, of the size of print, in sRGB, and nothing but a picture.</summary>
public sealed class PreparedPhotoTests : IDisposable
{
    private readonly AlbumFolder _album = new();

    public void Dispose() => _album.Dispose();

    /// <summary>
    /// The picture stored is red, green / blue, white. Exif 2.3 (CIPA DC-008), tag 0x0112 says on which side its first row
    /// and its first column are seen: 6, for one, is first row right, first column top.
    /// </summary>
    [Theory]
    [InlineData(1, "RGWB", 400, 200)]
    [InlineData(2, "GRBW", 400, 200)]
    [InlineData(3, "WBRG", 400, 200)]
    [InlineData(4, "BWGR", 400, 200)]
    [InlineData(5, "RBWG", 200, 400)]
    [InlineData(6, "BRGW", 200, 400)]
    [InlineData(7, "WGRB", 200, 400)]
    [InlineData(8, "GWBR", 200, 400)]
    public void Every_way_to_hold_a_camera_comes_out_upright(int orientation, string clockwise, int width, int height)
    {
        var photo = _album.Prepared(Pictures.Corners(400, 200, orientation: orientation));

        Assert.Equal((clockwise, width, height), (Pictures.CornersOf(photo.Jpeg), photo.WidthPx, photo.HeightPx));
        using var decoded = SKBitmap.Decode(photo.Jpeg.ToArray());
        Assert.Equal((width, height), (decoded.Width, decoded.Height));
    }

    [Theory]
    [InlineData(6, false, "BRGW")]
    [InlineData(8, true, "GWBR")]
    [InlineData(9, true, "RGWB")]
    public void A_PNG_is_turned_by_its_Exif_chunk_too(byte orientation, bool littleEndian, string clockwise)
    {
        byte[] tiff = littleEndian
            ?
            [
                .. "II*\0"u8,
                8,
                0,
                0,
                0,
                2,
                0,
                0x0F,
                0x01,
                2,
                0,
                2,
                0,
                0,
                0,
                65,
                0,
                0,
                0,
                0x12,
                0x01,
                3,
                0,
                1,
                0,
                0,
                0,
                orientation,
                0,
                0,
                0,
                0,
                0,
                0,
                0,
            ]
            : Pictures.Tiff(orientation);
        var png = Pictures.Corners(40, 20, SKEncodedImageFormat.Png);

        Assert.Equal(clockwise, Pictures.CornersOf(_album.Prepared([.. png[..33], .. Pictures.Chunk("eXIf", tiff), .. png[33..]]).Jpeg));
        for (var kept = 0; kept < tiff.Length; kept++)
            Assert.InRange(ExifOrientation.Of(tiff.AsSpan(0, kept)), 1, 8);
    }

    [Theory]
    [InlineData(736, 100, 736, 100)]
    [InlineData(737, 368, 736, 368)]
    [InlineData(4_000, 3_000, 736, 552)]
    [InlineData(3_000, 4_000, 552, 736)]
    [InlineData(5_999, 7, 736, 1)]
    [InlineData(1, 6_000, 1, 736)]
    [InlineData(8_000, 4_100, 736, 377)]
    [InlineData(5, 3, 5, 3)]
    public void The_longer_side_is_at_most_eighty_five_millimetres_at_220_dots_an_inch(int width, int height, int printed, int high)
    {
        Assert.Equal(736, (int)Math.Floor(85 / 25.4 * 220));
        foreach (var format in (SKEncodedImageFormat[])[SKEncodedImageFormat.Jpeg, SKEncodedImageFormat.Png])
        {
            var photo = _album.Prepared(Pictures.Corners(width, height, format));
            Assert.Equal((printed, high), (photo.WidthPx, photo.HeightPx));
            if (high > 4 && printed > 4)
                Assert.Equal("RGWB", Pictures.CornersOf(photo.Jpeg));
        }
    }

    [Fact]
    public void Nothing_goes_into_print_that_was_written_beside_the_picture()
    {
        using var space = SKColorSpace.CreateRgb(SKColorSpaceTransferFn.Srgb, SKColorSpaceXyz.DisplayP3);
        byte[] xmp = [.. "http://ns.adobe.com/xap/1.0/\0<x:xmpmeta>SECRET</x:xmpmeta>"u8];
        byte[] iptc = [.. "Photoshop 3.0\08BIM\x04\x04\0\0\0\0\0\x06SECRET"u8];
        var jpeg = Pictures.WithSegments(
            Pictures.Corners(64, 32),
            Pictures.Exif(1, place: true),
            Pictures.Segment(0xE1, xmp),
            Pictures.Segment(0xED, iptc),
            Pictures.Segment(0xFE, [.. "SECRET"u8])
        );
        byte[] trailed = [.. jpeg, .. "SECRET"u8];
        Assert.Contains((byte)0xED, MarkersOf(trailed));

        var photo = _album.Prepared(trailed);

        var bytes = photo.Jpeg.ToArray();
        foreach (var word in (string[])["SECRET", "Exif", "xmp", "adobe", "Adobe", "Photoshop", "8BIM", "ICC_PROFILE", "MM\0*", "II*\0"])
            Assert.True(bytes.AsSpan().IndexOf(System.Text.Encoding.Latin1.GetBytes(word)) < 0, word);
        // JFIF header, tables, frame, scan, end: ISO/IEC 10918-1, table B.1; APP1 to APP15 and COM are none of them.
        Assert.Subset(new HashSet<byte> { 0xE0, 0xDB, 0xC0, 0xC4, 0xDA, 0xD9 }, MarkersOf(bytes).ToHashSet());
        Assert.Equal([0xFF, 0xD9], bytes[^2..]);
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(trailed)), photo.Sha256OfFile);
    }

    [Fact]
    public void A_wide_colour_profile_is_turned_into_sRGB_and_left_out()
    {
        using var wide = SKColorSpace.CreateRgb(SKColorSpaceTransferFn.Srgb, SKColorSpaceXyz.DisplayP3);
        using var bitmap = new SKBitmap(new SKImageInfo(32, 32, SKColorType.Rgba8888, SKAlphaType.Opaque, wide));
        // The same numbers mean a purer green in the wider space: in sRGB there is less red in it.
        for (var n = 0; n < 32 * 32; n++)
            new byte[] { 100, 180, 100, 255 }.CopyTo(bitmap.GetPixelSpan()[(n * 4)..]);
        foreach (var format in (SKEncodedImageFormat[])[SKEncodedImageFormat.Jpeg, SKEncodedImageFormat.Png])
        {
            using var data = bitmap.Encode(format, 100);
            Assert.True(data.AsSpan().IndexOf("ICC"u8) >= 0 || data.AsSpan().IndexOf("iCCP"u8) >= 0, "the picture made has no profile");
            var printed = _album.Prepared(data.ToArray());
            Assert.True(printed.Jpeg.Span.IndexOf("ICC"u8) < 0);
            using var seen = SKBitmap.Decode(printed.Jpeg.ToArray());
            var colour = seen.GetPixel(16, 16);
            using var same = new SKBitmap(new SKImageInfo(1, 1, SKColorType.Rgba8888, SKAlphaType.Opaque, SKColorSpace.CreateSrgb()));
            Assert.True(bitmap.PeekPixels().ReadPixels(same.PeekPixels(), 0, 0));
            Assert.True(same.GetPixelSpan()[0] < 90, "the profile makes no difference");
            Assert.InRange(colour.Red, same.GetPixelSpan()[0] - 3, same.GetPixelSpan()[0] + 3);
        }
    }

    [Fact]
    public void What_is_see_through_is_laid_on_white()
    {
        using var bitmap = new SKBitmap(new SKImageInfo(8, 8, SKColorType.Rgba8888, SKAlphaType.Unpremul));
        bitmap.Pixels = [.. Enumerable.Range(0, 64).Select(n => n < 32 ? new SKColor(255, 0, 0, 0) : new SKColor(255, 0, 0, 128))];
        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 100);

        using var seen = SKBitmap.Decode(_album.Prepared(data.ToArray()).Jpeg.ToArray());

        Assert.True(seen.GetPixel(1, 1) is { Red: > 250, Green: > 250, Blue: > 250 }, seen.GetPixel(1, 1).ToString());
        Assert.InRange(seen.GetPixel(6, 7).Green, 117, 137);
    }

    [Theory]
    [InlineData(7, 5, 3, 2)]
    [InlineData(100, 1, 33, 1)]
    [InlineData(9, 9, 9, 9)]
    [InlineData(64, 50, 63, 1)]
    public void A_smaller_picture_has_the_means_of_the_areas(int fromWidth, int fromHeight, int width, int height)
    {
        byte[][] lines =
        [
            .. Enumerable
                .Range(0, fromHeight)
                .Select(y =>
                    Enumerable
                        .Range(0, fromWidth)
                        .SelectMany(x => new byte[] { (byte)((x * 37) + (y * 11)), (byte)(x * y), (byte)(255 - (x * 5)), 255 })
                        .ToArray()
                ),
        ];
        var shrink = new AreaShrink(fromWidth, fromHeight, width, height);
        foreach (var line in lines)
            shrink.Take(line);

        for (var n = 0; n < width * height; n++)
        {
            for (var channel = 0; channel < 3; channel++)
                Assert.InRange(shrink.Rgba[(n * 4) + channel] - Mean(n % width, n / width, channel), -0.51, 0.51);
        }

        // In floating point and from the definition: every source pixel, times the area it shares with the target's.
        double Mean(int x, int y, int channel) =>
            Enumerable
                .Range(0, fromWidth * fromHeight)
                .Sum(s =>
                    Shared(s % fromWidth, x, (double)fromWidth / width)
                    * Shared(s / fromWidth, y, (double)fromHeight / height)
                    * lines[s / fromWidth][((s % fromWidth) * 4) + channel]
                ) / ((double)fromWidth / width * fromHeight / height);
    }

    private static double Shared(int source, int target, double scale) =>
        Math.Max(0, Math.Min(source + 1, (target + 1) * scale) - Math.Max(source, target * scale));

    /// <summary>The markers of a JPEG up to its end: ISO/IEC 10918-1, B.1.1.2, read apart from the product.</summary>
    private static List<byte> MarkersOf(byte[] jpeg)
    {
        var markers = new List<byte>();
        var at = 2;
        while (jpeg[at + 1] != 0xD9)
        {
            Assert.Equal(0xFF, jpeg[at]);
            markers.Add(jpeg[at + 1]);
            at += 2 + (jpeg[at + 2] << 8) + jpeg[at + 3];
            if (markers[^1] == 0xDA)
            {
                while (!(jpeg[at] == 0xFF && jpeg[at + 1] is not 0 and not (>= 0xD0 and <= 0xD7)))
                    at++;
            }
        }
        return [.. markers, 0xD9];
    }
}

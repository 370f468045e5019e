using System.Text;
using ExamDocs.Core.Findings;
using ExamDocs.Intake.Photos;
using SkiaSharp;

namespace ExamDocs.Intake.Tests.Photos;

/// <summary>What is no photo, or one made to do harm, is a warning with a sentence, and costs little.</summary>
public sealed class RefusedPhotoTests : IDisposable
{
    private readonly AlbumFolder _album = new();

    public void Dispose() => _album.Dispose();

    public static TheoryData<string, byte[]> OtherKinds =>
        new()
        {
            { "a HEIC picture", Boxed("heic") },
            { "a HEIF picture", Boxed("mif1") },
            { "an AVIF picture", Boxed("avif") },
            { "a film", Boxed("isom") },
            { "a WebP picture", [.. "RIFF\0\0\0\0WEBPVP8 "u8] },
            { "a GIF picture", [.. "GIF89a"u8, 0, 0] },
            { "a TIFF picture", [.. "II*\0\b\0\0\0"u8] },
            { "a TIFF picture", [.. "MM\0*\0\0\0\b"u8] },
            { "a BMP picture", [.. "BM\0\0\0\0\0\0"u8] },
            { "a PDF document", [.. "%PDF-1.7\n"u8] },
            { "an SVG drawing", [.. "<?xml version=\"1.0\"?>\n<svg xmlns=\"x\"/>"u8] },
            { "an archive", [.. "PK\x03\x04xx"u8] },
            { "neither a JPEG nor a PNG", [.. "The strap is worn here.\n"u8] },
            { "neither a JPEG nor a PNG", [0xFF] },
        };

    [Theory]
    [MemberData(nameof(OtherKinds))]
    public void Another_kind_is_named_and_the_way_out_said(string kind, byte[] bytes)
    {
        var fault = _album.Fault(bytes);
        Assert.Equal("INT044", fault.Code);
        Assert.StartsWith($"the photo 'a.jpg' is {kind}", fault.Message.Text, StringComparison.Ordinal);
        Assert.Contains("save it as JPEG", fault.Hint?.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_place_at_which_a_JPEG_can_be_cut_short_is_noticed()
    {
        var whole = Pictures.Corners(64, 48);
        var end = whole.Length - 2;
        for (var kept = 3; kept <= end + 1; kept++)
            Assert.Equal("INT044", _album.Fault(whole[..kept]).Code);
        Assert.Equal("RGWB", Pictures.CornersOf(_album.Prepared(whole).Jpeg));
    }

    [Fact]
    public void Every_place_at_which_a_PNG_can_be_cut_short_or_spoilt_is_noticed()
    {
        var whole = Pictures.Corners(64, 48, SKEncodedImageFormat.Png);
        for (var kept = 8; kept < whole.Length; kept++)
            Assert.Equal("INT044", _album.Fault(whole[..kept]).Code);
        for (var at = 8; at < whole.Length - 12; at += 7)
        {
            var spoilt = whole.ToArray();
            spoilt[at] ^= 0x15;
            var read = Read(spoilt);
            Assert.True(read.Fault is not null || Pictures.CornersOf(read.Photo!.Jpeg) is "RGWB", $"byte {at}");
        }
    }

    [Fact]
    public void A_PNG_with_an_end_but_half_its_lines_is_damaged() =>
        Assert.Contains("damaged", _album.Fault(Pictures.Png(200, 200, lines: 100)).Message.Text, StringComparison.Ordinal);

    [Fact]
    public void A_JPEG_with_any_byte_spoilt_never_breaks_the_reader()
    {
        var whole = Pictures.Corners(64, 48);
        var refused = 0;
        for (var at = 0; at < whole.Length; at++)
        {
            var spoilt = whole.ToArray();
            spoilt[at] ^= 0x55;
            var read = Read(spoilt);
            Assert.NotEqual(read.Photo is null, read.Fault is null);
            refused += read.Photo is null ? 1 : 0;
        }
        Assert.True(refused > 20, $"only {refused} were refused");
    }

    [Theory]
    [InlineData(60_000, 60_000)]
    [InlineData(30_000, 30_000)]
    [InlineData(20_001, 1)]
    [InlineData(1, 20_001)]
    [InlineData(10_001, 10_000)]
    [InlineData(int.MaxValue, int.MaxValue)]
    public void What_would_unpack_to_too_much_is_refused_from_its_header(int width, int height)
    {
        var png = Pictures.PngOf(width, height, 1, 0, 0, ("IDAT", [0x78, 0x9C, 3, 0, 0, 0, 0, 1]));
        _album.Put("a.jpg", png);
        var budget = new PhotoBudget();
        var before = GC.GetAllocatedBytesForCurrentThread();
        var found = Assert.Single(RecordPhotos.Check(AlbumFolder.Record("a.jpg"), _album.Path, budget));
        Assert.Equal(("INT045", 0L, 1), (found.Code, budget.PixelsUnpacked, budget.FilesOpened));
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 1_000_000);
        Assert.Contains("our own limit", found.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void A_whole_picture_of_one_colour_and_thirty_thousand_pixels_a_side_is_refused()
    {
        var png = Pictures.Png(30_000, 30_000);
        Assert.InRange(png.Length, 1_000, 300_000);
        Assert.Equal("INT045", _album.Fault(png).Code);
    }

    /// <summary>A JPEG of 60,000 a side is only a header: it is refused before anything is unpacked.</summary>
    [Fact]
    public void A_JPEG_that_says_it_is_vast_is_refused_from_its_header()
    {
        var jpeg = Pictures.Corners(16, 16);
        var frame = jpeg.AsSpan().IndexOf([(byte)0xFF, (byte)0xC0]);
        (jpeg[frame + 5], jpeg[frame + 6], jpeg[frame + 7], jpeg[frame + 8]) = (0xEA, 0x60, 0xEA, 0x60);
        var fault = _album.Fault(jpeg);
        Assert.Equal("INT045", fault.Code);
        Assert.Contains("60000 × 60000", fault.Message.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Pictures_stored_in_passes_are_bounded_by_what_must_be_held()
    {
        Assert.Contains("passes", _album.Fault(Pictures.Png(9_000, 9_000, interlace: 1)).Message.Text, StringComparison.Ordinal);
        Assert.Null(Read(Pictures.PngOf(8, 8, 1, 0, 1, ("IDAT", Packed(new byte[64])))).Fault?.Message);
        var jpeg = Pictures.Corners(16, 16);
        var frame = jpeg.AsSpan().IndexOf([(byte)0xFF, (byte)0xC0]);
        (jpeg[frame + 1], jpeg[frame + 5], jpeg[frame + 7]) = (0xC2, 0x20, 0x20);
        Assert.Contains("passes", _album.Fault(jpeg).Message.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_four_colours_of_printing_presses_are_refused_in_words_that_help()
    {
        var jpeg = Pictures.Corners(16, 16);
        var frame = jpeg.AsSpan().IndexOf([(byte)0xFF, (byte)0xC0]);
        byte[] cmyk =
        [
            .. jpeg[..(frame + 2)],
            0,
            20,
            8,
            0,
            16,
            0,
            16,
            4,
            1,
            0x11,
            0,
            2,
            0x11,
            0,
            3,
            0x11,
            0,
            4,
            0x11,
            0,
            .. jpeg[(frame + 19)..],
        ];
        var fault = _album.Fault(cmyk);
        Assert.Contains("CMYK", fault.Message.Text, StringComparison.Ordinal);
        Assert.Contains("RGB", fault.Hint?.Text, StringComparison.Ordinal);
    }

    /// <summary>A text chunk may unpack a thousandfold: it is left out before anything is unpacked.</summary>
    [Fact]
    public void Texts_packed_within_a_PNG_are_never_unpacked()
    {
        byte[] bomb = [.. "c\0\0"u8, .. Packed(new byte[8_000_000])];
        var png = Pictures.Png(8, 8, others: [.. Enumerable.Repeat(("zTXt", bomb), 50)]);
        Assert.InRange(PngChunks.Reduce(png.ToArray()).Length, 60, 200);
        Assert.Null(Read(png).Fault?.Message);
    }

    [Fact]
    public void A_file_of_more_than_forty_mebibytes_is_not_opened()
    {
        using (var file = File.Create(Path.Combine(_album.Path, "big.jpg")))
            file.SetLength((40 * 1024 * 1024) + 1);
        var budget = new PhotoBudget();
        Assert.Equal("INT045", Assert.Single(RecordPhotos.Check(AlbumFolder.Record("big.jpg"), _album.Path, budget)).Code);
        Assert.Equal(0, budget.FilesOpened);
    }

    /// <summary>So that the refusals above can fail: one pixel less, and each of them is read.</summary>
    [Fact]
    public void What_is_just_small_enough_is_read_without_being_held()
    {
        _album.Put("a.jpg", Pictures.Png(10_000, 10_000));
        var before = GC.GetAllocatedBytesForCurrentThread();
        var read = PreparePhoto.From(_album.Path, "a.jpg");
        Assert.Equal((736, 736), (read.Photo!.WidthPx, read.Photo.HeightPx));
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 1, 80_000_000);
    }

    private PhotoReading Read(byte[] bytes)
    {
        _album.Put("a.jpg", bytes);
        return PreparePhoto.From(_album.Path, "a.jpg");
    }

    private static byte[] Packed(byte[] bytes)
    {
        using var packed = new MemoryStream();
        using (
            var zlib = new System.IO.Compression.ZLibStream(packed, System.IO.Compression.CompressionLevel.SmallestSize, leaveOpen: true)
        )
            zlib.Write(bytes);
        return packed.ToArray();
    }

    private static byte[] Boxed(string brand) => [0, 0, 0, 24, .. Encoding.ASCII.GetBytes("ftyp" + brand), .. new byte[12]];
}

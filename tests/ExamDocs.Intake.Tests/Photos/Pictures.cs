using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;
using SkiaSharp;

namespace ExamDocs.Intake.Tests.Photos;

/// <summary>Pictures made up here, byte by byte where a program would not make them.</summary>
internal static class Pictures
{
    /// <summary>Red top left, green top right, blue bottom left, white bottom right; wider than high.</summary>
    public static byte[] Corners(int width, int height, SKEncodedImageFormat format = SKEncodedImageFormat.Jpeg, int orientation = 1)
    {
        using var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        using (var canvas = new SKCanvas(bitmap))
        {
            var (x, y) = (width / 2f, height / 2f);
            foreach (
                var (left, top, colour) in new[]
                {
                    (0f, 0f, SKColors.Red),
                    (x, 0f, SKColors.Lime),
                    (0f, y, SKColors.Blue),
                    (x, y, SKColors.White),
                }
            )
            {
                using var paint = new SKPaint { Color = colour };
                canvas.DrawRect(left, top, x, y, paint);
            }
        }
        using var data = bitmap.Encode(format, 95);
        // The stored rows and columns are those of the upright picture, moved as the tag says.
        return orientation == 1 ? data.ToArray() : WithSegments(data.ToArray(), Exif(orientation));
    }

    /// <summary>The colours of the corners, clockwise from the top left, each as one letter.</summary>
    public static string CornersOf(ReadOnlyMemory<byte> jpeg)
    {
        using var bitmap = SKBitmap.Decode(jpeg.ToArray());
        return string.Concat(
            new[] { (1, 1), (bitmap.Width - 2, 1), (bitmap.Width - 2, bitmap.Height - 2), (1, bitmap.Height - 2) }.Select(at =>
                Letter(bitmap.GetPixel(at.Item1, at.Item2))
            )
        );
    }

    public static char Letter(SKColor colour) =>
        (colour.Red > 200, colour.Green > 200, colour.Blue > 200) switch
        {
            (true, false, false) => 'R',
            (false, true, false) => 'G',
            (false, false, true) => 'B',
            (true, true, true) => 'W',
            _ => '?',
        };

    /// <summary>The segments, each whole, put behind the start mark.</summary>
    public static byte[] WithSegments(byte[] jpeg, params byte[][] segments) =>
        [.. jpeg[..2], .. segments.SelectMany(s => s), .. jpeg[2..]];

    public static byte[] Segment(byte marker, byte[] body) =>
        [0xFF, marker, (byte)((body.Length + 2) >> 8), (byte)(body.Length + 2), .. body];

    /// <summary>Exif with an orientation and, where asked, a place: Exif 2.3 (CIPA DC-008), 4.6.2 to 4.6.6.</summary>
    public static byte[] Exif(int orientation, bool place = false) => Segment(0xE1, [.. "Exif\0\0"u8, .. Tiff(orientation, place)]);

    public static byte[] Tiff(int orientation, bool place = false)
    {
        byte[] tiff = [.. "MM\0*"u8, 0, 0, 0, 8, 0, (byte)(place ? 2 : 1), 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte)orientation, 0, 0];
        return place
            ? [.. tiff, 0x88, 0x25, 0, 4, 0, 0, 0, 1, 0, 0, 0, 38, 0, 0, 0, 0, 0, 1, 0, 1, 0, 2, 0, 0, 0, 2, (byte)'N', 0, 0, 0, 0, 0, 0, 0]
            : [.. tiff, 0, 0, 0, 0];
    }

    /// <summary>A PNG of one colour, see-through where so asked, whose lines are packed as they are written.</summary>
    public static byte[] Png(int width, int height, byte interlace = 0, int? lines = null, params (string Type, byte[] Body)[] others)
    {
        var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.SmallestSize, leaveOpen: true))
        {
            var line = new byte[1 + ((width + 7) / 8)];
            for (var y = 0; y < (lines ?? height); y++)
                zlib.Write(line);
        }
        return PngOf(width, height, 1, 0, interlace, [.. others, ("IDAT", packed.ToArray())]);
    }

    public static byte[] PngOf(int width, int height, byte depth, byte colour, byte interlace, params (string Type, byte[] Body)[] chunks)
    {
        var header = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, width);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), height);
        (header[8], header[9], header[12]) = (depth, colour, interlace);
        return
        [
            0x89,
            .. "PNG\r\n\x1A\n"u8,
            .. Chunk("IHDR", header),
            .. chunks.SelectMany(c => Chunk(c.Type, c.Body)),
            .. Chunk("IEND", []),
        ];
    }

    public static byte[] Chunk(string type, byte[] body)
    {
        byte[] named = [.. Encoding.Latin1.GetBytes(type), .. body];
        var framed = new byte[named.Length + 8];
        BinaryPrimitives.WriteInt32BigEndian(framed, body.Length);
        named.CopyTo(framed, 4);
        BinaryPrimitives.WriteUInt32BigEndian(framed.AsSpan(named.Length + 4), Crc(named));
        return framed;
    }

    /// <summary>Bit by bit, apart from the table of the reader.</summary>
    private static uint Crc(byte[] bytes)
    {
        var crc = uint.MaxValue;
        foreach (var value in bytes)
        {
            crc ^= value;
            for (var bit = 0; bit < 8; bit++)
                crc = (crc >> 1) ^ (0xEDB88320 & (uint)-(int)(crc & 1));
        }
        return ~crc;
    }
}

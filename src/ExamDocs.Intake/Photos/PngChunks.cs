using System.Buffers.Binary;
using System.IO.Hashing;

namespace ExamDocs.Intake.Photos;

/// <summary>
/// Goes through the chunks of a PNG file without unpacking it (ISO/IEC 15948, clause 5), and leaves out those that are no
/// part of the picture: texts in them could unpack to gigabytes.
/// </summary>
internal static class PngChunks
{
    private const int SignatureBytes = 8;

    /// <summary>Length, type and check sum.</summary>
    private const int Frame = 12;

    /// <param name="file">The chunks that are kept are moved together at its beginning.</param>
    /// <returns>What the picture says of itself, and how many bytes of the file are left: a file with nothing but the picture in
    /// it.</returns>
    /// <exception cref="PhotoRefusedException">It is damaged, or too large.</exception>
    public static (PictureHeader Header, int Length) Reduce(byte[] file)
    {
        var header = Header(file);
        var (at, kept, seen) = (SignatureBytes, SignatureBytes, "");
        while (seen is not "IEND")
        {
            var chunk = file.AsSpan(at, ChunkLength(file, at));
            seen = System.Text.Encoding.Latin1.GetString(chunk[4..8]);
            if (IsCritical(seen) && !IsSound(chunk))
                throw PhotoRefusedException.Damaged();
            at += chunk.Length;
            if (seen is "eXIf")
                header = header with { Orientation = ExifOrientation.Of(chunk[8..^4]) };
            if (!Belongs(seen, chunk.Length))
                continue;
            chunk.CopyTo(file.AsSpan(kept));
            kept += chunk.Length;
        }
        return (header, kept);
    }

    private static PictureHeader Header(ReadOnlySpan<byte> file)
    {
        if (file.Length < SignatureBytes + Frame + 13 || !file.Slice(SignatureBytes, 8).SequenceEqual("\0\0\0\x0DIHDR"u8))
            throw PhotoRefusedException.Damaged();
        var body = file.Slice(SignatureBytes + 8, 13);
        var (width, height) = (BinaryPrimitives.ReadUInt32BigEndian(body), BinaryPrimitives.ReadUInt32BigEndian(body[4..]));
        if (width is 0 or > int.MaxValue || height is 0 or > int.MaxValue || body[12] > 1)
            throw PhotoRefusedException.Damaged();
        // In either order of lines, a line is unpacked to at most four values of two bytes a pixel.
        var interlaced = body[12] == 1;
        return new PictureHeader((int)width, (int)height, interlaced ? (long)width * height * 4 * (body[8] > 8 ? 2 : 1) : 0)
        {
            Orientation = 1,
        }.WithinLimits();
    }

    private static int ChunkLength(byte[] file, int at)
    {
        if (at + Frame > file.Length)
            throw PhotoRefusedException.Damaged();
        var length = BinaryPrimitives.ReadUInt32BigEndian(file.AsSpan(at)) + (long)Frame;
        return at + length <= file.Length ? (int)length : throw PhotoRefusedException.Damaged();
    }

    /// <summary>A capital first letter: a reader that does not know the chunk cannot show the picture.</summary>
    private static bool IsCritical(string type) => char.IsAsciiLetterUpper(type[0]);

    private static bool IsSound(ReadOnlySpan<byte> chunk) =>
        Crc32.HashToUInt32(chunk[4..^4]) == BinaryPrimitives.ReadUInt32BigEndian(chunk[^4..]);

    private static bool Belongs(string type, int length) =>
        IsCritical(type) || type is "tRNS" || (type is "gAMA" or "cHRM" or "sRGB" or "iCCP" && length <= PhotoLimits.ProfileBytes);
}

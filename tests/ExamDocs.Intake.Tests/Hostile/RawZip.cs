using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;

namespace ExamDocs.Intake.Tests.Hostile;

/// <summary>
/// A zip archive written byte by byte, so that it can lie (the layout: ISO/IEC 21320-1 and the application note it names).
/// </summary>
internal sealed class RawZip
{
    private readonly List<(byte[] Name, byte[] Packed, uint Length, ushort Flags, ushort Method, uint Crc)> _entries = [];

    public RawZip Add(string name, string content) => Add(name, Encoding.UTF8.GetBytes(content));

    public RawZip Add(string name, byte[] content) => Packed(name, Deflated(content, end: true), (uint)content.Length, summed: content);

    /// <param name="summed">Of what the check sum is taken.</param>
    /// <param name="length">The length declared, whatever the truth.</param>
    public RawZip Packed(string name, byte[] packed, uint length, ushort flags = 0, ushort method = 8, byte[]? summed = null)
    {
        _entries.Add((Encoding.UTF8.GetBytes(name), packed, length, flags, method, Crc(summed ?? [])));
        return this;
    }

    /// <summary>A text that is a piece many times over, packed without ever being held.</summary>
    public static byte[] Repeated(string head, string piece, int times, string tail)
    {
        var packed = Deflated(Encoding.UTF8.GetBytes(piece), end: false);
        using var all = new MemoryStream();
        all.Write(Deflated(Encoding.UTF8.GetBytes(head), end: false));
        for (var n = 0; n < times; n++)
            all.Write(packed);
        all.Write(Deflated(Encoding.UTF8.GetBytes(tail), end: true));
        return all.ToArray();
    }

    public byte[] ToArray()
    {
        using var file = new MemoryStream();
        var places = new List<int>();
        foreach (var entry in _entries)
        {
            places.Add((int)file.Length);
            file.Write([.. "PK\x03\x04"u8, .. Common(entry), .. entry.Name, .. entry.Packed]);
        }
        var start = (int)file.Length;
        foreach (var (entry, place) in _entries.Zip(places))
            file.Write([.. "PK\x01\x02"u8, 20, 0, .. Common(entry), 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, .. Four((uint)place), .. entry.Name]);
        file.Write([
            .. "PK\x05\x06"u8,
            0,
            0,
            0,
            0,
            .. Two(_entries.Count),
            .. Two(_entries.Count),
            .. Four((uint)(file.Length - start)),
            .. Four((uint)start),
            0,
            0,
        ]);
        return file.ToArray();
    }

    private static byte[] Common((byte[] Name, byte[] Packed, uint Length, ushort Flags, ushort Method, uint Crc) entry) =>
        [
            20,
            0,
            .. Two(entry.Flags),
            .. Two(entry.Method),
            0,
            0,
            0x21,
            0,
            .. Four(entry.Crc),
            .. Four((uint)entry.Packed.Length),
            .. Four(entry.Length),
            .. Two(entry.Name.Length),
            0,
            0,
        ];

    private static byte[] Deflated(byte[] content, bool end)
    {
        using var packed = new MemoryStream();
        var deflate = new DeflateStream(packed, CompressionLevel.Fastest, leaveOpen: true);
        deflate.Write(content);
        deflate.Flush();
        var open = packed.ToArray();
        deflate.Dispose();
        return end ? packed.ToArray() : open;
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

    private static byte[] Two(int value) => [(byte)value, (byte)(value >> 8)];

    private static byte[] Four(uint value)
    {
        var bytes = new byte[4];
        BinaryPrimitives.WriteUInt32LittleEndian(bytes, value);
        return bytes;
    }
}

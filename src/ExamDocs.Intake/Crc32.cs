namespace ExamDocs.Intake;

/// <summary>The check sum of PNG chunks and of files in a zip archive: ISO/IEC 15948, 5.5, the polynomial of ISO 3309.</summary>
internal sealed class Crc32
{
    private static readonly uint[] Table = [.. Enumerable.Range(0, 256).Select(Entry)];

    private uint _crc = uint.MaxValue;

    /// <summary>Of all bytes added so far.</summary>
    public uint Value => ~_crc;

    public static uint Of(ReadOnlySpan<byte> bytes)
    {
        var sum = new Crc32();
        sum.Add(bytes);
        return sum.Value;
    }

    public void Add(ReadOnlySpan<byte> bytes)
    {
        var crc = _crc;
        foreach (var value in bytes)
            crc = Table[(byte)(crc ^ value)] ^ (crc >> 8);
        _crc = crc;
    }

    private static uint Entry(int index)
    {
        var entry = (uint)index;
        for (var bit = 0; bit < 8; bit++)
            entry = (entry & 1) == 1 ? 0xEDB88320 ^ (entry >> 1) : entry >> 1;
        return entry;
    }
}

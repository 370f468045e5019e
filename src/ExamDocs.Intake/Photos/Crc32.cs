namespace ExamDocs.Intake.Photos;

/// <summary>The check sum of PNG chunks: ISO/IEC 15948, 5.5, the polynomial of ISO 3309.</summary>
internal static class Crc32
{
    private static readonly uint[] Table = [.. Enumerable.Range(0, 256).Select(Entry)];

    public static uint Of(ReadOnlySpan<byte> bytes)
    {
        var crc = uint.MaxValue;
        foreach (var value in bytes)
            crc = Table[(byte)(crc ^ value)] ^ (crc >> 8);
        return ~crc;
    }

    private static uint Entry(int index)
    {
        var entry = (uint)index;
        for (var bit = 0; bit < 8; bit++)
            entry = (entry & 1) == 1 ? 0xEDB88320 ^ (entry >> 1) : entry >> 1;
        return entry;
    }
}

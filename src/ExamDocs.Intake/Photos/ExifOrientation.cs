using System.Buffers.Binary;

namespace ExamDocs.Intake.Photos;

/// <summary>
/// Finds how a camera was held in the Exif of a PNG, which the decoder does not look at (ISO/IEC 15948, 11.3.4.5; TIFF 6.0, section 2).
/// </summary>
internal static class ExifOrientation
{
    private const int Tag = 0x0112;
    private const int EntryBytes = 12;

    /// <param name="tiff">The body of the chunk.</param>
    /// <returns>1 to 8; 1 where it does not say, or cannot be read.</returns>
    public static int Of(ReadOnlySpan<byte> tiff)
    {
        var little = tiff is [(byte)'I', (byte)'I', 42, 0, ..];
        if (tiff.Length < 8 || !(little || tiff is [(byte)'M', (byte)'M', 0, 42, ..]))
            return 1;
        var list = little ? BinaryPrimitives.ReadUInt32LittleEndian(tiff[4..]) : BinaryPrimitives.ReadUInt32BigEndian(tiff[4..]);
        if (list + 2L > tiff.Length)
            return 1;
        var entries = tiff[((int)list + 2)..];
        for (var left = Short(tiff[(int)list..], little); left > 0 && entries.Length >= EntryBytes; left--, entries = entries[EntryBytes..])
        {
            if (Short(entries, little) == Tag)
                return Short(entries[8..], little) is >= 1 and <= 8 and var found ? found : 1;
        }
        return 1;
    }

    private static ushort Short(ReadOnlySpan<byte> at, bool little) =>
        little ? BinaryPrimitives.ReadUInt16LittleEndian(at) : BinaryPrimitives.ReadUInt16BigEndian(at);
}

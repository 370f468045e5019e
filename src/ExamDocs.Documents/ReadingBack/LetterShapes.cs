using System.Buffers.Binary;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>Which signs of a TrueType font draw anything (Apple, TrueType Reference Manual, tables loca and head).</summary>
internal sealed class LetterShapes
{
    private readonly byte[] _font;
    private readonly int _places;
    private readonly bool _isLong;

    /// <param name="font">The font as it lies in the file.</param>
    public LetterShapes(byte[] font)
    {
        _font = font;
        _places = Table("loca"u8);
        var head = Table("head"u8);
        _isLong = head > 0 && head + 52 <= font.Length && BinaryPrimitives.ReadInt16BigEndian(font.AsSpan(head + 50)) == 1;
    }

    /// <summary>Whether a sign draws something; true where that cannot be told.</summary>
    public bool Draws(int sign)
    {
        var size = _isLong ? 4 : 2;
        var at = _places + (sign * size);
        return _places == 0 || at + (2 * size) > _font.Length || !_font.AsSpan(at, size).SequenceEqual(_font.AsSpan(at + size, size));
    }

    private int Table(ReadOnlySpan<byte> name)
    {
        for (var n = 0; n < 64 && 12 + (16 * (n + 1)) <= _font.Length; n++)
        {
            var entry = _font.AsSpan(12 + (16 * n), 16);
            if (entry[..4].SequenceEqual(name))
                return (int)BinaryPrimitives.ReadUInt32BigEndian(entry[8..]);
        }
        return 0;
    }
}

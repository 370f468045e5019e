using System.Buffers.Binary;
using System.Text;

namespace ExamDocs.Documents.Finishing;

/// <summary>
/// The colour space sRGB as an ICC profile, version 4 (ICC.1:2010, ISO 15076-1). What its numbers mean is published in
/// IEC 61966-2-1; the primaries stand here adapted to the profile's white D50 by the Bradford matrix, as ICC asks for.
/// </summary>
internal static class SrgbProfile
{
    private const int HeaderLength = 128;

    private static readonly double[] White = [0.9642, 1.0, 0.8249];
    private static readonly double[] Red = [0.43607, 0.22249, 0.01392];
    private static readonly double[] Green = [0.38515, 0.71687, 0.09708];
    private static readonly double[] Blue = [0.14307, 0.06061, 0.71410];
    private static readonly double[] Adaptation = [1.04788, 0.02292, -0.05022, 0.02959, 0.99048, -0.01708, -0.00925, 0.01508, 0.75168];

    /// <summary>IEC 61966-2-1: ((x + 0.055) / 1.055) to the power 2.4, and x / 12.92 up to 0.04045.</summary>
    private static readonly double[] Curve = [2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045];

    public static byte[] Bytes { get; } = Build();

    private static byte[] Build()
    {
        var curve = Tag("para", [0, 3, 0, 0, .. Fixed(Curve)]);
        (string Name, byte[] Data)[] tags =
        [
            ("desc", Words("sRGB IEC 61966-2-1")),
            ("cprt", Words("No copyright, use freely")),
            ("wtpt", Tag("XYZ ", Fixed(White))),
            ("chad", Tag("sf32", Fixed(Adaptation))),
            ("rXYZ", Tag("XYZ ", Fixed(Red))),
            ("gXYZ", Tag("XYZ ", Fixed(Green))),
            ("bXYZ", Tag("XYZ ", Fixed(Blue))),
            ("rTRC", curve),
            ("gTRC", curve),
            ("bTRC", curve),
        ];
        var table = new List<byte>(Number(tags.Length));
        var data = new List<byte>();
        var places = new Dictionary<byte[], int>();
        foreach (var (name, content) in tags)
        {
            if (places.TryAdd(content, HeaderLength + 4 + (12 * tags.Length) + data.Count))
                data.AddRange(content);
            table.AddRange([.. Encoding.ASCII.GetBytes(name), .. Number(places[content]), .. Number(content.Length)]);
        }
        return [.. Header(HeaderLength + table.Count + data.Count), .. table, .. data];
    }

    private static byte[] Header(int length)
    {
        var header = new byte[HeaderLength];
        Number(length).CopyTo(header, 0);
        header[8] = 4;
        header[9] = 0x20;
        "mntrRGB XYZ "u8.CopyTo(header.AsSpan(12));
        // A day must be there; it is that of the standard's first edition, October 1999.
        byte[] made = [0x07, 0xCF, 0, 10, 0, 1];
        made.CopyTo(header, 24);
        "acsp"u8.CopyTo(header.AsSpan(36));
        Fixed(White).CopyTo(header, 68);
        return header;
    }

    /// <summary>A text in one language.</summary>
    private static byte[] Words(string text)
    {
        var letters = Encoding.BigEndianUnicode.GetBytes(text);
        return Tag("mluc", [.. Number(1), .. Number(12), .. "enGB"u8, .. Number(letters.Length), .. Number(28), .. letters]);
    }

    /// <summary>Its kind, four reserved bytes and its content, filled up to a multiple of four.</summary>
    private static byte[] Tag(string kind, byte[] content) =>
        [.. Encoding.ASCII.GetBytes(kind), 0, 0, 0, 0, .. content, .. new byte[(4 - (content.Length % 4)) % 4]];

    /// <summary>Numbers with sixteen bits behind the point.</summary>
    private static byte[] Fixed(double[] values) => [.. values.SelectMany(v => Number((int)Math.Round(v * 65536)))];

    private static byte[] Number(int value)
    {
        var bytes = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(bytes, value);
        return bytes;
    }
}

namespace ExamDocs.UseCases.Reading;

/// <summary>Tells a file that holds no record from its first bytes, whatever it is called.</summary>
internal static class OtherFile
{
    private const string WhatIsRead =
        "give a capture workbook (.xlsx), a record in JSON, .csv files, or a document that this program printed";

    /// <param name="first">Its first bytes, four where it has so many.</param>
    /// <returns>Null where it may be a record in JSON.</returns>
    public static string? WhyNot(ReadOnlySpan<byte> first) =>
        IsPicture(first) ? $"this is a picture, and pictures are not read: {WhatIsRead}"
        : MayBeJson(first) ? null
        : $"this is no file that can be read: {WhatIsRead}";

    private static bool IsPicture(ReadOnlySpan<byte> first) =>
        first.StartsWith((ReadOnlySpan<byte>)[0x89, (byte)'P', (byte)'N', (byte)'G'])
        || first.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF])
        || first.StartsWith("GIF8"u8)
        || first.StartsWith("II*\0"u8)
        || first.StartsWith("MM\0*"u8)
        || first.StartsWith("RIFF"u8)
        || first.StartsWith("BM"u8);

    /// <summary>A brace or bracket after blanks, or a byte order mark, which the reader of JSON looks behind.</summary>
    private static bool MayBeJson(ReadOnlySpan<byte> first)
    {
        var text = first.Trim(" \t\r\n"u8);
        return text.IsEmpty || text[0] is (byte)'{' or (byte)'[' or (byte)'"' or 0xEF or 0xFE or 0xFF;
    }
}

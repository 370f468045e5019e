using System.Globalization;
using System.Text;

namespace ExamDocs.Documents.PdfSyntax;

/// <summary>Text strings outside of content streams (ISO 32000-1, 7.9.2).</summary>
internal static class PdfText
{
    private static ReadOnlySpan<byte> Utf16Mark => [0xFE, 0xFF];

    /// <summary>As a string that holds any character: hexadecimal, and UTF-16 where Latin letters do not do.</summary>
    public static string Write(string text) =>
        text.All(char.IsAscii) && text.IndexOfAny(['(', ')', '\\', '\n', '\r']) < 0
            ? $"({text})"
            : $"<FEFF{Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text))}>";

    /// <summary>What a string says. Bytes beyond ASCII that no UTF-16 mark explains are read as Latin-1.</summary>
    public static string Read(ReadOnlySpan<byte> token)
    {
        var bytes = Bytes(token);
        return bytes.AsSpan().StartsWith(Utf16Mark)
            ? Encoding.BigEndianUnicode.GetString(bytes.AsSpan(2))
            : Encoding.Latin1.GetString(bytes);
    }

    /// <summary>The bytes that a string stands for, written either way.</summary>
    public static byte[] Bytes(ReadOnlySpan<byte> token) =>
        token.IsEmpty ? []
        : token[0] == '<' ? Hex(token[1..^1])
        : Literal(token[1..^1]);

    private static byte[] Hex(ReadOnlySpan<byte> digits)
    {
        if (
            digits.Length % 2 == 0
            && Convert.FromHexString(digits, new byte[digits.Length / 2], out _, out _) is System.Buffers.OperationStatus.Done
        )
            return Convert.FromHexString(digits);
        var clean = new StringBuilder(digits.Length);
        foreach (var digit in digits)
        {
            if (char.IsAsciiHexDigit((char)digit))
                clean.Append((char)digit);
        }
        // A missing last digit counts as 0 (ISO 32000-1, 7.3.4.3).
        return Convert.FromHexString(clean.Length % 2 == 0 ? clean.ToString() : clean.Append('0').ToString());
    }

    private static byte[] Literal(ReadOnlySpan<byte> text)
    {
        var bytes = new List<byte>(text.Length);
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] != '\\' || i + 1 == text.Length)
                bytes.Add(text[i]);
            else if (text[++i] is >= (byte)'0' and <= (byte)'7')
                bytes.Add(Octal(text, ref i));
            else if (Escaped(text[i]) is { } escaped)
                bytes.Add(escaped);
        }
        return [.. bytes];
    }

    private static byte Octal(ReadOnlySpan<byte> text, ref int i)
    {
        var value = text[i] - '0';
        for (var more = 0; more < 2 && i + 1 < text.Length && text[i + 1] is >= (byte)'0' and <= (byte)'7'; more++)
            value = (value * 8) + (text[++i] - '0');
        return (byte)value;
    }

    /// <summary>Null for a line break that is only there for the eye.</summary>
    private static byte? Escaped(byte letter) =>
        letter switch
        {
            (byte)'n' => 10,
            (byte)'r' => 13,
            (byte)'t' => 9,
            (byte)'b' => 8,
            (byte)'f' => 12,
            10 or 13 => null,
            _ => letter,
        };

    /// <summary>A date as PDF writes it, D:20260512093000+00'00', as XMP does; null where it is not such a date.</summary>
    public static string? XmpDate(string pdf)
    {
        var digits = pdf.Replace("'", "", StringComparison.Ordinal);
        return
            DateTimeOffset.TryParseExact(
                digits,
                ["'D:'yyyyMMddHHmmsszzz", "'D:'yyyyMMddHHmmss'Z'"],
                CultureInfo.InvariantCulture,
                DateTimeStyles.AssumeUniversal,
                out var date
            )
            || DateTimeOffset.TryParseExact(
                Colon(digits),
                "'D:'yyyyMMddHHmmsszzz",
                CultureInfo.InvariantCulture,
                DateTimeStyles.AssumeUniversal,
                out date
            )
            ? date.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture)
            : null;
    }

    private static string Colon(string digits) => digits.Length == 21 ? digits.Insert(19, ":") : digits;
}

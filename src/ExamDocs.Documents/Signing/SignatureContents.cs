using System.Buffers;
using System.Formats.Asn1;

namespace ExamDocs.Documents.Signing;

/// <summary>The signature as a file holds it: hexadecimal digits in brackets, filled up with zeros.</summary>
internal static class SignatureContents
{
    private static readonly SearchValues<byte> Digits = SearchValues.Create("0123456789ABCDEF"u8);

    /// <returns>The signature's DER; null where it is written in another way than capital digits and zeros after it.</returns>
    public static byte[]? Read(ReadOnlySpan<byte> contents)
    {
        var digits = contents[1..^1];
        if (digits.Length % 2 != 0 || digits.ContainsAnyExcept(Digits))
            return null;
        var bytes = Convert.FromHexString(digits);
        if (!AsnDecoder.TryReadEncodedValue(bytes, AsnEncodingRules.DER, out _, out _, out _, out var length))
            return null;
        return IsPadding(bytes.AsSpan(length)) ? bytes[..length] : null;
    }

    /// <summary>No signature covers what follows it: it must be zeros to the last.</summary>
    private static bool IsPadding(ReadOnlySpan<byte> rest) => !rest.ContainsAnyExcept((byte)0);
}

using System.Security.Cryptography;

namespace ExamDocs.Register.Log;

/// <summary>SHA-256 as the register writes it: 64 lower-case hexadecimal digits.</summary>
internal static class Sha256Hex
{
    public static string Of(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    public static string Of(Stream stream) => Convert.ToHexStringLower(SHA256.HashData(stream));
}

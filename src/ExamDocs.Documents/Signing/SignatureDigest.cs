using System.Security.Cryptography;

namespace ExamDocs.Documents.Signing;

/// <summary>The hash functions in use, with the names that other formats have for them (RFC 5754, section 2; RFC 5758, 3.2).</summary>
internal sealed record SignatureDigest(HashAlgorithmName Name, string Oid, string EcdsaOid)
{
    public static readonly SignatureDigest Sha256 = new(HashAlgorithmName.SHA256, "2.16.840.1.101.3.4.2.1", "1.2.840.10045.4.3.2");
    public static readonly SignatureDigest Sha384 = new(HashAlgorithmName.SHA384, "2.16.840.1.101.3.4.2.2", "1.2.840.10045.4.3.3");
    public static readonly SignatureDigest Sha512 = new(HashAlgorithmName.SHA512, "2.16.840.1.101.3.4.2.3", "1.2.840.10045.4.3.4");

    /// <summary>Null where it is not one of these.</summary>
    public static SignatureDigest? Find(string? oid) =>
        new[] { Sha256, Sha384, Sha512 }.FirstOrDefault(d => string.Equals(d.Oid, oid, StringComparison.Ordinal));

    public byte[] Of(ReadOnlySpan<byte> data) => CryptographicOperations.HashData(Name, data);

    public byte[] Of(ReadOnlySpan<byte> first, ReadOnlySpan<byte> second)
    {
        using var hash = IncrementalHash.CreateHash(Name);
        hash.AppendData(first);
        hash.AppendData(second);
        return hash.GetHashAndReset();
    }
}

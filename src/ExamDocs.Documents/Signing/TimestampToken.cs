using System.Security.Cryptography;
using System.Security.Cryptography.Pkcs;
using System.Security.Cryptography.X509Certificates;
using NodaTime;

namespace ExamDocs.Documents.Signing;

/// <summary>A server's statement that a signature was there at a time (RFC 3161).</summary>
/// <param name="At">The time.</param>
/// <param name="Path">The certificate of the server first, then those above it.</param>
internal sealed record TimestampToken(Instant At, IReadOnlyList<X509Certificate2> Path)
{
    /// <summary>
    /// A token as it is kept in a document: what no signature covers is written in one form, certificates beyond those that
    /// vouch for it are left out, and so is a root.
    /// </summary>
    /// <exception cref="CryptographicException">It is not a token, or signed in a way that is not known here.</exception>
    public static byte[] InOneForm(byte[] token)
    {
        var (cms, signer) = Open(token);
        var path = CertificateFacts.Path(signer.Certificate!, cms.Certificates);
        path = path.Count > 1 && CertificateFacts.IsSelfSigned(path[^1]) ? [.. path.SkipLast(1)] : path;
        IEnumerable<byte[]> attributes = signer
            .SignedAttributes.Cast<CryptographicAttributeObject>()
            .Select(a => CmsAttribute.Raw(a.Oid.Value!, a.Values[0].RawData));
        var digest = SignatureDigest.Find(signer.DigestAlgorithm.Value)
            ?? throw new CryptographicException("its hash function is not known");
        return new CmsForm(
            cms.ContentInfo.ContentType.Value!,
            cms.ContentInfo.Content,
            digest,
            path,
            [.. attributes],
            signer.GetSignature()
        ).Bytes();
    }

    /// <param name="token">In the form above.</param>
    /// <param name="signature">The signature that it is about.</param>
    /// <exception cref="CryptographicException">It does not hold, or is about something else.</exception>
    public static TimestampToken Of(byte[] token, byte[] signature)
    {
        if (!InOneForm(token).AsSpan().SequenceEqual(token))
            throw new CryptographicException("bytes of it were changed");
        if (!Rfc3161TimestampToken.TryDecode(token, out var read, out _) || !read.VerifySignatureForData(signature, out var signer))
            throw new CryptographicException("its signature does not hold, or it is about another document");
        return new TimestampToken(
            Instant.FromDateTimeOffset(read.TokenInfo.Timestamp),
            CertificateFacts.Path(signer, read.AsSignedCms().Certificates)
        );
    }

    private static (SignedCms Cms, SignerInfo Signer) Open(byte[] token)
    {
        var cms = new SignedCms();
        cms.Decode(token);
        return
            cms.SignerInfos.Count == 1
            && cms.SignerInfos[0] is { Certificate: not null } signer
            && signer.SignedAttributes.Cast<CryptographicAttributeObject>().All(a => a.Values.Count == 1)
            ? (cms, signer)
            : throw new CryptographicException("it does not say by one certificate who signed it");
    }
}

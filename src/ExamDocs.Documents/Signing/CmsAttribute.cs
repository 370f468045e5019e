using System.Formats.Asn1;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace ExamDocs.Documents.Signing;

/// <summary>The attributes of a signature that PAdES baseline asks for (ETSI EN 319 142-1, section 6), as DER.</summary>
internal static class CmsAttribute
{
    public const string TimestampOid = "1.2.840.113549.1.9.16.2.14";
    private const string ContentTypeOid = "1.2.840.113549.1.9.3";
    private const string MessageDigestOid = "1.2.840.113549.1.9.4";
    private const string SigningCertificateV2Oid = "1.2.840.113549.1.9.16.2.47";

    /// <summary>No signing time: a PDF says it in its own entry M, and both are not allowed (ETSI EN 319 142-1, 5.3).</summary>
    /// <param name="digest">Hash of the signed bytes.</param>
    /// <param name="path">The signer's certificate, then those above it.</param>
    public static IReadOnlyList<byte[]> OfDocument(byte[] digest, IReadOnlyList<X509Certificate2> path) =>
        [
            Attribute(ContentTypeOid, w => w.WriteObjectIdentifier(CmsForm.Data)),
            Attribute(MessageDigestOid, w => w.WriteOctetString(digest)),
            Attribute(SigningCertificateV2Oid, w => WriteNames(w, path)),
        ];

    /// <summary>An attribute with one value that is encoded already.</summary>
    public static byte[] Raw(string oid, byte[] value) => Attribute(oid, w => w.WriteEncodedValue(value));

    /// <summary>RFC 3161, appendix A.</summary>
    public static byte[] Timestamp(byte[] token) => Raw(TimestampOid, token);

    /// <summary>
    /// Names every certificate of the path, the signer's first (RFC 5035, section 3), so that the signature covers them all.
    /// SHA-256 is what a name is made with where no function is named (section 4).
    /// </summary>
    private static void WriteNames(AsnWriter writer, IReadOnlyList<X509Certificate2> path)
    {
        using (writer.PushSequence())
        using (writer.PushSequence())
        {
            foreach (var certificate in path)
            {
                using (writer.PushSequence())
                    writer.WriteOctetString(SHA256.HashData(certificate.RawData));
            }
        }
    }

    private static byte[] Attribute(string oid, Action<AsnWriter> write)
    {
        var writer = new AsnWriter(AsnEncodingRules.DER);
        using (writer.PushSequence())
        {
            writer.WriteObjectIdentifier(oid);
            using (writer.PushSetOf())
                write(writer);
        }
        return writer.Encode();
    }
}

using System.Formats.Asn1;
using System.Security.Cryptography.X509Certificates;

namespace ExamDocs.Documents.Signing;

/// <summary>
/// Signed data (RFC 5652, section 5) in one form: for the same parts there is one row of bytes. A signature covers only its
/// signed attributes; because everything around them follows from the parts, a change of any other byte shows as well.
/// </summary>
/// <param name="ContentType">What is signed: plain data, or a timestamp.</param>
/// <param name="Content">The content; null where it lies outside.</param>
/// <param name="Digest">Hash of content and signature.</param>
/// <param name="Path">The signer's certificate first, then those above it.</param>
/// <param name="SignedAttributes">One DER encoding each, in any order.</param>
/// <param name="Signature">The signature's value.</param>
internal sealed record CmsForm(
    string ContentType,
    byte[]? Content,
    SignatureDigest Digest,
    IReadOnlyList<X509Certificate2> Path,
    IReadOnlyList<byte[]> SignedAttributes,
    byte[] Signature
)
{
    public const string Data = "1.2.840.113549.1.7.1";
    private const string SignedData = "1.2.840.113549.1.7.2";
    private const string RsaEncryption = "1.2.840.113549.1.1.1";

    private static readonly Asn1Tag Zero = new(TagClass.ContextSpecific, 0);
    private static readonly Asn1Tag One = new(TagClass.ContextSpecific, 1);

    /// <summary>Signed data that vouch for when the signature was there; null for none.</summary>
    public byte[]? Timestamp { get; init; }

    /// <exception cref="System.Security.Cryptography.CryptographicException">A part has no place in this form.</exception>
    public byte[] Bytes()
    {
        var writer = new AsnWriter(AsnEncodingRules.DER);
        using (writer.PushSequence())
        {
            writer.WriteObjectIdentifier(SignedData);
            using (writer.PushSequence(Zero))
            using (writer.PushSequence())
                WriteSignedData(writer);
        }
        return writer.Encode();
    }

    private void WriteSignedData(AsnWriter writer)
    {
        writer.WriteInteger(string.Equals(ContentType, Data, StringComparison.Ordinal) ? 1 : 3);
        using (writer.PushSetOf())
            WriteAlgorithm(writer, Digest.Oid);
        using (writer.PushSequence())
        {
            writer.WriteObjectIdentifier(ContentType);
            if (Content is not null)
            {
                using (writer.PushSequence(Zero))
                    writer.WriteOctetString(Content);
            }
        }
        using (writer.PushSetOf(Zero))
        {
            foreach (var certificate in Path)
                writer.WriteEncodedValue(certificate.RawData);
        }
        using (writer.PushSetOf())
        using (writer.PushSequence())
            WriteSigner(writer);
    }

    private void WriteSigner(AsnWriter writer)
    {
        writer.WriteInteger(1);
        using (writer.PushSequence())
        {
            writer.WriteEncodedValue(Path[0].IssuerName.RawData);
            writer.WriteInteger(Path[0].SerialNumberBytes.Span);
        }
        WriteAlgorithm(writer, Digest.Oid);
        using (writer.PushSetOf(Zero))
            WriteEach(writer, SignedAttributes);
        if (Path[0].GetKeyAlgorithm() is RsaEncryption)
            WriteAlgorithm(writer, RsaEncryption, isNullSaid: true);
        else
            WriteAlgorithm(writer, Digest.EcdsaOid);
        writer.WriteOctetString(Signature);
        if (Timestamp is not null)
        {
            using (writer.PushSetOf(One))
                writer.WriteEncodedValue(CmsAttribute.Timestamp(Timestamp));
        }
    }

    // Hash functions and ECDSA go without parameters, RSA has an empty one (RFC 5754, sections 2 and 3).
    private static void WriteAlgorithm(AsnWriter writer, string oid, bool isNullSaid = false)
    {
        using (writer.PushSequence())
        {
            writer.WriteObjectIdentifier(oid);
            if (isNullSaid)
                writer.WriteNull();
        }
    }

    /// <summary>What is signed: the attributes as a set (RFC 5652, 5.4).</summary>
    public static byte[] ToBeSigned(IReadOnlyList<byte[]> attributes)
    {
        var writer = new AsnWriter(AsnEncodingRules.DER);
        using (writer.PushSetOf())
            WriteEach(writer, attributes);
        return writer.Encode();
    }

    private static void WriteEach(AsnWriter writer, IReadOnlyList<byte[]> values)
    {
        foreach (var value in values)
            writer.WriteEncodedValue(value);
    }
}

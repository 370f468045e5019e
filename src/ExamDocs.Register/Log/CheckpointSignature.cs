using System.Formats.Asn1;
using System.Security.Cryptography;
using System.Security.Cryptography.Pkcs;
using System.Security.Cryptography.X509Certificates;
using System.Text;

namespace ExamDocs.Register.Log;

/// <summary>A detached CMS signature (RFC 5652) over the octets of a checkpoint's body.</summary>
internal static class CheckpointSignature
{
    private const string Sha256 = "2.16.840.1.101.3.4.2.1";

    private static readonly string[] SoundDigests = [Sha256, "2.16.840.1.101.3.4.2.2", "2.16.840.1.101.3.4.2.3"];

    public static byte[] Sign(string body, X509Certificate2 signer)
    {
        var cms = new SignedCms(Content(body), detached: true);
        // More than the signer's own certificate would have a chain built, and missing ones fetched.
        cms.ComputeSignature(
            new CmsSigner(SubjectIdentifierType.IssuerAndSerialNumber, signer)
            {
                DigestAlgorithm = new Oid(Sha256),
                IncludeOption = X509IncludeOption.EndCertOnly,
            }
        );
        return cms.Encode();
    }

    /// <returns>The one certificate whose key signed exactly this body; null where that is not shown.</returns>
    public static X509Certificate2? SignerOf(string body, byte[] signature)
    {
        try
        {
            var cms = new SignedCms(Content(body), detached: true);
            cms.Decode(signature);
            if (cms.SignerInfos.Count != 1 || !SoundDigests.Contains(cms.SignerInfos[0].DigestAlgorithm.Value, StringComparer.Ordinal))
                return null;
            // The chain is not asked here: that would reach the network, and trust is the caller's.
            cms.CheckSignature(verifySignatureOnly: true);
            return cms.SignerInfos[0].Certificate;
        }
        catch (Exception broken)
            when (broken
                    is CryptographicException
                        or AsnContentException
                        or ArgumentException
                        or InvalidOperationException
                        or FormatException
                        or NotSupportedException
                        or OverflowException
            )
        {
            return null;
        }
    }

    private static ContentInfo Content(string body) => new(Encoding.ASCII.GetBytes(body));
}

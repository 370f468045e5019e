using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace ExamDocs.Documents.Signing;

/// <summary>A private key with its certificate and those that vouch for it.</summary>
public sealed class SigningKey
{
    private readonly AsymmetricAlgorithm _key;

    internal SigningKey(AsymmetricAlgorithm key, IReadOnlyList<X509Certificate2> path) => (_key, Path) = (key, path);

    /// <summary>Whose it is: the common name in the certificate.</summary>
    public string Name => CertificateFacts.Name(Path[0]);

    /// <summary>Who issued the certificate.</summary>
    public string Issuer => CertificateFacts.Issuer(Path[0]);

    /// <summary>Hexadecimal, capital digits.</summary>
    public string SerialNumber => Path[0].SerialNumber;

    /// <summary>SHA-256 of the certificate, 64 capital hexadecimal digits.</summary>
    public string Fingerprint => CertificateFacts.Fingerprint(Path[0]);

    /// <summary>The certificate together with the key, for what else is to be signed with it.</summary>
    public X509Certificate2 Certificate =>
        Path[0].HasPrivateKey
            ? Path[0]
            : _key switch
            {
                RSA rsa => Path[0].CopyWithPrivateKey(rsa),
                ECDsa curve => Path[0].CopyWithPrivateKey(curve),
                _ => throw new NotSupportedException("the key is neither RSA nor ECDSA"),
            };

    /// <summary>Its certificate first, then those above it.</summary>
    internal IReadOnlyList<X509Certificate2> Path { get; }

    /// <summary>As strong as the key is (NIST SP 800-57 part 1, table 3): the curve's own size, SHA-256 for RSA.</summary>
    internal SignatureDigest Digest =>
        _key is ECDsa curve
            ? curve.KeySize switch
            {
                > 384 => SignatureDigest.Sha512,
                > 256 => SignatureDigest.Sha384,
                _ => SignatureDigest.Sha256,
            }
            : SignatureDigest.Sha256;

    /// <summary>The most that a signature can take, bytes: an ECDSA signature is two numbers with up to nine bytes around them.</summary>
    internal int LongestSignature => _key is ECDsa ? (2 * ((_key.KeySize + 7) / 8)) + 9 : (_key.KeySize + 7) / 8;

    internal byte[] Sign(byte[] data) =>
        _key switch
        {
            RSA rsa => rsa.SignData(data, Digest.Name, RSASignaturePadding.Pkcs1),
            ECDsa curve => curve.SignData(data, Digest.Name, DSASignatureFormat.Rfc3279DerSequence),
            _ => throw new NotSupportedException("the key is neither RSA nor ECDSA"),
        };

    /// <summary>Whether the certificate is about this key: what the one signs, the other must accept.</summary>
    internal bool IsOf(X509Certificate2 certificate)
    {
        var probe = "ExamDocs"u8.ToArray();
        if (_key is RSA)
        {
            using var rsa = certificate.GetRSAPublicKey();
            return rsa is not null && rsa.VerifyData(probe, Sign(probe), Digest.Name, RSASignaturePadding.Pkcs1);
        }
        using var curve = certificate.GetECDsaPublicKey();
        return curve is not null && curve.VerifyData(probe, Sign(probe), Digest.Name, DSASignatureFormat.Rfc3279DerSequence);
    }
}

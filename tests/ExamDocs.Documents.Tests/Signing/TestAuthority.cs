using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using ExamDocs.Documents.Signing;
using NodaTime;

namespace ExamDocs.Documents.Tests.Signing;

/// <summary>A root, an authority under it, and whoever it makes certificates for; all made anew in each run.</summary>
internal sealed class TestAuthority
{
    public static readonly Instant Now = Instant.FromUtc(2026, 5, 12, 9, 30);

    private readonly X509Certificate2 _root = Root();
    private readonly X509Certificate2 _middle;

    public TestAuthority() =>
        _middle = Issued(
            "CN=Invented Signing Authority",
            ECDsa.Create(ECCurve.NamedCurves.nistP256),
            _root,
            r => r.CertificateExtensions.Add(new X509BasicConstraintsExtension(true, true, 0, true)),
            Certificates.From + Duration.FromDays(1),
            Certificates.Until - Duration.FromDays(1)
        );

    public static TestAuthority One { get; } = new();

    public string RootPem => _root.ExportCertificatePem();

    public string MiddlePem => _middle.ExportCertificatePem();

    public SignatureTrust Trust => SignatureTrust.FromPem(RootPem)!;

    /// <summary>A certificate with its key.</summary>
    public X509Certificate2 Certificate(
        string name = "Ada Invented",
        AsymmetricAlgorithm? key = null,
        X509KeyUsageFlags? usage = X509KeyUsageFlags.NonRepudiation,
        Instant? from = null,
        Instant? until = null,
        params string[] purposes
    ) =>
        Issued(
            $"CN={name}, O=Invented Examinations",
            key ?? ECDsa.Create(ECCurve.NamedCurves.nistP256),
            _middle,
            r =>
            {
                if (usage is { } flags)
                    r.CertificateExtensions.Add(new X509KeyUsageExtension(flags, true));
                if (purposes.Length > 0)
                    r.CertificateExtensions.Add(new X509EnhancedKeyUsageExtension([.. purposes.Select(p => new Oid(p))], critical: false));
            },
            from ?? Instant.FromUtc(2025, 1, 1, 0, 0),
            until ?? Instant.FromUtc(2028, 1, 1, 0, 0)
        );

    /// <summary>A certificate for the one purpose that a timestamp server's must have (RFC 3161, 2.3).</summary>
    public X509Certificate2 TimestampCertificate(AsymmetricAlgorithm? key = null, bool isUnderRoot = true) =>
        Issued(
            "CN=Invented Clock",
            key ?? ECDsa.Create(ECCurve.NamedCurves.nistP256),
            isUnderRoot ? _root : _middle,
            r =>
            {
                r.CertificateExtensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.DigitalSignature, true));
                r.CertificateExtensions.Add(new X509EnhancedKeyUsageExtension([new Oid("1.3.6.1.5.5.7.3.8")], critical: true));
            },
            Instant.FromUtc(2025, 1, 1, 0, 0),
            Instant.FromUtc(2035, 1, 1, 0, 0)
        );

    /// <summary>PKCS#12 with the whole chain.</summary>
    public byte[] Pkcs12(X509Certificate2 certificate, string? password) =>
        new X509Certificate2Collection { certificate, Certificates.Public(_middle), Certificates.Public(_root) }.Export(
            X509ContentType.Pkcs12,
            password
        )!;

    public SigningKey Key(X509Certificate2? certificate = null)
    {
        var read = SigningKeyFile.Read(Pkcs12(certificate ?? Certificate(), null), null, Now);
        return read.Key ?? throw new InvalidOperationException(read.Fault);
    }

    private static X509Certificate2 Root()
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest("CN=Invented Root", key, HashAlgorithmName.SHA256);
        request.CertificateExtensions.Add(new X509BasicConstraintsExtension(true, false, 0, true));
        return request.CreateSelfSigned(Certificates.From.ToDateTimeOffset(), Certificates.Until.ToDateTimeOffset());
    }

    private static X509Certificate2 Issued(
        string subject,
        AsymmetricAlgorithm key,
        X509Certificate2 by,
        Action<CertificateRequest> extend,
        Instant from,
        Instant until
    )
    {
        var request = key is RSA rsa
            ? new CertificateRequest(subject, rsa, HashAlgorithmName.SHA256, RSASignaturePadding.Pkcs1)
            : new CertificateRequest(subject, (ECDsa)key, HashAlgorithmName.SHA256);
        extend(request);
        var serial = RandomNumberGenerator.GetBytes(8);
        serial[0] &= 0x7F;
        serial[0] |= 0x40;
        using var issuer = by.GetECDsaPrivateKey()!;
        var issued = request.Create(
            by.SubjectName,
            X509SignatureGenerator.CreateForECDsa(issuer),
            from.ToDateTimeOffset(),
            until.ToDateTimeOffset(),
            serial
        );
        return key is RSA own ? issued.CopyWithPrivateKey(own) : issued.CopyWithPrivateKey((ECDsa)key);
    }
}

internal static class Certificates
{
    public static readonly Instant From = Instant.FromUtc(2020, 1, 1, 0, 0);
    public static readonly Instant Until = Instant.FromUtc(2045, 1, 1, 0, 0);

    public static X509Certificate2 Public(X509Certificate2 certificate) => X509CertificateLoader.LoadCertificate(certificate.RawData);
}

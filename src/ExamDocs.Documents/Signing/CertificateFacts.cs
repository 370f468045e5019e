using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using NodaTime;

namespace ExamDocs.Documents.Signing;

/// <summary>What a certificate says, in the form in which people read it.</summary>
internal static class CertificateFacts
{
    /// <summary>The common name; the whole subject where it has none.</summary>
    public static string Name(X509Certificate2 certificate) => CommonName(certificate.SubjectName);

    /// <inheritdoc cref="Name"/>
    public static string Issuer(X509Certificate2 certificate) => CommonName(certificate.IssuerName);

    public static string Fingerprint(X509Certificate2 certificate) => Convert.ToHexString(SHA256.HashData(certificate.RawData));

    public static bool IsSelfSigned(X509Certificate2 certificate) =>
        certificate.SubjectName.RawData.AsSpan().SequenceEqual(certificate.IssuerName.RawData);

    /// <summary>First instant at which it is valid, inclusive.</summary>
    public static Instant From(X509Certificate2 certificate) => Instant.FromDateTimeUtc(certificate.NotBefore.ToUniversalTime());

    /// <summary>Last instant at which it is valid, inclusive (RFC 5280, 4.1.2.5).</summary>
    public static Instant Until(X509Certificate2 certificate) => Instant.FromDateTimeUtc(certificate.NotAfter.ToUniversalTime());

    /// <summary>
    /// Whether it may sign documents: where it names what its key is for, one of the two must be among it (RFC 5280, 4.2.1.3).
    /// </summary>
    public static bool MaySign(X509Certificate2 certificate)
    {
        var usage = certificate.Extensions.OfType<X509KeyUsageExtension>().FirstOrDefault();
        return usage is null
            || (usage.KeyUsages & (X509KeyUsageFlags.DigitalSignature | X509KeyUsageFlags.NonRepudiation)) != X509KeyUsageFlags.None;
    }

    /// <summary>
    /// Purposes by which a certificate is one for signing documents: document signing (RFC 9336), S/MIME, which the certificates
    /// that persons get for signing name most often (RFC 5280, 4.2.1.12), and the two that makers of viewers and of
    /// operating systems use for the same (from memory).
    /// </summary>
    private static readonly string[] SignsDocuments =
    [
        "1.3.6.1.5.5.7.3.36",
        "1.3.6.1.5.5.7.3.4",
        "1.2.840.113583.1.1.5",
        "1.3.6.1.4.1.311.10.3.12",
    ];

    /// <summary>
    /// Whether an authority issued it for signing documents. Whoever issues certificates for web servers asks who owns a name on
    /// the network, not who a person is: a certificate that names purposes, and none of these, is not accepted.
    /// </summary>
    public static bool IsForDocuments(X509Certificate2 certificate) =>
        MaySign(certificate)
        && (
            certificate.Extensions.OfType<X509EnhancedKeyUsageExtension>().FirstOrDefault() is not { } purposes
            || purposes.EnhancedKeyUsages.Cast<Oid>().Any(o => SignsDocuments.Contains(o.Value, StringComparer.Ordinal))
        );

    /// <summary>Whether it may issue certificates (RFC 5280, 4.2.1.9).</summary>
    public static bool IsAuthority(X509Certificate2 certificate) =>
        certificate.Extensions.OfType<X509BasicConstraintsExtension>().FirstOrDefault() is { CertificateAuthority: true };

    /// <summary>The certificate and those above it that are among the others, each before the one that issued it.</summary>
    public static IReadOnlyList<X509Certificate2> Path(X509Certificate2 leaf, IEnumerable<X509Certificate2> others)
    {
        var left = others
            .Where(o => !o.RawData.AsSpan().SequenceEqual(leaf.RawData))
            .DistinctBy(o => o.Thumbprint, StringComparer.Ordinal)
            .ToList();
        var path = new List<X509Certificate2> { leaf };
        while (
            !IsSelfSigned(path[^1])
            && left.Find(o => o.SubjectName.RawData.AsSpan().SequenceEqual(path[^1].IssuerName.RawData)) is { } above
        )
        {
            path.Add(above);
            left.Remove(above);
        }
        return path;
    }

    private static string CommonName(X500DistinguishedName name)
    {
        try
        {
            var parts = name.EnumerateRelativeDistinguishedNames().Where(r => !r.HasMultipleElements).ToList();
            return parts
                .Find(r => string.Equals(r.GetSingleElementType().Value, "2.5.4.3", StringComparison.Ordinal))
                ?.GetSingleElementValue()
                ?? name.Name;
        }
        catch (CryptographicException)
        {
            return name.Name;
        }
    }
}

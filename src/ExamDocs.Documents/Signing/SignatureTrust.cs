using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using NodaTime;

namespace ExamDocs.Documents.Signing;

/// <summary>
/// The certificates of issuers that are known here. A signature is trusted by the very certificate named, or by one that a
/// named authority issued for signing documents; what the computer trusts for the web counts for nothing.
/// </summary>
public sealed class SignatureTrust
{
    /// <summary>A file with more is a store of roots, as web browsers have: whoever is in it, nobody chose. Our own bound.</summary>
    public const int MostCertificates = 10;

    private readonly X509Certificate2Collection _named;

    private SignatureTrust(X509Certificate2Collection named) => _named = named;

    public static SignatureTrust InNobody { get; } = new([]);

    /// <summary>True where there are more certificates than anybody names by hand.</summary>
    public bool IsStore => _named.Count > MostCertificates;

    /// <param name="pem">The issuers' certificates in PEM; these alone are trusted.</param>
    /// <returns>Null where it holds none.</returns>
    public static SignatureTrust? FromPem(string pem)
    {
        var named = new X509Certificate2Collection();
        try
        {
            named.ImportFromPem(pem);
        }
        catch (CryptographicException)
        {
            return null;
        }
        return named.Count > 0 ? new SignatureTrust(named) : null;
    }

    /// <summary>Whether this very certificate was named.</summary>
    internal bool Names(X509Certificate2 certificate) => _named.Any(n => n.RawData.AsSpan().SequenceEqual(certificate.RawData));

    /// <summary>Nothing is fetched from the network, and nobody is asked whether a certificate was revoked.</summary>
    /// <param name="leaf">The certificate in question.</param>
    /// <param name="others">Those between it and the anchor.</param>
    /// <param name="at">The time at which all of them must be valid.</param>
    /// <returns>The certificate named that it goes back to, itself included; null where it goes back to none.</returns>
    internal X509Certificate2? AnchorOf(X509Certificate2 leaf, IEnumerable<X509Certificate2> others, Instant at)
    {
        if (Names(leaf))
            return leaf;
        using var chain = new X509Chain();
        var policy = chain.ChainPolicy;
        policy.RevocationMode = X509RevocationMode.NoCheck;
        policy.DisableCertificateDownloads = true;
        policy.VerificationTime = at.ToDateTimeUtc();
        policy.ExtraStore.AddRange(others.ToArray());
        var authorities = _named.Where(CertificateFacts.IsAuthority).ToArray();
        policy.TrustMode = X509ChainTrustMode.CustomRootTrust;
        policy.CustomTrustStore.AddRange(authorities);
        policy.ExtraStore.AddRange(authorities);
        // An authority that is named need not be a root: the way up ends at it.
        policy.VerificationFlags = X509VerificationFlags.AllowUnknownCertificateAuthority;
        return chain.Build(leaf)
            ? chain.ChainElements.Skip(1).Select(e => e.Certificate).FirstOrDefault(c => CertificateFacts.IsAuthority(c) && Names(c))
            : null;
    }
}

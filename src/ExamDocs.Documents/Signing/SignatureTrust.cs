using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using NodaTime;

namespace ExamDocs.Documents.Signing;

/// <summary>The certificates that a signature must go back to in order to be trusted.</summary>
public sealed class SignatureTrust
{
    private readonly X509Certificate2Collection? _anchors;

    private SignatureTrust(X509Certificate2Collection? anchors) => _anchors = anchors;

    /// <summary>Those that the operating system trusts.</summary>
    public static SignatureTrust OfTheSystem { get; } = new(null);

    /// <param name="pem">Root certificates in PEM; these alone are trusted then.</param>
    /// <returns>Null where it holds none.</returns>
    public static SignatureTrust? FromPem(string pem)
    {
        var anchors = new X509Certificate2Collection();
        try
        {
            anchors.ImportFromPem(pem);
        }
        catch (CryptographicException)
        {
            return null;
        }
        return anchors.Count > 0 ? new SignatureTrust(anchors) : null;
    }

    /// <summary>Nothing is fetched from the network, and nobody is asked whether a certificate was revoked.</summary>
    /// <param name="leaf">The certificate in question.</param>
    /// <param name="others">Those between it and the anchor.</param>
    /// <param name="at">The time at which all of them must be valid.</param>
    /// <returns>The anchor; null where it goes back to none.</returns>
    internal X509Certificate2? AnchorOf(X509Certificate2 leaf, IEnumerable<X509Certificate2> others, Instant at)
    {
        using var chain = new X509Chain();
        var policy = chain.ChainPolicy;
        policy.RevocationMode = X509RevocationMode.NoCheck;
        policy.DisableCertificateDownloads = true;
        policy.VerificationTime = at.ToDateTimeUtc();
        policy.ExtraStore.AddRange(others.ToArray());
        if (_anchors is not null)
        {
            policy.TrustMode = X509ChainTrustMode.CustomRootTrust;
            policy.CustomTrustStore.AddRange(_anchors);
        }
        return chain.Build(leaf) ? chain.ChainElements[^1].Certificate : null;
    }
}

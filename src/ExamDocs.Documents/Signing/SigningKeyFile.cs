using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using System.Text;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.Documents.Signing;

/// <summary>A signing key, or why it cannot be used.</summary>
/// <param name="Key">Null where there is a fault.</param>
/// <param name="Fault">One sentence; null where there is none.</param>
public sealed record SigningKeyRead(SigningKey? Key, string? Fault);

/// <summary>Reads a signing key from PKCS#12 (RFC 7292) or PEM (RFC 7468), and refuses what nobody should sign with.</summary>
public static class SigningKeyFile
{
    /// <summary>Bits, inclusive: from this on RSA counts as strong enough (NIST SP 800-131A, table 2).</summary>
    private const int LeastRsaBits = 2048;

    /// <param name="file">The whole file.</param>
    /// <param name="password">Null for none.</param>
    /// <param name="now">When it is to sign.</param>
    public static SigningKeyRead Read(byte[] file, string? password, Instant now)
    {
        try
        {
            var (keys, certificates) = IsPem(file) ? PemKey.Read(Encoding.UTF8.GetString(file), password) : Pkcs12Key.Read(file, password);
            return keys.Count == 1
                ? With(keys[0], certificates, now)
                : Refused(
                    keys.Count == 0
                        ? "it holds no private key"
                        : "it holds several private keys; keep the one to sign with in a file of its own"
                );
        }
        catch (WrongPasswordException e)
        {
            return Refused(e.Message);
        }
        catch (Exception e) when (e is CryptographicException or ArgumentException or NotSupportedException)
        {
            return Refused($"it is neither PKCS#12 nor PEM, or is damaged ({e.Message.TrimEnd('.')})");
        }
    }

    private static bool IsPem(byte[] file) => file.AsSpan().IndexOf("-----BEGIN "u8) >= 0;

    private static SigningKeyRead With(AsymmetricAlgorithm secret, X509Certificate2Collection certificates, Instant now)
    {
        if (ObjectionTo(secret) is { } weak)
            return Refused(weak);
        var probe = new SigningKey(secret, []);
        if (certificates.Count == 0)
            return Refused("it holds no certificate");
        if (certificates.FirstOrDefault(probe.IsOf) is not { } own)
            return Refused("its private key does not belong to any certificate in it");
        return ObjectionTo(own, now) is { } objection
            ? Refused(objection)
            : new SigningKeyRead(new SigningKey(secret, WithoutRoot(CertificateFacts.Path(own, certificates))), null);
    }

    private static string? ObjectionTo(AsymmetricAlgorithm secret) =>
        secret switch
        {
            RSA { KeySize: < LeastRsaBits } => string.Create(
                System.Globalization.CultureInfo.InvariantCulture,
                $"its RSA key has {secret.KeySize} bits; sign with one of at least {LeastRsaBits}"
            ),
            ECDsa curve
                when curve.ExportParameters(includePrivateParameters: false).Curve
                    is not { IsNamed: true, Oid.Value: "1.2.840.10045.3.1.7" or "1.3.132.0.34" or "1.3.132.0.35" } =>
                "its key is on a curve that is not known here; sign with RSA or with ECDSA on P-256, P-384 or P-521",
            _ => null,
        };

    private static string? ObjectionTo(X509Certificate2 certificate, Instant now)
    {
        var (from, until, name) = (
            CertificateFacts.From(certificate),
            CertificateFacts.Until(certificate),
            CertificateFacts.Name(certificate)
        );
        if (now < from)
            return $"the certificate of {name} is not valid before {InstantPattern.General.Format(from)}";
        if (now > until)
            return $"the certificate of {name} ran out on {InstantPattern.General.Format(until)}";
        if (!CertificateFacts.MaySign(certificate))
            return $"the certificate of {name} is not made for signing: its key usage has neither digitalSignature nor nonRepudiation";
        // It is printed: a sign that turns the direction of writing would let one name pass for another.
        return (name + CertificateFacts.Issuer(certificate)).EnumerateRunes().Any(IsUnseen)
            ? "its certificate has a name with characters that cannot be seen"
            : null;
    }

    private static bool IsUnseen(Rune rune) =>
        Rune.GetUnicodeCategory(rune)
            is System.Globalization.UnicodeCategory.Control
                or System.Globalization.UnicodeCategory.Format
                or System.Globalization.UnicodeCategory.LineSeparator
                or System.Globalization.UnicodeCategory.ParagraphSeparator;

    /// <summary>Who checks must have the root from elsewhere; one that comes along proves nothing.</summary>
    private static IReadOnlyList<X509Certificate2> WithoutRoot(IReadOnlyList<X509Certificate2> path) =>
        path.Count > 1 && CertificateFacts.IsSelfSigned(path[^1]) ? [.. path.SkipLast(1)] : path;

    private static SigningKeyRead Refused(string why) => new(null, why);
}

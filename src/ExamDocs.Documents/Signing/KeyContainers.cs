using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace ExamDocs.Documents.Signing;

/// <summary>The file is locked, and not with the password given.</summary>
internal sealed class WrongPasswordException(string? password)
    : Exception(password is null ? "it is locked, and no password was given" : "the password does not open it");

/// <summary>Keys and certificates of a PKCS#12 file (.p12, .pfx).</summary>
internal static class Pkcs12Key
{
    /// <summary>What the platform says where a password is wrong: ERROR_INVALID_PASSWORD.</summary>
    private const int InvalidPassword = unchecked((int)0x80070056);

    public static (IReadOnlyList<AsymmetricAlgorithm> Keys, X509Certificate2Collection Certificates) Read(byte[] file, string? password)
    {
        try
        {
            // In memory only; macOS alone cannot do that.
            var where = OperatingSystem.IsMacOS() ? X509KeyStorageFlags.DefaultKeySet : X509KeyStorageFlags.EphemeralKeySet;
            var certificates = X509CertificateLoader.LoadPkcs12Collection(file, password, where | X509KeyStorageFlags.Exportable);
            var keys = certificates
                .Where(c => c.HasPrivateKey)
                .Select(c =>
                    (AsymmetricAlgorithm?)c.GetRSAPrivateKey()
                    ?? c.GetECDsaPrivateKey()
                    ?? throw new NotSupportedException("the key is neither RSA nor ECDSA")
                );
            return ([.. keys], certificates);
        }
        catch (CryptographicException e) when (e.HResult == InvalidPassword)
        {
            throw new WrongPasswordException(password);
        }
    }
}

/// <summary>Keys and certificates of a PEM file, in any order.</summary>
internal static class PemKey
{
    public static (IReadOnlyList<AsymmetricAlgorithm> Keys, X509Certificate2Collection Certificates) Read(string text, string? password)
    {
        var certificates = new X509Certificate2Collection();
        certificates.ImportFromPem(text);
        var keys = new List<AsymmetricAlgorithm>();
        for (var rest = text.AsSpan(); PemEncoding.TryFind(rest, out var found); rest = rest[found.Location.End..])
        {
            if (rest[found.Label].EndsWith("PRIVATE KEY", StringComparison.Ordinal))
                keys.Add(Key(rest[found.Location], rest[found.Label].StartsWith("ENCRYPTED", StringComparison.Ordinal), password));
        }
        // The older way of locking a key is no PEM in the sense of RFC 7468 and is not found above.
        return keys.Count == 0 && text.Contains("Proc-Type: 4,ENCRYPTED", StringComparison.Ordinal)
            ? throw new NotSupportedException("its key is locked in an old way; write it again with openssl pkcs8 -topk8")
            : (keys, certificates);
    }

    private static AsymmetricAlgorithm Key(ReadOnlySpan<char> pem, bool isLocked, string? password)
    {
        if (isLocked && password is null)
            throw new WrongPasswordException(null);
        return TryImport(RSA.Create(), pem, isLocked, password)
            ?? TryImport(ECDsa.Create(), pem, isLocked, password)
            ?? (
                isLocked ? throw new WrongPasswordException(password) : throw new NotSupportedException("the key is neither RSA nor ECDSA")
            );
    }

    private static AsymmetricAlgorithm? TryImport(AsymmetricAlgorithm key, ReadOnlySpan<char> pem, bool isLocked, string? password)
    {
        try
        {
            if (isLocked)
                key.ImportFromEncryptedPem(pem, password);
            else
                key.ImportFromPem(pem);
            return key;
        }
        catch (Exception e) when (e is CryptographicException or ArgumentException)
        {
            key.Dispose();
            return null;
        }
    }
}

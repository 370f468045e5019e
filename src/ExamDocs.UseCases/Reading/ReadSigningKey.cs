using ExamDocs.Documents.Signing;
using NodaTime;

namespace ExamDocs.UseCases.Reading;

/// <summary>What the user signs with.</summary>
/// <param name="KeyFile">PKCS#12 or PEM.</param>
/// <param name="Password">The password of the file; null for none. It never comes from the command line, where others can read it.</param>
/// <param name="PasswordFile">A file whose first line is the password; it is used in place of <paramref name="Password"/>.</param>
/// <param name="TimestampServer">Address to ask for timestamps; null for none.</param>
public sealed record SigningRequest(string KeyFile, string? Password, string? PasswordFile, string? TimestampServer);

/// <summary>The signer, or why nobody can sign.</summary>
/// <param name="Signer">Null where there is a fault.</param>
/// <param name="Fault">One sentence; null where there is none.</param>
public sealed record SignerRead(DocumentSigner? Signer, string? Fault);

/// <summary>Opens the user's signing key.</summary>
public static class ReadSigningKey
{
    /// <summary>Largest key file in bytes, inclusive; our own limit: a key with a long chain needs a tenth of it.</summary>
    private const int MostBytes = 256 * 1024;

    /// <param name="request">Where the key is.</param>
    /// <param name="now">The time at which it signs.</param>
    public static SignerRead From(SigningRequest request, Instant now)
    {
        if (request.TimestampServer is { } address && TimestampServer.ObjectionTo(address) is { } objection)
            return new SignerRead(null, objection);
        if (!TryRead(request.KeyFile, out var file, out var fault))
            return new SignerRead(null, fault);
        var password = request.Password;
        if (request.PasswordFile is { } passwordFile)
        {
            if (!TryRead(passwordFile, out var secret, out fault))
                return new SignerRead(null, fault);
            using var lines = new StreamReader(new MemoryStream(secret));
            password = lines.ReadLine() ?? "";
        }
        var read = SigningKeyFile.Read(file, password, now);
        return read.Key is { } key ? new SignerRead(With(key, request), null) : new SignerRead(null, $"{request.KeyFile}: {read.Fault}");
    }

    private static DocumentSigner With(SigningKey key, SigningRequest request) =>
        new(key, request.TimestampServer is { } address ? new TimestampServer(new Uri(address), TimestampServer.NewClient()) : null);

    private static bool TryRead(string path, out byte[] bytes, out string? fault)
    {
        (bytes, fault) = ([], null);
        try
        {
            if (new FileInfo(path) is { Exists: true, Length: > MostBytes })
                fault = $"{path}: the file is larger than 256 KiB and holds no key";
            else
                bytes = File.ReadAllBytes(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            fault = e is FileNotFoundException or DirectoryNotFoundException
                ? $"{path}: there is no such file"
                : $"{path}: the file cannot be opened: {e.Message}";
        }
        return fault is null;
    }
}

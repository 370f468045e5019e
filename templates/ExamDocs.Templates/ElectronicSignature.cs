namespace ExamDocs.Templates;

/// <summary>What a document says of the electronic signature that it is about to get.</summary>
/// <param name="Name">Common name in the certificate.</param>
/// <param name="Issuer">Common name of who issued it.</param>
/// <param name="SerialNumber">Of the certificate; hexadecimal.</param>
/// <param name="Fingerprint">SHA-256 of the certificate; hexadecimal.</param>
/// <param name="IsTimestamped">Whether a server vouches for when it was signed.</param>
public sealed record ElectronicSignature(string Name, string Issuer, string SerialNumber, string Fingerprint, bool IsTimestamped)
{
    private const int ShortDigits = 16;

    /// <summary>The first sixteen digits in groups of four: enough to compare by eye, not to prove anything.</summary>
    public string ShortFingerprint => string.Join(' ', Fingerprint.Chunk(4).Take(ShortDigits / 4).Select(g => new string(g)));
}

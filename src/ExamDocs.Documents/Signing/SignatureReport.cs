using NodaTime;

namespace ExamDocs.Documents.Signing;

/// <summary>What a file's electronic signature shows, and what it leaves open.</summary>
public sealed record SignatureReport
{
    /// <summary>Whether a signature is there at all, sound or not.</summary>
    public required bool IsSigned { get; init; }

    /// <summary>
    /// Whether the signature is valid and every byte of the file is as it was signed. False too where there is no signature.
    /// Says nothing of who signed: anybody can make a certificate in any name.
    /// </summary>
    public bool IsIntact { get; init; }

    /// <summary>Common name of the certificate signed with, as its issuer wrote it; null where none can be read.</summary>
    public string? SignedBy { get; init; }

    /// <summary>Common name of who issued that certificate.</summary>
    public string? Issuer { get; init; }

    /// <summary>Serial number of that certificate, hexadecimal.</summary>
    public string? SerialNumber { get; init; }

    /// <summary>SHA-256 of that certificate, hexadecimal, 64 capital digits.</summary>
    public string? Fingerprint { get; init; }

    /// <summary>
    /// Whether the certificate was named, or goes back to an authority that was and is for signing documents, and was valid at the time
    /// that counts.
    /// </summary>
    public bool IsTrusted { get; init; }

    /// <summary>Whether the certificate signed with is itself among those named.</summary>
    public bool IsNamed { get; init; }

    /// <summary>Common name of that anchor; null where it is not trusted.</summary>
    public string? TrustedBy { get; init; }

    /// <summary>
    /// By when it was signed, where a sound timestamp says so; null where there is none. Where the server that says so is not
    /// trusted, <see cref="NotChecked"/> says that.
    /// </summary>
    public Instant? TimestampedAt { get; init; }

    /// <summary>What is wrong, a sentence each; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults { get; init; } = [];

    /// <summary>What could not be checked, a sentence each. Never empty for a signed file: revocation is never asked for.</summary>
    public IReadOnlyList<string> NotChecked { get; init; } = [];

    internal static SignatureReport Unsigned { get; } = new() { IsSigned = false };

    internal static SignatureReport Broken(string fault) => new() { IsSigned = true, Faults = [fault] };
}

using ExamDocs.Core.Regimes;
using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.Signing;
using ExamDocs.UseCases.Reading;
using NodaTime;

namespace ExamDocs.UseCases.Verifying;

/// <summary>What the user wants verified, and what it is compared with.</summary>
public sealed record VerifyRequest
{
    public required IReadOnlyList<string> Files { get; init; }

    /// <summary>The register to ask, which must exist; null for none.</summary>
    public string? RegisterPath { get; init; }

    /// <summary>The certificates of the issuers that are known here.</summary>
    public SignatureTrust Trust { get; init; } = SignatureTrust.InNobody;

    /// <summary>The same with the certificates that were read.</summary>
    /// <param name="read">The certificates as read, without a fault.</param>
    public VerifyRequest Trusting(TrustRead read)
    {
        ArgumentNullException.ThrowIfNull(read);
        return this with { Trust = read.Trust ?? throw new ArgumentException(read.Fault, nameof(read)) };
    }

    /// <summary>The time at which it is asked.</summary>
    public required Instant Now { get; init; }

    /// <summary>The categories and regimes that records can name.</summary>
    public KnownRules Rules { get; init; } = KnownRules.BuiltIn;

    /// <summary>A browser that is open already and stays open, for a program that runs on; null to start one for this run.</summary>
    public Browser? Browser { get; init; }
}

using System.Text.RegularExpressions;
using NodaTime;

namespace ExamDocs.Templates;

/// <summary>What identifies one printed document.</summary>
public sealed partial record DocumentIdentity
{
    /// <param name="kind">A kind of <see cref="DocumentTypes"/>, for example report.</param>
    /// <param name="number">The kind's letter, year of issue and six digits, for example R-2026-000123.</param>
    /// <param name="issuedOn">Day of issue.</param>
    /// <param name="softwareVersion">Version of the software that printed it.</param>
    /// <exception cref="ArgumentException">The kind is unknown, or the number is not one of that kind.</exception>
    public DocumentIdentity(string kind, string number, LocalDate issuedOn, string softwareVersion)
    {
        var type = DocumentTypes.Find(kind) ?? throw new ArgumentException($"there is no document kind {kind}", nameof(kind));
        // The number goes into a style sheet (the page margins), where nothing else would escape it.
        if (!NumberPattern().IsMatch(number) || number[0] != type.Letter)
            throw new ArgumentException($"{number} is not a number of a {kind}", nameof(number));
        (Kind, Number, IssuedOn, SoftwareVersion) = (kind, number, issuedOn, softwareVersion);
    }

    public string Kind { get; }

    public string Number { get; }

    public LocalDate IssuedOn { get; }

    public string SoftwareVersion { get; }

    /// <summary>Null where the issuer has none.</summary>
    public Letterhead? Letterhead { get; init; }

    /// <summary>
    /// Numbers of the documents that it replaces, each with the reason as typed, null where none was; empty where it replaces
    /// nothing.
    /// </summary>
    public IReadOnlyList<(string Number, string? Reason)> Replaces { get; init; } = [];

    /// <summary>Number of the evidence file of the same items; null where none was issued.</summary>
    public string? EvidenceFile { get; init; }

    /// <summary>Null where the document is to be signed by hand.</summary>
    public ElectronicSignature? Signature { get; init; }

    [GeneratedRegex(@"\A[A-Z]-[0-9]{4}-[0-9]{6,9}\z", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex NumberPattern();
}

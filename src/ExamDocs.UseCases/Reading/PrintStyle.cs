using ExamDocs.Documents.Signing;
using ExamDocs.Templates;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.UseCases.Reading;

/// <summary>How documents are printed from now on; issued ones stay as they are.</summary>
public sealed record PrintStyle
{
    public Language Language { get; init; } = Language.English;

    /// <summary>The issuer's; null for none.</summary>
    public Letterhead? Letterhead { get; init; }

    /// <summary>Who signs electronically; null for nobody.</summary>
    public DocumentSigner? Signer { get; init; }

    /// <summary>Distance from which labels on kit that may not be used must be legible.</summary>
    public ReadingDistance Reading { get; init; } = ReadingDistance.Default;
}

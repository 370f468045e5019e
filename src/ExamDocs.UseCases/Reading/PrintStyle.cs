using ExamDocs.Documents.Signing;
using ExamDocs.Templates;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.UseCases.Reading;

/// <summary>How documents are printed that are issued now; those issued before stay as they are.</summary>
public sealed record PrintStyle
{
    public Language Language { get; init; } = Language.English;

    /// <summary>The issuer's; null for none.</summary>
    public Letterhead? Letterhead { get; init; }

    /// <summary>Who signs electronically; null for nobody.</summary>
    public DocumentSigner? Signer { get; init; }

    /// <summary>From how far labels for what may not be used are to be read.</summary>
    public ReadingDistance Reading { get; init; } = ReadingDistance.Default;
}

using ExamDocs.Core.Findings;
using ExamDocs.Core.Sentences.Messages;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.UseCases.Reading;

/// <summary>How the user wants documents printed, as typed.</summary>
public sealed record PrintStyleRequest
{
    /// <summary>One of <see cref="ReadPrintStyle.Languages"/>.</summary>
    public required string Language { get; init; }

    /// <summary>Null for no letterhead.</summary>
    public string? LetterheadFile { get; init; }

    /// <summary>Null where nobody signs electronically.</summary>
    public SigningRequest? Signing { get; init; }

    /// <summary>Distance from which labels on kit that may not be used must be legible, metres; null for the usual distance.</summary>
    public decimal? ReadFromMetres { get; init; }

    /// <summary>Z in h = l / Z, which gives the height of the prohibition sign; null for the usual one.</summary>
    public decimal? SignFactor { get; init; }
}

/// <summary>How documents are printed, or why they cannot be printed so.</summary>
/// <param name="Style">Null where any part of it has a fault.</param>
/// <param name="Faults">A sentence each.</param>
public sealed record PrintStyleRead(PrintStyle? Style, IReadOnlyList<string> Faults);

/// <summary>Reads the letterhead and the signing key, and takes the language and the distance from what was typed.</summary>
public static class ReadPrintStyle
{
    /// <summary>Tags of the languages, the usual one first.</summary>
    public static IReadOnlyList<string> Languages { get; } = [.. Language.All.Select(l => l.Tag)];

    /// <summary>Messages in the language with this tag, exactly as spelt; null where there is none.</summary>
    public static MessageLanguage? Screen(string tag) =>
        TranslatedMessages.AndEnglish.FirstOrDefault(l => string.Equals(l.Tag, tag, StringComparison.Ordinal));

    /// <summary>Why labels cannot be made legible from that distance, in one sentence without a full stop; null where they can.</summary>
    /// <param name="metres">As <see cref="PrintStyleRequest.ReadFromMetres"/>.</param>
    /// <param name="signFactor">As <see cref="PrintStyleRequest.SignFactor"/>.</param>
    public static string? ObjectionToReading(decimal? metres, decimal? signFactor) =>
        ReadingDistance.Objection(metres ?? ReadingDistance.Default.Metres, signFactor ?? ReadingDistance.Default.SignFactor);

    /// <param name="request">The request; its language and distance must be checked already.</param>
    /// <param name="now">The time at which documents are signed.</param>
    public static PrintStyleRead From(PrintStyleRequest request, Instant now)
    {
        var letterhead = request.LetterheadFile is { } file ? ReadLetterhead.From(file) : null;
        if (letterhead is { Letterhead: null })
            return new(null, letterhead.Faults);
        var signer = request.Signing is { } signing ? ReadSigningKey.From(signing, now) : null;
        if (signer?.Fault is { } fault)
            return new(null, [fault]);
        var style = new PrintStyle
        {
            Language = Language.Find(request.Language)
                ?? throw new ArgumentException($"There is no language {request.Language}.", nameof(request)),
            Letterhead = letterhead?.Letterhead,
            Signer = signer?.Signer,
            Reading = new(
                request.ReadFromMetres ?? ReadingDistance.Default.Metres,
                request.SignFactor ?? ReadingDistance.Default.SignFactor
            ),
        };
        return new(style, []);
    }
}

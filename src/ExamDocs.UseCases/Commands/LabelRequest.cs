using ExamDocs.Core.Regimes;
using ExamDocs.Documents.LabelSheets;
using ExamDocs.Documents.Signing;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>What the user asks of a sheet of labels.</summary>
public sealed record LabelRequest
{
    /// <summary>Records, or numbers of labels already issued.</summary>
    public required IReadOnlyList<string> InputsOrNumbers { get; init; }

    /// <summary>The sheet to write; the single labels go beside it.</summary>
    public required string OutFile { get; init; }

    public required string RegisterPath { get; init; }

    /// <summary>What is printed on; null for the usual one of the kind.</summary>
    public LabelStock? Stock { get; init; }

    /// <summary>Labels of this kind; null for the kind of the stock, else of the first number, else quarantine-label.</summary>
    public string? Kind { get; init; }

    /// <summary>Where on the stock to begin.</summary>
    public Placing Placing { get; init; } = new();

    /// <summary>Solid black and white, for printers without colours and greys.</summary>
    public bool BlackOnly { get; init; }

    /// <summary>From how far labels for what may not be used are to be read.</summary>
    public ReadingDistance Reading { get; init; } = ReadingDistance.Default;

    /// <summary>Day of issue.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>The language of labels issued now; those issued before stay as they are.</summary>
    public Language Language { get; init; } = Language.English;

    /// <summary>Who signs electronically what is issued now; null for nobody.</summary>
    public DocumentSigner? Signer { get; init; }

    /// <summary>The categories and regimes that records can name.</summary>
    public KnownRules Rules { get; init; } = KnownRules.BuiltIn;
}

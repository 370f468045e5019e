using ExamDocs.Core.Records;
using ExamDocs.Templates;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.UseCases.Issuing;

/// <summary>
/// What a document rests on besides the record: with both, and the same version of the program, its outcome can be
/// determined and its pages composed once more, word for word.
/// </summary>
internal sealed record DocumentBasis
{
    public required string Number { get; init; }

    /// <summary>For example report.</summary>
    public required string Kind { get; init; }

    /// <summary>Ids of the items it is about, in the order of the record; empty text for one without an id.</summary>
    public required IReadOnlyList<string> Items { get; init; }

    public required LocalDate IssuedOn { get; init; }

    /// <summary>The day on which the outcome was determined.</summary>
    public required LocalDate AsOf { get; init; }

    public required Language Language { get; init; }

    /// <summary>Version of the program that determined and printed it.</summary>
    public required string Version { get; init; }

    /// <summary>Whether reports were asked for one by one.</summary>
    public bool PerItem { get; init; }

    /// <summary>A report that is not of one item asked for by itself.</summary>
    public bool IsReportOfSeveral => !PerItem && string.Equals(Kind, DocumentTypes.Report.Kind, StringComparison.Ordinal);

    /// <summary>From how far labels for what may not be used are to be read.</summary>
    public ReadingDistance Reading { get; init; } = ReadingDistance.Default;

    /// <summary>The issuer's, without the picture of its logo; null for none.</summary>
    public Letterhead? Letterhead { get; init; }

    /// <summary>Who signs it electronically, as printed; null where it is signed by hand.</summary>
    public ElectronicSignature? Signature { get; init; }

    /// <summary>The report that it is a copy of; null for what is no copy.</summary>
    public CopiedReport? CopyOf { get; init; }

    /// <summary>Number of the evidence file that it names; null where it names none.</summary>
    public string? Evidence { get; init; }

    /// <summary>Documents that it replaces, and why.</summary>
    public IReadOnlyList<ReplacedDocument> Replaces { get; init; } = [];

    /// <summary>The user's own rules that it was decided by, as <see cref="Issuing.OwnRules"/> names them.</summary>
    public IReadOnlyList<string> OwnRules { get; init; } = [];

    /// <summary>What was known of the visit's items from before.</summary>
    public History History { get; init; } = History.None;
}

/// <summary>A report of which the document is a copy for the enforcing authority.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Sha256">Of its file; lower-case hexadecimal.</param>
internal sealed record CopiedReport(string Number, string Sha256);

/// <summary>A document that another takes the place of.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Reason">Why, in the words of who issued the other; null where nobody said.</param>
internal sealed record ReplacedDocument(string Number, string? Reason);

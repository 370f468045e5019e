using ExamDocs.Core.Regimes;
using ExamDocs.Documents.Browsing;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>What the user asks to be issued.</summary>
public sealed record IssueRequest
{
    public required IReadOnlyList<string> Inputs { get; init; }

    /// <summary>Folder the files go to, as the user typed it; made where it is missing.</summary>
    public required string OutFolder { get; init; }

    public required string RegisterPath { get; init; }

    /// <summary>Day of issue.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>The categories and regimes that records can name.</summary>
    public KnownRules Rules { get; init; } = KnownRules.BuiltIn;

    /// <summary>How the documents are printed.</summary>
    public PrintStyle Style { get; init; } = new();

    /// <summary>One report for each item instead of a schedule of all.</summary>
    public bool PerItem { get; init; }

    /// <summary>Why an earlier version of the record is corrected, in words for the documents; null to say only that it was.</summary>
    public string? Reason { get; init; }

    /// <summary>How the files are named; null to name new ones by the document's number, and to leave others as they are.</summary>
    public FileNamePattern? Names { get; init; }

    /// <summary>Whom folders ready to send are made for.</summary>
    public IReadOnlyList<SendTo> For { get; init; } = [];

    /// <summary>Only documents of these kinds; empty for all that a visit calls for by itself.</summary>
    public IReadOnlyList<string> Only { get; init; } = [];

    /// <summary>Visits that are in memory already; null to read the inputs.</summary>
    internal IReadOnlyList<ReadVisits>? Read { get; init; }

    /// <summary>A browser that is open already and stays open, for a program that runs on; null to start one for this run.</summary>
    public Browser? Browser { get; init; }

    /// <summary>The register's workers print the pages instead: whatever else is done with them is done here.</summary>
    public bool ByWorkers { get; init; }

    /// <summary>Told how far it is; null for nobody.</summary>
    public Action<RunProgress>? Progress { get; init; }

    internal WantedDocuments Wanted => new(Style, PerItem, Only);
}

using ExamDocs.Core.Regimes;
using ExamDocs.Documents.Browsing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Commands;

/// <summary>What the user asks of check sheets for a first visit.</summary>
/// <param name="OutFile">The pile to print, as the user typed it.</param>
/// <param name="Items">Ids of the categories, each with how many items of it are expected; empty for one of every category.</param>
public sealed record FirstVisitRequest(string OutFile, IReadOnlyList<(string Category, int Count)> Items)
{
    /// <summary>What may be written over.</summary>
    public OutputGuard Outputs { get; init; } = OutputGuard.NewFilesOnly;

    /// <summary>How the sheets are printed.</summary>
    public PrintStyle Style { get; init; } = new();

    /// <summary>The categories there are.</summary>
    public KnownRules Rules { get; init; } = KnownRules.BuiltIn;

    /// <summary>A browser that is open already and stays open, for a program that runs on; null to start one for this run.</summary>
    public Browser? Browser { get; init; }
}

/// <summary>The pile that was printed, or why none was.</summary>
/// <param name="Pages">Pages of the pile.</param>
/// <param name="Refused">Why nothing was printed; null where it was.</param>
/// <param name="Failure">Why disk, browser or register stopped the run; null where nothing did.</param>
public sealed record FirstVisitResult(int Pages, string? Refused, string? Failure);

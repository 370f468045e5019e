using ExamDocs.Core.Regimes;
using ExamDocs.Documents.Browsing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>What the user asks of check sheets.</summary>
public sealed record CheckSheetRequest
{
    /// <summary>The record of the last visit.</summary>
    public required string From { get; init; }

    /// <summary>The pile to print, as the user typed it; the single sheets are kept in the register.</summary>
    public required string OutFile { get; init; }

    /// <summary>What may be written over.</summary>
    public OutputGuard Outputs { get; init; } = OutputGuard.NewFilesOnly;

    /// <summary>Ids of the categories; empty for every item.</summary>
    public IReadOnlyList<string> Categories { get; init; } = [];

    public required string RegisterPath { get; init; }

    /// <summary>How the sheets are printed.</summary>
    public PrintStyle Style { get; init; } = new();

    /// <summary>Day of issue.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>The categories and regimes that the record can name.</summary>
    public KnownRules Rules { get; init; } = KnownRules.BuiltIn;

    /// <summary>A browser that is open already and stays open, for a program that runs on; null to start one for this run.</summary>
    public Browser? Browser { get; init; }
}

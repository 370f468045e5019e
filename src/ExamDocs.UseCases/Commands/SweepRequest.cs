using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Documents.Browsing;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Reading;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>What the user asks of a sweep.</summary>
public sealed record SweepRequest
{
    public required SafetyNotice Notice { get; init; }

    public required string RegisterPath { get; init; }

    /// <summary>The day of the sweep.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>Folder the files go to, as the user typed it; made where it is missing.</summary>
    public required string OutFolder { get; init; }

    /// <summary>
    /// The competent person who takes the items out of use: the name at least. What is left out comes from the register, where it knows
    /// a person of this name.
    /// </summary>
    public required Person Examiner { get; init; }

    public KnownRules Rules { get; init; } = KnownRules.BuiltIn;

    public PrintStyle Style { get; init; } = new();

    /// <summary>As <see cref="IssueRequest.Browser"/>.</summary>
    public Browser? Browser { get; init; }

    /// <inheritdoc cref="IssueRequest.Progress"/>
    public Action<RunProgress>? Progress { get; init; }
}

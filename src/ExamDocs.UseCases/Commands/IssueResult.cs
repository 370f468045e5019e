using ExamDocs.Templates.Shared.Wording;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Commands;

/// <summary>What a run issued and refused.</summary>
/// <param name="Inputs">The inputs as checked.</param>
/// <param name="Documents">In the order issued; empty where an input is unreadable.</param>
/// <param name="Refused">Items for which a report or a certificate was refused.</param>
/// <param name="Remarks">Sentences about what an interrupted run had left, and about labels that are hard to read.</param>
/// <param name="Unprintable">Sentences about documents that could not be printed as recorded.</param>
/// <param name="Failure">Why disk, browser or register stopped the run; null where nothing did. What is listed is whole.</param>
public sealed record IssueResult(
    IReadOnlyList<CheckedInput> Inputs,
    IReadOnlyList<Issued> Documents,
    IReadOnlyList<Refusal> Refused,
    IReadOnlyList<string> Remarks,
    IReadOnlyList<string> Unprintable,
    string? Failure
)
{
    /// <summary>Sentences about the folders that were made to be sent.</summary>
    public IReadOnlyList<string> ToSend { get; init; } = [];
}

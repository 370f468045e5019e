using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;

namespace ExamDocs.UseCases.Reading;

/// <summary>A visit read, checked and determined: one input, or several of the same visit together.</summary>
/// <param name="File">The input as the user named it; of several the first.</param>
/// <param name="Visit">Null where the input is unreadable.</param>
/// <param name="Sources">Where in the input each place of the record was typed.</param>
/// <param name="Unreadable">Why it is unreadable; null where it is not.</param>
public sealed record CheckedInput(string File, DeterminedVisit? Visit, SourceMap Sources, string? Unreadable)
{
    /// <summary>Empty where they were not asked to be kept.</summary>
    internal VisitPhotos Photos { get; init; } = new();
}

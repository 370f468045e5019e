using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Commands;

/// <summary>The result of an import.</summary>
/// <param name="Inputs">The inputs as checked, in the order of their visits' days.</param>
/// <param name="New">How many visits the register did not know.</param>
/// <param name="Known">How many it knew already: nothing was changed for these.</param>
public sealed record ImportResult(IReadOnlyList<CheckedInput> Inputs, int New, int Known)
{
    /// <summary>Sentences about documents that no longer hold, and about withdrawals that a later visit did not know of.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];
}

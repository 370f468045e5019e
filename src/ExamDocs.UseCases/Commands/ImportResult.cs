using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Commands;

/// <summary>What came of an import.</summary>
/// <param name="Inputs">The inputs as checked, in the order of their visits' days.</param>
/// <param name="New">How many visits the register did not know.</param>
/// <param name="Known">How many it knew already: nothing was changed for these.</param>
public sealed record ImportResult(IReadOnlyList<CheckedInput> Inputs, int New, int Known)
{
    /// <summary>Sentences about withdrawals of items that a later visit, known already, passed.</summary>
    public IReadOnlyList<string> Late { get; init; } = [];
}

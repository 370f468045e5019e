using ExamDocs.Templates.Shared.Wording;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Commands;

/// <summary>The labels that were printed, or why none were.</summary>
/// <param name="Inputs">The inputs as checked.</param>
/// <param name="Labels">The labels on the sheet, in their order.</param>
/// <param name="Refused">Why nothing was printed; null where it was, or where there was nothing to print.</param>
/// <param name="Unprintable">Sentences about labels that could not be printed as recorded.</param>
/// <param name="Failure">Why disk, browser or register stopped the run; null where nothing did.</param>
public sealed record LabelResult(
    IReadOnlyList<CheckedInput> Inputs,
    IReadOnlyList<Issued> Labels,
    string? Refused,
    IReadOnlyList<string> Unprintable,
    string? Failure
)
{
    /// <summary>
    /// Sentences that hold nothing back: labels that are hard to read, and labels of the other kind that the records call for.
    /// </summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    internal static LabelResult Stopped(string why, IReadOnlyList<CheckedInput> inputs) => new(inputs, [], why, [], null);
}

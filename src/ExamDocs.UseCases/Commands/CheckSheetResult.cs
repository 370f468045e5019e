using ExamDocs.Templates.Shared.Wording;
using ExamDocs.UseCases.Issuing;

namespace ExamDocs.UseCases.Commands;

/// <summary>The check sheets that were printed, or why none were.</summary>
/// <param name="Sheets">The sheets of the pile, in its order.</param>
/// <param name="Refused">Why nothing was printed; null where it was, or where there was nothing to print.</param>
/// <param name="Unprintable">Sentences about sheets with characters that no installed font has; those are held back.</param>
/// <param name="Failure">Why disk, browser or register stopped the run; null where nothing did.</param>
public sealed record CheckSheetResult(IReadOnlyList<Issued> Sheets, string? Refused, IReadOnlyList<string> Unprintable, string? Failure);

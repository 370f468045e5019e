using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.UseCases.Reading;

/// <summary>A visit read, checked and determined: one input, or several of the same visit together.</summary>
/// <param name="File">The input as the user named it; of several the first.</param>
/// <param name="Visit">Null where the input is unreadable.</param>
/// <param name="Sources">Where in the input each place of the record was typed.</param>
/// <param name="Unreadable">Why it is unreadable; null where it is not.</param>
public sealed record CheckedInput(string File, DeterminedVisit? Visit, SourceMap Sources, string? Unreadable)
{
    public bool IsRead => Visit is not null;

    /// <summary>Empty where the input is unreadable.</summary>
    public IReadOnlyList<Finding> Findings => Visit?.Findings ?? [];

    /// <summary>One for each item, in the order recorded; empty where the input is unreadable.</summary>
    public IReadOnlyList<ItemOutcome> Outcomes => [.. (Visit?.Items ?? []).Select(ItemOutcome.Of)];

    /// <summary>Empty where they were not asked to be kept.</summary>
    internal VisitPhotos Photos { get; init; } = new();
}

/// <summary>The outcome of an item for a list. No document can be made from it.</summary>
/// <param name="Item">Its id; null where it has none.</param>
/// <param name="Outcome">What was decided.</param>
/// <param name="Until">The last day on which it may be used, inclusive.</param>
/// <param name="NextExaminationBy">Inclusive.</param>
/// <param name="Codes">Codes of its reasons, each once.</param>
public sealed record ItemOutcome(string? Item, Outcome Outcome, LocalDate? Until, LocalDate? NextExaminationBy, IReadOnlyList<string> Codes)
{
    internal static ItemOutcome Of(DeterminedItem item) =>
        new(
            item.Item.Id,
            item.Outcome,
            item.Until,
            item.NextExaminationBy,
            [.. item.Reasons.Select(r => r.Code).Distinct(StringComparer.Ordinal)]
        );
}

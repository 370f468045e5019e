using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Workbook;
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

    /// <summary>In the words of what was filled in, a sheet or a JSON file; empty where the input is unreadable.</summary>
    public IReadOnlyList<Finding> Findings => [.. (Visit?.Findings ?? []).Select(f => SheetWords.Of(f, Sources))];

    /// <summary>One for each item, in the order recorded; empty where the input is unreadable.</summary>
    public IReadOnlyList<ItemOutcome> Outcomes =>
        [.. (Visit?.Items ?? []).Select((item, n) => ItemOutcome.Of(item, Sources.PlaceOf(FormattableString.Invariant($"/items/{n}"))))];

    /// <summary>What was examined under an id that no item has, and has to be withdrawn.</summary>
    public IReadOnlyList<ItemOutcome> Unlisted => [.. (Visit?.Unlisted ?? []).Select(item => ItemOutcome.Of(item, null))];

    /// <summary>What is to be told of the findings: each cause once.</summary>
    /// <param name="acrossValues">As <see cref="FindingGroups.Of"/> takes it.</param>
    public IReadOnlyList<FindingGroup> Told(bool acrossValues = false) => FindingGroups.Of(Findings, Sources, acrossValues);

    /// <summary>Rows on which something was typed and of which nothing was read, each by its first cell.</summary>
    public IReadOnlyList<SourcePlace> UnreadRows { get; init; } = [];

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
    /// <summary>Where it was typed; null for what no item of the record stands for.</summary>
    public SourcePlace? Place { get; init; }

    internal static ItemOutcome Of(DeterminedItem item, SourcePlace? place) =>
        new(
            item.Item.Id,
            item.Outcome,
            item.Until,
            item.NextExaminationBy,
            [.. item.Reasons.Select(r => r.Code).Distinct(StringComparer.Ordinal)]
        )
        {
            Place = place,
        };
}

namespace ExamDocs.Core.Records;

/// <summary>
/// Everything recorded for one visit, as typed (format examdocs/1). Plain and immutable; lists keep input order, so
/// that the n-th item is found at <c>/items/n</c> in the source. Null means: not recorded.
/// </summary>
public sealed record ExaminationRecord
{
    public const string FormatName = "examdocs/1";

    public string? Format { get; init; }

    public Visit Visit { get; init; } = new();

    public IReadOnlyList<Person> People { get; init; } = [];

    public IReadOnlyList<Item> Items { get; init; } = [];

    public IReadOnlyList<MakersLimits> Limits { get; init; } = [];

    public IReadOnlyList<Examination> Examinations { get; init; } = [];

    public IReadOnlyList<Renewal> Renewals { get; init; } = [];

    public IReadOnlyList<Remedy> Remedies { get; init; } = [];

    public IReadOnlyList<Release> Releases { get; init; } = [];

    public IReadOnlyList<Disposal> Disposals { get; init; } = [];
}

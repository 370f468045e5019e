namespace ExamDocs.Core.Findings;

/// <summary>One finding with every place at which it was made.</summary>
/// <param name="All">The finding at each of its places, in the order found; one at least.</param>
/// <param name="Places">Where in the input these were typed, each place once.</param>
public sealed record FindingGroup(IReadOnlyList<Finding> All, IReadOnlyList<SourcePlace> Places)
{
    /// <summary>The finding in its words.</summary>
    public Finding First => All[0];

    /// <summary>Ids of the items that it is about, each once.</summary>
    public IReadOnlyList<string> Items { get; } = [.. All.Select(f => f.Item).OfType<string>().Distinct(StringComparer.Ordinal)];

    /// <summary>The one item that it is about; null where it is about several, or about the visit as a whole.</summary>
    public string? Item => Items is [var only] && All.All(f => f.Item is not null && RecordPointer.ToRow(f.Path) is not null) ? only : null;

    /// <summary>How many say the same of another value, in place of the one that <see cref="First"/> names.</summary>
    public int OfOtherValues => All.Count(f => !f.Message.Equals(First.Message));
}

/// <summary>The findings at one sheet, or in one file, by item.</summary>
/// <param name="File">The file.</param>
/// <param name="Sheet">The sheet; null where the file has none, or where the findings are on several.</param>
/// <param name="Items">Those about no item, or about several, under null and first; then the gravest first.</param>
public sealed record FindingSection(string File, string? Sheet, IReadOnlyList<(string? Item, IReadOnlyList<FindingGroup> Findings)> Items);

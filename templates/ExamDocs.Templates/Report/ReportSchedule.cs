namespace ExamDocs.Templates.Report;

/// <summary>Blocks of one kind.</summary>
/// <param name="Kind">Why they are blocks.</param>
/// <param name="Items">At least one, in the order of the record.</param>
public sealed record ReportBlocks(BlockKind Kind, IReadOnlyList<ReportItem> Items);

/// <summary>
/// The items of a report in the order in which they are printed: dangers first, each in a block of its own, then groups of items in
/// order. Every item is in exactly one of them.
/// </summary>
public sealed class ReportSchedule
{
    /// <param name="items">In the order of the record.</param>
    /// <param name="isOfOne">A report of one item has it in a block, whatever its outcome.</param>
    internal ReportSchedule(IReadOnlyList<ReportItem> items, bool isOfOne)
    {
        var kinds = items.ToLookup(i => isOfOne ? BlockKinds.Of(i) ?? BlockKind.Long : BlockKinds.Of(i));
        Blocks = [.. Enum.GetValues<BlockKind>().Where(k => kinds.Contains(k)).Select(k => new ReportBlocks(k, [.. kinds[k]]))];
        Groups = [.. kinds[null].GroupBy(i => i.Group).Select(g => new ReportGroup([.. g]))];
        Items = [.. Blocks.SelectMany(b => b.Items), .. Groups.SelectMany(g => g.Items)];
        foreach (var (at, item) in Items.Index())
            item.Position = at + 1;
    }

    public IReadOnlyList<ReportBlocks> Blocks { get; }

    public IReadOnlyList<ReportGroup> Groups { get; }

    /// <summary>All of them, in the order printed.</summary>
    public IReadOnlyList<ReportItem> Items { get; }

    public int InBlocks => Blocks.Sum(b => b.Items.Count);

    public int InLines => Groups.Sum(g => g.Items.Count);
}

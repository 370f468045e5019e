using ExamDocs.Templates.Report.Wording;

namespace ExamDocs.Templates.Report;

/// <summary>Lines of a group that stay on one page under its heading.</summary>
/// <param name="Items">At least one, in the order printed.</param>
/// <param name="From">Of how many lines of the group before it, plus one.</param>
public sealed record GroupPart(IReadOnlyList<ReportItem> Items, int From)
{
    /// <summary>Whether it goes on with a group that began before.</summary>
    public bool IsContinued => From > 1;

    public int To => From + Items.Count - 1;
}

/// <summary>Items in order that have all but their own lines in common.</summary>
public sealed class ReportGroup
{
    /// <summary>
    /// Height of the lines under one heading, millimetres: with its heading such a part takes half a page, so that two fill one. A
    /// part is never broken, so that no line stands on a page without its heading.
    /// </summary>
    private const double PartMm = 98;

    internal ReportGroup(IReadOnlyList<ReportItem> items)
    {
        (Items, Heading) = (items, items[0].Group);
        var most = items.CountBy(i => i.Description, StringComparer.Ordinal).MaxBy(d => d.Value);
        Description = 2 * most.Value > items.Count ? most.Key : null;
        Parts = [.. Split()];
    }

    public GroupHeading Heading { get; }

    public IReadOnlyList<ReportItem> Items { get; }

    /// <summary>The description that most of its items have; a line with another one has its own, as all have where this is null.</summary>
    public string? Description { get; }

    public IReadOnlyList<GroupPart> Parts { get; }

    /// <summary>What a line says in its last column, a paragraph each.</summary>
    public IReadOnlyList<string> Notes(ReportItem item)
    {
        string[] own = string.Equals(Description, item.Description, StringComparison.Ordinal) ? [] : [item.Description];
        string[] photos = item.Photos.Count > 0 ? [ReportPhrases.Current.PhotosElsewhere(item.Photos.Count)] : [];
        return [.. own, .. item.Notes, .. photos];
    }

    private IEnumerable<GroupPart> Split()
    {
        var heights = Items.Select(i => LineHeight.Of(i, Notes(i))).ToList();
        var most = heights.Sum() / Math.Ceiling(heights.Sum() / PartMm);
        var (part, height, from) = (new List<ReportItem>(), 0.0, 1);
        for (var at = 0; at < Items.Count; at++)
        {
            if (part.Count > 0 && height + heights[at] > most + LineHeight.Least)
            {
                yield return new GroupPart(part, from);
                (from, part, height) = (from + part.Count, [], 0);
            }
            part.Add(Items[at]);
            height += heights[at];
        }
        yield return new GroupPart(part, from);
    }
}

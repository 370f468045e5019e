using ExamDocs.Core.Records;

namespace ExamDocs.Core.Identity;

/// <summary>A key under which a store can find what an item may be the same as, or is assembled with.</summary>
/// <param name="Item">Id of the item as typed in the record; empty for an item without one.</param>
/// <param name="Key">The key; equal keys belong together.</param>
public readonly record struct ItemKey(string Item, string Key);

/// <summary>
/// The keys of everything that a record names: two items can be the same, or parts of one assembly, only where a key is
/// common to them, directly or over others.
/// </summary>
public static class ItemKeys
{
    private const string Id = "i:";
    private const string Serial = "s:";

    /// <summary>
    /// Keys of each item named in the record, those of examinations, renewals, releases and disposals among them; each once.
    /// </summary>
    public static IReadOnlyList<ItemKey> Of(ExaminationRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return [.. record.Items.SelectMany(OfItem).Concat(Named(record)).Distinct()];
    }

    private static IEnumerable<ItemKey> OfItem(Item item) =>
        [
            .. Keys(item.Id, Id, item.Id),
            .. Keys(item.Id, Serial, item.Serial),
            .. Keys(item.Id, Id, item.Formerly),
            .. Keys(item.Id, Id, item.FittedTo),
            .. item.NotTheSameAs.SelectMany(other => Keys(item.Id, Id, other.Id)),
        ];

    private static IEnumerable<ItemKey> Named(ExaminationRecord record) =>
        [
            .. record
                .Examinations.Select(e => e.Item)
                .Concat(record.Releases.Select(r => r.Item))
                .Concat(record.Disposals.Select(d => d.Item))
                .Concat(record.Remedies.Select(r => r.Item))
                .SelectMany(id => Keys(id, Id, id)),
            .. record.Renewals.SelectMany(r => new[] { r.Item, r.RemovedPart, r.FittedPart }.SelectMany(id => Keys(r.Item, Id, id))),
        ];

    private static IEnumerable<ItemKey> Keys(string? item, string kind, string? text) =>
        Folded.Keys(text).Select(key => new ItemKey(item ?? "", kind + key));
}

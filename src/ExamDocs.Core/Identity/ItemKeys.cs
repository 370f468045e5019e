using ExamDocs.Core.Records;

namespace ExamDocs.Core.Identity;

/// <summary>A key by which a store finds what an item may be the same as, or may be fitted to.</summary>
/// <param name="Item">Id of the item as typed in the record; empty for an item without one.</param>
/// <param name="Key">The key; items with an equal key belong together.</param>
public readonly record struct ItemKey(string Item, string Key);

/// <summary>
/// The keys of everything that a record names. Two items can be the same, or parts of one assembly, only where they share a key,
/// directly or by way of other items.
/// </summary>
public static class ItemKeys
{
    private const string Id = "i:";
    private const string Serial = "s:";

    /// <summary>
    /// Keys of each item that the record names, also in examinations, renewals, remedies, releases and disposals; each key once.
    /// </summary>
    public static IReadOnlyList<ItemKey> Of(ExaminationRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return [.. record.Items.SelectMany(OfItem).Concat(Named(record)).Distinct()];
    }

    private static IEnumerable<ItemKey> OfItem(Item item) =>
        [
            .. Keys(item.Id, Id, item.Id),
            .. SerialKeys.Of(item.Serial).Select(key => new ItemKey(item.Id ?? "", Serial + key)),
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

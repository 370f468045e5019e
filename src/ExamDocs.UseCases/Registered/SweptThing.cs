using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;

namespace ExamDocs.UseCases.Registered;

/// <summary>An item of a register, looked at with all others.</summary>
/// <param name="Thing">All that is on record of it.</param>
/// <param name="Shown">How it stands today.</param>
/// <param name="Alike">What may be the same item under another tag.</param>
/// <param name="Rows">Every row about it that was ever typed, those of visits that were corrected too; at least one.</param>
internal sealed record SweptThing(ThingOnRecord Thing, FoundItem Shown, IReadOnlyList<ThingOnRecord> Alike, IReadOnlyList<Item> Rows);

/// <summary>What a record names and no visit decided about.</summary>
/// <param name="Item">Its row; nothing but its id where it has none.</param>
/// <param name="Record">The record.</param>
/// <param name="IsRow">False where the record only names its id.</param>
internal sealed record UndecidedItem(Item Item, ExaminationRecord Record, bool IsRow)
{
    /// <summary>Whom it is hired from, else the employer.</summary>
    public string? Owner => Record.Visit.HiredFrom?.Name ?? Record.Visit.Employer?.Name;

    /// <summary>Ids of what its record says that it is fitted to.</summary>
    public IEnumerable<string?> On =>
        Record.Renewals.Where(r => Folded.Same(r.FittedPart, Item.Id)).Select(r => r.Item).Prepend(Item.FittedTo);

    /// <summary>All that a record names: its rows, and ids without a row, as of a part in a renewal.</summary>
    public static IEnumerable<UndecidedItem> In(ExaminationRecord record) =>
        record
            .Items.Select(i => new UndecidedItem(i, record, IsRow: true))
            .Concat(NamedAlone(record).Select(i => new UndecidedItem(i, record, IsRow: false)));

    private static IEnumerable<Item> NamedAlone(ExaminationRecord record)
    {
        var rows = record.Items.SelectMany(i => Folded.Keys(i.Id)).ToHashSet(StringComparer.Ordinal);
        return record
            .Items.Select(i => i.FittedTo)
            .Concat(record.Examinations.Select(e => e.Item))
            .Concat(record.Renewals.SelectMany(r => new[] { r.Item, r.RemovedPart, r.FittedPart }))
            .Concat(record.Remedies.Select(r => r.Item))
            .Concat(record.Releases.Select(r => r.Item))
            .Concat(record.Disposals.Select(d => d.Item))
            .Where(id => Folded.Keys(id) is { Count: > 0 } keys && !keys.Any(rows.Contains))
            .Distinct(StringComparer.Ordinal)
            .Select(id => new Item { Id = id });
    }
}

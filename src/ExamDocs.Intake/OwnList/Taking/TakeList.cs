using ExamDocs.Core.Records;
using ExamDocs.Intake.OwnList.Mapping;
using ExamDocs.Intake.OwnList.Words;
using NodaTime;

namespace ExamDocs.Intake.OwnList.Taking;

/// <summary>Makes a record of a list by its map.</summary>
public static class TakeList
{
    /// <param name="mapping">The list and its map; what is necessary is settled.</param>
    /// <param name="asOf">The day taken for what the list has as out of use without a day.</param>
    public static TakenList Of(ListMapping mapping, LocalDate asOf)
    {
        ArgumentNullException.ThrowIfNull(mapping);
        var ids = new ItemIds(mapping.Tables);
        var held = new HeldItems(mapping.Rules, mapping.Book.FileName, asOf);
        var remarks = new TakingRemarks(mapping);
        var split = new MakerSplit(mapping.Map.Makers ?? MakerSplit.Seen(mapping.Tables).Makers);
        var kinds = mapping.Map.Kinds.ToDictionary(k => k.Word, k => k.Category, StringComparer.Ordinal);
        var words = mapping.Map.Words.ToDictionary(w => w.Word, w => w.Means, StringComparer.Ordinal);
        var items = new List<Item>();
        foreach (var (table, row) in mapping.Tables.SelectMany(t => t.Table.Rows.Select(r => (t, r))))
        {
            var use = new UseOfRow(table, row, mapping.Map, words, asOf);
            use.Look();
            var taking = new RowTaking(table, row, mapping.Map, use);
            var kind = RowKind.Of(table, row, mapping.Kinds);
            var category = kinds.GetValueOrDefault(kind.Word);
            var item = taking.Take(ids.Of(table, row), category ?? table.Text(row.Row, ListField.Category) ?? Titled(kind, row), split);
            var place = ItemIds.Place(table, row.Row.Number);
            items.Add(item);
            held.Add(item, place, use.Against);
            remarks.Look(table, row, taking, use, category is null ? kind : null);
        }
        return new TakenList(
            new ExaminationRecord
            {
                Format = ExaminationRecord.FormatName,
                Items = items,
                Examinations = held.Examinations,
            },
            mapping.Finder.LeftOut,
            [.. remarks.Of(items, ids, held, asOf)]
        )
        {
            Held = held.ByReason.Values.Sum(v => v.Count),
        };
    }

    /// <summary>The word of a title for a kind that is not known.</summary>
    private static string? Titled(RowKind kind, TableRow row) =>
        string.Equals(kind.Typed, row.Section, StringComparison.Ordinal) ? row.Section : null;
}

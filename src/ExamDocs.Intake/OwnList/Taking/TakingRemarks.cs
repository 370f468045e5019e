using System.Globalization;
using ExamDocs.Core.Records;
using ExamDocs.Intake.OwnList.Mapping;
using ExamDocs.Intake.OwnList.Sheets;
using ExamDocs.Intake.OwnList.Words;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.Intake.OwnList.Taking;

/// <summary>Gathers what has to be said about the rows taken, each thing in one sentence with its rows.</summary>
internal sealed class TakingRemarks(ListMapping mapping)
{
    private readonly SortedDictionary<string, SortedDictionary<string, List<int>>> _rows = new(StringComparer.Ordinal);

    public void Look(MappedTable table, TableRow row, RowTaking taking, UseOfRow use, RowKind? unknown)
    {
        if (unknown is not null)
            Note(
                unknown.Word.Length == 0
                    ? "nothing says what kind of kit it is"
                    : $"the kind of kit is not known: '{Samples.Short(unknown.Typed)}'",
                table,
                row
            );
        foreach (var heading in taking.NotRead)
            Note($"'{heading}' could not be read and is kept as a remark", table, row);
        foreach (var heading in taking.NoRoom)
            Note($"not taken, the description has no room for it: '{heading}'", table, row);
        foreach (var (_, heading) in table.Columns(ListField.LeaveOut).Where(c => row.Row.Cells.ContainsKey(c.Column)))
            Note($"left out as the map says: the column '{heading}'", table, row);
        if (row.Row.Cells.Values.Any(c => c.IsUnsound))
            Note("a cell holds an error, a formula without its result, or a number too long to be exact", table, row);
        foreach (var field in new[] { ListField.Id, ListField.Serial, ListField.PartNumber, ListField.OwnersMark })
        {
            if (table.Cell(row.Row, field)?.Day is not null)
                Note("a date stands where a marking belongs; a spreadsheet program may have made it one", table, row);
        }
        if (use.PlannedEnd is not null)
            Note("to go out of use on a day to come: taken as the last day of service", table, row);
        if (IsSeveral(table, row))
            Note("the row stands for more than one thing, and came in as one item: give each an id of its own", table, row);
    }

    public IEnumerable<string> Of(IReadOnlyList<Item> items, ItemIds ids, HeldItems held, LocalDate asOf)
    {
        foreach (var (reason, of) in held.ByReason)
            yield return $"out of use in the list, comes in withdrawn until it is released: {reason}: {string.Join(", ", of)}";
        foreach (var (reason, of) in held.Lost)
            yield return $"comes in as lost: {reason}: {string.Join(", ", of)}";
        if (held.Undated.Count > 0)
            yield return $"the list gives no day for it, so {LocalDatePattern.Iso.Format(asOf)} was taken: "
                + $"{string.Join(", ", held.Undated)}";
        foreach (var (id, rows) in ids.Twice)
            yield return $"the id {id} is in more than one row, which check will refuse: {string.Join(", ", rows)}";
        if (ids.BySerial.Count > 0)
            yield return $"no id, so the serial was taken for it: {string.Join(", ", ids.BySerial)}";
        if (ids.ByNumber.Count > 0)
            yield return $"no id and no serial of its own, so the row's number was taken: {string.Join(", ", ids.ByNumber)}";
        foreach (var (what, places) in _rows)
            yield return $"{what}: {string.Join("; ", places.Select(p => $"{p.Key} row {RowNumbers.Of(p.Value)}"))}";
        foreach (var remark in mapping.Book.Sheets.SelectMany(s => s.Remarks))
            yield return remark;
        foreach (var heading in SwappedDates.In(mapping.Tables))
            yield return $"'{heading}': some dates may have day and month exchanged, as happens when a file is opened in another country's "
                + "settings: compare a few with the papers";
        if (Headings(ListField.Remark, ListField.State, ListField.InUse).ToList() is { Count: > 0 } kept)
            yield return $"kept in the description, where it decides nothing: {string.Join(", ", kept)}";
        foreach (var word in Overruled())
            yield return $"by the map '{word}' says nothing against an item";
        if (items.Count == 0)
            yield return "no row is about an item";
    }

    private IEnumerable<string> Headings(params ListField[] fields) =>
        mapping
            .Tables.SelectMany(t => fields.SelectMany(t.Columns))
            .Select(c => $"'{c.Heading}'")
            .Distinct(StringComparer.OrdinalIgnoreCase);

    /// <summary>Words against an item that the map takes for a remark.</summary>
    private IEnumerable<string> Overruled() =>
        mapping
            .Map.Words.Where(w => w.Means is UseMeaning.Remark or UseMeaning.Stored && UseWords.OfState(w.Word) is >= UseMeaning.Lost)
            .Select(w => w.Samples.Count > 0 ? w.Samples[0] : w.Word);

    private static bool IsSeveral(MappedTable table, TableRow row) =>
        table
            .Table.Headings.Where(h =>
                PlainWords.Of(h.Value) is "quantity" or "qty" or "menge" or "anzahl" or "stuck" or "quantite" or "qte" or "pcs"
            )
            .Any(h =>
                row.Row.At(h.Key) is { } text
                && decimal.TryParse(text, NumberStyles.Number, CultureInfo.InvariantCulture, out var number)
                && number > 1
            );

    private void Note(string what, MappedTable table, TableRow row)
    {
        if (!_rows.TryGetValue(what, out var places))
            _rows[what] = places = new SortedDictionary<string, List<int>>(StringComparer.Ordinal);
        if (!places.TryGetValue(table.Table.Sheet, out var rows))
            places[table.Table.Sheet] = rows = [];
        rows.Add(row.Row.Number);
    }
}

using System.Globalization;
using ExamDocs.Core.Identity;
using ExamDocs.Intake.OwnList.Mapping;
using ExamDocs.Intake.OwnList.Words;

namespace ExamDocs.Intake.OwnList.Taking;

/// <summary>Gives every row its id: the one typed; else the serial, where no other row goes by it; else one with its row number.</summary>
internal sealed class ItemIds
{
    private readonly FoldedIds _folded = new();
    private readonly Dictionary<string, List<string>> _rowsOf = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _serials = new(StringComparer.Ordinal);

    public ItemIds(IEnumerable<MappedTable> tables)
    {
        foreach (var (table, row) in tables.SelectMany(t => t.Table.Rows.Select(r => (t, r.Row))))
        {
            if (table.Text(row, ListField.Id) is { } id)
                Note(id, Place(table, row.Number));
            if (table.Text(row, ListField.Serial) is { } serial)
                _serials[_folded.Of(serial)] = _serials.GetValueOrDefault(_folded.Of(serial)) + 1;
        }
    }

    /// <summary>Rows that go by their serial, and by their number.</summary>
    public List<string> BySerial { get; } = [];

    public List<string> ByNumber { get; } = [];

    /// <summary>Ids that stand in more than one row, with those rows.</summary>
    public IEnumerable<(string Id, IReadOnlyList<string> Rows)> Twice =>
        _rowsOf.Where(r => r.Value.Count > 1).Select(r => (r.Key, (IReadOnlyList<string>)r.Value));

    public string Of(MappedTable table, TableRow row)
    {
        if (table.Text(row.Row, ListField.Id) is { } typed)
            return typed;
        var place = Place(table, row.Row.Number);
        if (table.Text(row.Row, ListField.Serial) is { } serial && _serials[_folded.Of(serial)] == 1 && IsFree(serial))
        {
            BySerial.Add(place);
            Note(serial, place);
            return serial;
        }
        ByNumber.Add(place);
        var number = string.Create(CultureInfo.InvariantCulture, $"ROW-{row.Row.Number}");
        var id = number;
        for (var n = 2; !IsFree(id); n++)
            id = string.Create(CultureInfo.InvariantCulture, $"{number}-{n}");
        Note(id, place);
        return id;
    }

    public static string Place(MappedTable table, int row) => string.Create(CultureInfo.InvariantCulture, $"{table.Table.Sheet} row {row}");

    private bool IsFree(string id) => !_rowsOf.ContainsKey(_folded.Of(id));

    private void Note(string id, string place)
    {
        var name = _folded.Of(id);
        if (!_rowsOf.TryGetValue(name, out var rows))
            _rowsOf[name] = rows = [];
        rows.Add(place);
    }
}

using ExamDocs.Intake.OwnList.Sheets;
using ExamDocs.Intake.OwnList.Words;

namespace ExamDocs.Intake.OwnList.Mapping;

/// <summary>A table with what its columns hold.</summary>
internal sealed class MappedTable
{
    private readonly Dictionary<ListField, List<int>> _columns = [];

    private readonly Dictionary<int, int> _filled = [];

    public MappedTable(ListTable table, ListMap map)
    {
        Table = table;
        var effective = map.Columns.ToDictionary(c => c.Heading, c => c.Effective, StringComparer.OrdinalIgnoreCase);
        foreach (var (column, heading) in table.Headings.OrderBy(h => h.Key))
        {
            var field = effective.GetValueOrDefault(heading, ListField.Remark);
            // A second column for one thing is kept as a remark: of two values neither is chosen.
            if (!ListFields.MayRepeat(field) && _columns.ContainsKey(field))
                field = ListField.Remark;
            if (!_columns.TryGetValue(field, out var columns))
                _columns[field] = columns = [];
            columns.Add(column);
        }
    }

    public ListTable Table { get; }

    /// <summary>Whether half of the rows at least have something in a column.</summary>
    public bool IsMostlyFilled(int column)
    {
        if (!_filled.TryGetValue(column, out var filled))
            _filled[column] = filled = Table.Rows.Count(r => r.Row.Cells.ContainsKey(column));
        return filled * 2 >= Table.Rows.Count;
    }

    public bool Has(ListField field) => _columns.ContainsKey(field);

    /// <summary>The column that holds something; null where none does.</summary>
    public int? Column(ListField field) => _columns.TryGetValue(field, out var columns) ? columns[0] : null;

    /// <summary>All columns that hold something, with their headings.</summary>
    public IEnumerable<(int Column, string Heading)> Columns(ListField field) =>
        _columns.GetValueOrDefault(field, []).Select(c => (c, Table.Headings[c]));

    /// <summary>The value of a row; null where there is none, or it only says that there is none.</summary>
    public string? Text(ListRow row, ListField field) => Cell(row, field)?.Text;

    public ListCell? Cell(ListRow row, ListField field) =>
        Column(field) is { } at && row.Cells.TryGetValue(at, out var cell) && !UseWords.IsUnknown(cell.Text) ? cell : null;
}

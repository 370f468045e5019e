using System.Collections;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Runtime.InteropServices;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>
/// Where every place of the record stood. Most are not written down one by one, which would cost more than the record
/// itself: an object of the record knows its row, and a place within it is found by its column.
/// </summary>
internal sealed class PlaceMap : IReadOnlyDictionary<string, string>
{
    private const string Observations = "observations/";

    private readonly Dictionary<string, CellPlace> _exact = new(StringComparer.Ordinal);

    /// <summary>Rows of elements of the record's own lists, of which there are many: by the list's pointer.</summary>
    private readonly Dictionary<string, RowRuns> _lists = new(StringComparer.Ordinal);
    private readonly Dictionary<string, RowPlace> _rows = new(StringComparer.Ordinal);

    /// <summary>Number of places that can be listed; more can be found, those within a row.</summary>
    public int Count => Keys.Count();

    public IEnumerable<string> Keys => this.Select(p => p.Key);

    public IEnumerable<string> Values => this.Select(p => p.Value);

    public string this[string key] => TryGetValue(key, out var place) ? place : throw new KeyNotFoundException(key);

    /// <summary>Notes one place; of two the first counts.</summary>
    public void Add(string pointer, RowPlace row, int column) => _exact.TryAdd(pointer, new CellPlace(row, column, null));

    /// <inheritdoc cref="Add(string, RowPlace, int)"/>
    public void Add(string pointer, string address, string? heading = null) =>
        _exact.TryAdd(pointer, new CellPlace(default, 0, address) { Label = heading });

    /// <summary>Notes the row that an object of the record was read from; of two the first counts.</summary>
    public void AddRow(string pointer, RowPlace row)
    {
        if (ElementOf(pointer, out var list) is not { } index || !RunsOf(list).Add(index, row))
            AddLoose(pointer, row);
    }

    public bool ContainsKey(string key) => TryGetValue(key, out _);

    public bool TryGetValue(string key, [MaybeNullWhen(false)] out string value)
    {
        value =
            _exact.TryGetValue(key, out var exact) ? exact.Address
            : InRow(key) is var (row, column)
                ? column is { } at ? row.Address(at)
                    : row.ToString()
            : null;
        return value is not null;
    }

    /// <summary>
    /// What stands above the cell of a place, as typed but for the star of a column that is needed; null for a row as a whole, and
    /// where nothing does.
    /// </summary>
    public string? HeadingOf(string key) =>
        (
            _exact.TryGetValue(key, out var exact) ? exact.Heading
            : InRow(key) is (var row, { } column) ? row.HeadingTyped(column)
            : null
        )?.TrimEnd(' ', '*');

    /// <summary>The places written down, and for every row its columns.</summary>
    public IEnumerator<KeyValuePair<string, string>> GetEnumerator() =>
        _exact
            .Select(p => KeyValuePair.Create(p.Key, p.Value.Address))
            .Concat(Rows.Where(r => !_exact.ContainsKey(r.Key)).Select(r => KeyValuePair.Create(r.Key, r.Value.ToString())))
            .Concat(
                Rows.SelectMany(r =>
                    r.Value.Columns.Where(c => IsMember(c.Column))
                        .Select(c => $"{r.Key}/{c.Column.Path}")
                        .Distinct(StringComparer.Ordinal)
                        .Where(key => !_exact.ContainsKey(key))
                        .Select(key => KeyValuePair.Create(key, this[key]))
                )
            )
            .GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private static bool IsMember(Column column) =>
        column.Group is not (ColumnGroup.Criterion or ColumnGroup.CriterionNote or ColumnGroup.LastTime);

    private IEnumerable<KeyValuePair<string, RowPlace>> Rows =>
        _rows.Concat(
            _lists.SelectMany(list =>
                list.Value.All.Select(r => KeyValuePair.Create(string.Create(CultureInfo.InvariantCulture, $"{list.Key}/{r.Index}"), r.Row))
            )
        );

    private void AddLoose(string pointer, RowPlace row)
    {
        if (RowOf(pointer) is null)
            _rows.Add(pointer, row);
    }

    private RowPlace? RowOf(string pointer)
    {
        if (
            ElementOf(pointer, out var list) is { } index
            && _lists.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(list, out var runs)
            && runs.Find(index) is { } row
        )
            return row;
        return _rows.TryGetValue(pointer, out var loose) ? loose : null;
    }

    private RowRuns RunsOf(ReadOnlySpan<char> list)
    {
        var lists = _lists.GetAlternateLookup<ReadOnlySpan<char>>();
        return lists.TryGetValue(list, out var runs) ? runs : lists[list] = new RowRuns();
    }

    /// <summary>The index that a pointer such as /items/3 ends in; null where it is of any other form.</summary>
    private static int? ElementOf(string pointer, out ReadOnlySpan<char> list)
    {
        var end = pointer.LastIndexOf('/');
        list = pointer.AsSpan(0, Math.Max(end, 0));
        return
            end > 1
            && list.LastIndexOf('/') == 0
            && int.TryParse(pointer.AsSpan(end + 1), NumberStyles.None, CultureInfo.InvariantCulture, out var index)
            ? index
            : null;
    }

    /// <summary>The row that a place is in, and its column there; no column for the row as a whole.</summary>
    private (RowPlace Row, int? Column)? InRow(string pointer)
    {
        for (var end = pointer.Length; end > 0; end = pointer.LastIndexOf('/', end - 1))
        {
            if (RowOf(pointer[..end]) is not { } row)
                continue;
            if (end == pointer.Length)
                return (row, null);
            return Column(row, pointer[(end + 1)..]) is { } column ? (row, column) : null;
        }
        return null;
    }

    private static int? Column(RowPlace row, string path)
    {
        var criterion = path.StartsWith(Observations, StringComparison.Ordinal) ? path[Observations.Length..] : null;
        foreach (var (index, column) in row.Columns)
        {
            if (
                IsMember(column)
                    ? Meets(column.Path, path)
                    : column.Group is not ColumnGroup.LastTime && string.Equals(column.Path, criterion, StringComparison.Ordinal)
            )
                return index;
        }
        return null;
    }

    /// <summary>The same member, one within it, or the one it is within.</summary>
    private static bool Meets(string column, string path) =>
        string.Equals(column, path, StringComparison.Ordinal)
        || column.StartsWith(path + "/", StringComparison.Ordinal)
        || path.StartsWith(column + "/", StringComparison.Ordinal);

    [StructLayout(LayoutKind.Auto)]
    private readonly record struct CellPlace(RowPlace Row, int Column, string? Written)
    {
        public string Address => Written ?? Row.Address(Column);

        /// <summary>What stands beside it as its heading; null where nothing does.</summary>
        public string? Label { get; init; }

        public string? Heading => Written is null ? Row.HeadingTyped(Column) : Label;
    }
}

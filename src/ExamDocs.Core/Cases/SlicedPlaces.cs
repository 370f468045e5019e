using System.Globalization;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Cases;

/// <summary>Places in a record and in a slice of it: a row has another number there.</summary>
public sealed class SlicedPlaces
{
    private readonly Dictionary<string, IReadOnlyList<int>> _inWhole;
    private readonly Dictionary<string, Dictionary<int, int>> _inSlice;

    /// <param name="lists">Each list that is cut, with the place in the whole of every row that is kept.</param>
    internal SlicedPlaces(params IEnumerable<(string List, IReadOnlyList<int> Kept)> lists)
    {
        _inWhole = lists.ToDictionary(l => l.List, l => l.Kept, StringComparer.Ordinal);
        _inSlice = _inWhole.ToDictionary(
            l => l.Key,
            l => l.Value.Index().ToDictionary(row => row.Item, row => row.Index),
            StringComparer.Ordinal
        );
    }

    /// <summary>The place in the whole record of a place in the slice.</summary>
    public string InWhole(string pointer) =>
        RecordPointer.ToRow(pointer) is { } at && _inWhole.TryGetValue(at.List, out var rows) && at.Row < rows.Count
            ? Moved(pointer, at, rows[at.Row])
            : pointer;

    /// <summary>The findings of a whole record that are about the slice, places as in the slice; others are left out.</summary>
    internal IEnumerable<Finding> InSlice(IEnumerable<Finding> findings) =>
        from finding in findings
        let path = InSlice(finding.Path)
        where path is not null
        select finding with
        {
            Path = path,
            LostAt = finding.LostAt is { } lost ? InSlice(lost) : null,
        };

    private string? InSlice(string pointer) =>
        RecordPointer.ToRow(pointer) is not { } at || !_inSlice.TryGetValue(at.List, out var rows) ? pointer
        : rows.TryGetValue(at.Row, out var row) ? Moved(pointer, at, row)
        : null;

    private static string Moved(string pointer, RecordPointer at, int row)
    {
        var rest = pointer.Split('/', 4);
        return string.Create(CultureInfo.InvariantCulture, $"/{at.List}/{row}{(rest.Length > 3 ? "/" + rest[3] : "")}");
    }
}

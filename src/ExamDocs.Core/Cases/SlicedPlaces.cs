using System.Globalization;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Cases;

/// <summary>Places in a record and in a slice of it: a row has another number there.</summary>
public sealed class SlicedPlaces
{
    private readonly Dictionary<string, int[]> _kept;

    /// <param name="lists">Each list that is cut, with the places in the whole of the rows that are kept, ascending.</param>
    internal SlicedPlaces(params IEnumerable<(string List, int[] Kept)> lists) =>
        _kept = lists.ToDictionary(l => l.List, l => l.Kept, StringComparer.Ordinal);

    /// <summary>The place in the whole record of a place in the slice.</summary>
    public string InWhole(string pointer) =>
        RecordPointer.ToRow(pointer) is { } at && _kept.TryGetValue(at.List, out var rows) && at.Row < rows.Length
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
        RecordPointer.ToRow(pointer) is not { } at || !_kept.TryGetValue(at.List, out var rows) ? pointer
        : Array.BinarySearch(rows, at.Row) is >= 0 and var row ? Moved(pointer, at, row)
        : null;

    private static string Moved(string pointer, RecordPointer at, int row)
    {
        var rest = pointer.Split('/', 4);
        return string.Create(CultureInfo.InvariantCulture, $"/{at.List}/{row}{(rest.Length > 3 ? "/" + rest[3] : "")}");
    }
}

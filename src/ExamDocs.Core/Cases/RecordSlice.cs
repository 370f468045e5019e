using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Cases;

/// <summary>What can bear on some items of a record, as a record of its own.</summary>
/// <param name="Record">The rows, in their order.</param>
/// <param name="Reading">What reading found wrong with these rows and with what is no row; places as in the slice.</param>
/// <param name="History">What other records know of its items.</param>
/// <param name="Places">Which row of the whole each row is.</param>
public sealed record RecordSlice(ExaminationRecord Record, IReadOnlyList<Finding> Reading, History History, SlicedPlaces Places);

/// <summary>Rows that are kept of a list.</summary>
/// <param name="Rows">In their order.</param>
/// <param name="Places">The place of each in the whole list, counted from 0, ascending.</param>
internal sealed record KeptRows<T>(IReadOnlyList<T> Rows, int[] Places);

/// <summary>Cuts lists.</summary>
internal static class KeptRows
{
    public static KeptRows<T> Of<T>(IReadOnlyList<T> all, Func<T, bool> isKept)
    {
        var kept = all.Index().Where(row => isKept(row.Item)).ToList();
        return new([.. kept.Select(row => row.Item)], [.. kept.Select(row => row.Index)]);
    }
}

/// <summary>The rows of a list by the group that each is of, so that a slice of a large record need not look at all of them.</summary>
internal sealed class GroupedRows<T>
{
    private readonly IReadOnlyList<T> _rows;
    private readonly Dictionary<int, List<int>> _byGroup = [];
    private readonly List<int> _nobodys = [];

    /// <param name="rows">The list.</param>
    /// <param name="groupOf">Null for a row that goes with every group.</param>
    public GroupedRows(IReadOnlyList<T> rows, Func<T, int?> groupOf)
    {
        _rows = rows;
        foreach (var (at, row) in rows.Index())
        {
            if (groupOf(row) is not { } group)
                _nobodys.Add(at);
            else if (_byGroup.TryGetValue(group, out var own))
                own.Add(at);
            else
                _byGroup[group] = [at];
        }
    }

    /// <summary>In their order.</summary>
    public KeptRows<T> In(IEnumerable<int> groups)
    {
        int[] places = [.. groups.SelectMany(g => _byGroup.GetValueOrDefault(g, [])).Concat(_nobodys).Order()];
        return new([.. places.Select(at => _rows[at])], places);
    }
}

using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Known;

/// <summary>What can bear on some items of a record, as a record of its own.</summary>
/// <param name="Record">The rows, in their order.</param>
/// <param name="Reading">What reading found wrong with these rows and with what is no row; places as in the slice.</param>
/// <param name="History">What other records know of its items.</param>
/// <param name="Places">Which row of the whole each row is.</param>
public sealed record RecordSlice(ExaminationRecord Record, IReadOnlyList<Finding> Reading, History History, SlicedPlaces Places);

/// <summary>Rows that are kept of a list.</summary>
/// <param name="Rows">In their order.</param>
/// <param name="Places">The place of each in the whole list, counted from 0.</param>
internal sealed record KeptRows<T>(IReadOnlyList<T> Rows, IReadOnlyList<int> Places);

/// <summary>Cuts lists.</summary>
internal static class KeptRows
{
    public static KeptRows<T> Of<T>(IReadOnlyList<T> all, Func<T, bool> isKept)
    {
        var kept = all.Index().Where(row => isKept(row.Item)).ToList();
        return new([.. kept.Select(row => row.Item)], [.. kept.Select(row => row.Index)]);
    }
}

using System.Collections.Concurrent;

namespace ExamDocs.Proof.Tests.Arrays;

/// <summary>Finds which combinations of levels some rows do not show, knowing nothing of how the rows were made.</summary>
internal static class CoverageCounter
{
    /// <summary>The combinations over all sets of that many columns that no row shows.</summary>
    public static IReadOnlyCollection<Combination> Missing(IReadOnlyList<int[]> rows, int columns, int levels, int strength)
    {
        ConcurrentQueue<Combination> missing = new();
        var byColumn = Enumerable.Range(0, columns).Select(c => rows.Select(row => (byte)row[c]).ToArray()).ToArray();
        var starts =
            from first in Enumerable.Range(0, columns)
            from second in Enumerable.Range(first + 1, columns - first - 1)
            select (first, second);
        Parallel.ForEach(starts, start => Walk(Start(byColumn, start, levels), [start.first, start.second]));
        return missing;

        void Walk(int[] indexes, int[] set)
        {
            if (set.Length == strength)
            {
                Add(indexes, set);
                return;
            }

            for (var next = set[^1] + 1; next <= columns - (strength - set.Length); next++)
            {
                Walk(Longer(indexes, byColumn[next], levels), [.. set, next]);
            }
        }

        void Add(int[] indexes, int[] set)
        {
            var seen = new bool[set.Aggregate(1, (n, _) => n * levels)];
            foreach (var index in indexes)
            {
                seen[index] = true;
            }

            for (var index = Array.IndexOf(seen, false); index >= 0; index = Array.IndexOf(seen, false, index + 1))
            {
                missing.Enqueue(new(set, Digits(index, set.Length, levels)));
            }
        }
    }

    private static int[] Start(byte[][] byColumn, (int First, int Second) start, int levels) =>
        Longer([.. byColumn[start.First].Select(level => (int)level)], byColumn[start.Second], levels);

    /// <summary>Each row's place among the combinations of one column more.</summary>
    private static int[] Longer(int[] indexes, byte[] column, int levels)
    {
        var longer = new int[indexes.Length];
        for (var row = 0; row < longer.Length; row++)
        {
            longer[row] = (indexes[row] * levels) + column[row];
        }

        return longer;
    }

    private static int[] Digits(int index, int count, int levels)
    {
        var digits = new int[count];
        for (var i = count - 1; i >= 0; i--, index /= levels)
        {
            digits[i] = index % levels;
        }

        return digits;
    }

    public sealed record Combination(int[] Columns, int[] Levels);
}

namespace ExamDocs.Proof.Tests.Arrays;

/// <summary>Counts which combinations of levels some rows show, knowing nothing of how the rows were made.</summary>
internal static class CoverageCounter
{
    /// <summary>How many combinations over all sets of that many columns no row shows.</summary>
    public static long Missing(IReadOnlyList<int[]> rows, int columns, int levels, int strength) =>
        Sets(columns, strength).Sum(set => Missing(rows, set, levels));

    public static long Missing(IEnumerable<int[]> rows, int[] set, int levels)
    {
        var size = set.Aggregate(1, (n, _) => n * levels);
        var seen = new bool[size];
        foreach (var row in rows)
        {
            seen[set.Aggregate(0, (index, column) => (index * levels) + row[column])] = true;
        }

        return seen.LongCount(s => !s);
    }

    private static IEnumerable<int[]> Sets(int columns, int strength)
    {
        if (strength == 0)
        {
            return [[]];
        }

        return Enumerable.Range(0, columns).SelectMany(last => Sets(last, strength - 1).Select(rest => rest.Append(last).ToArray()));
    }
}

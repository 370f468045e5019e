using ExamDocs.Proof.Tests.Generating;

namespace ExamDocs.Proof.Tests.Arrays;

/// <summary>
/// Rows drawn at random until few combinations are left over, and then a row for each of those: far fewer rows than a
/// polynomial array has where the columns outnumber the levels.
/// </summary>
internal static class DrawnArray
{
    public static int[] Row(int columns, int levels, long number)
    {
        var dice = Dice.For(number, 6);
        return [.. Enumerable.Range(0, columns).Select(_ => dice.Below(levels))];
    }

    public static IReadOnlyList<int[]> Covering(int columns, int levels, int strength, int drawn)
    {
        List<int[]> rows = [.. Enumerable.Range(0, drawn).Select(n => Row(columns, levels, n))];
        foreach (var combination in CoverageCounter.Missing(rows, columns, levels, strength))
        {
            var row = Row(columns, levels, rows.Count);
            foreach (var (column, level) in combination.Columns.Zip(combination.Levels))
            {
                row[column] = level;
            }

            rows.Add(row);
        }

        return rows;
    }
}

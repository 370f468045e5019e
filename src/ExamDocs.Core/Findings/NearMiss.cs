namespace ExamDocs.Core.Findings;

/// <summary>Suggests the allowed word that a mistyped one most resembles.</summary>
public static class NearMiss
{
    /// <summary>The closest word within two edits (a swap of neighbours counts as one); null where none is that close.</summary>
    public static string? Of(string typed, IEnumerable<string> allowed) =>
        AllOf(typed, allowed) is [var nearest, ..] ? nearest : null;

    /// <summary>Every word that is as close as the closest, in the order of their letters; none where none is that close.</summary>
    public static IReadOnlyList<string> AllOf(string typed, IEnumerable<string> allowed)
    {
        var near = allowed.Distinct(StringComparer.Ordinal)
            .Select(word => (Word: word, Edits: Edits(typed.ToLowerInvariant(), word.ToLowerInvariant())))
            .Where(x => x.Edits <= Math.Min(2, Math.Max(1, x.Word.Length / 3))).ToList();
        return near.Count == 0 ? [] : [.. near.Where(x => x.Edits == near.Min(n => n.Edits)).Select(x => x.Word).Order(StringComparer.Ordinal)];
    }

    /// <summary>Optimal string alignment distance.</summary>
    private static int Edits(string a, string b)
    {
        if (Math.Abs(a.Length - b.Length) > 2)
            return int.MaxValue;
        var d = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
            d[i, 0] = i;
        for (var j = 0; j <= b.Length; j++)
            d[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            if (i > 4 && RowLeast(d, i - 1) > 2 && RowLeast(d, i - 2) > 2)
                return int.MaxValue;
            for (var j = 1; j <= b.Length; j++)
            {
                var cost = a[i - 1] == b[j - 1] ? 0 : 1;
                d[i, j] = Math.Min(Math.Min(d[i - 1, j] + 1, d[i, j - 1] + 1), d[i - 1, j - 1] + cost);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
            }
        }
        return d[a.Length, b.Length];
    }

    private static int RowLeast(int[,] d, int row)
    {
        var least = int.MaxValue;
        for (var j = 0; j < d.GetLength(1); j++)
            least = Math.Min(least, d[row, j]);
        return least;
    }
}

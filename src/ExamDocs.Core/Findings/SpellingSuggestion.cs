namespace ExamDocs.Core.Findings;

/// <summary>Suggests the allowed word that a mistyped one most resembles.</summary>
public static class SpellingSuggestion
{
    private const int Most = 2;

    private const int TooFar = Most + 1;

    /// <summary>True where the word is near enough to the one typed to be suggested; both must be in one letter case.</summary>
    internal static bool IsNear(string typed, string word) => Edits(typed, word) <= Allowed(word);

    private static int Allowed(string word) => Math.Min(Most, Math.Max(1, word.Length / 3));

    /// <summary>The closest word within two edits (a swap of neighbours counts as one); null where none is that close.</summary>
    public static string? Of(string typed, IEnumerable<string> allowed) => AllOf(typed, allowed) is [var nearest, ..] ? nearest : null;

    /// <summary>Every word that is as close as the closest, sorted by letter; none where even the closest is too far.</summary>
    public static IReadOnlyList<string> AllOf(string typed, IEnumerable<string> allowed)
    {
        var near = allowed
            .Distinct(StringComparer.Ordinal)
            .Select(word => (Word: word, Edits: Edits(typed.ToLowerInvariant(), word.ToLowerInvariant())))
            .Where(x => x.Edits <= Allowed(x.Word))
            .ToList();
        return near.Count == 0
            ? []
            : [.. near.Where(x => x.Edits == near.Min(n => n.Edits)).Select(x => x.Word).Order(StringComparer.Ordinal)];
    }

    /// <summary>
    /// Optimal string alignment distance; where it is more than two, some number greater than two. Letters more than two places
    /// apart are never compared: two edits move no letter further.
    /// </summary>
    private static int Edits(string a, string b)
    {
        if (Math.Abs(a.Length - b.Length) > Most)
            return TooFar;
        var (before, last, row) = (new int[b.Length + 1], new int[b.Length + 1], new int[b.Length + 1]);
        Array.Fill(before, TooFar);
        for (var j = 0; j <= b.Length; j++)
            last[j] = Math.Min(j, TooFar);
        for (var i = 1; i <= a.Length; i++)
        {
            Array.Fill(row, TooFar);
            row[0] = Math.Min(i, TooFar);
            var least = row[0];
            for (var j = Math.Max(1, i - Most); j <= Math.Min(b.Length, i + Most); j++)
                least = Math.Min(least, row[j] = Cell(a, b, i, j, before, last, row));
            if (least > Most && last.Min() > Most)
                return TooFar;
            (before, last, row) = (last, row, before);
        }
        return last[b.Length];
    }

    private static int Cell(string a, string b, int i, int j, int[] before, int[] last, int[] row)
    {
        var edits = Math.Min(Math.Min(last[j] + 1, row[j - 1] + 1), last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1));
        if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
            edits = Math.Min(edits, before[j - 2] + 1);
        return Math.Min(edits, TooFar);
    }
}

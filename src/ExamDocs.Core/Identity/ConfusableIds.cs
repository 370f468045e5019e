namespace ExamDocs.Core.Identity;

/// <summary>Finds ids that a reader would mistake for one another.</summary>
public static class ConfusableIds
{
    /// <summary>
    /// True where they differ only in capitals, hyphens, and signs that look alike: 0 and o, 1 and l and i, 5 and s, rn and m, vv and w.
    /// </summary>
    public static bool Of(string one, string other) => string.Equals(Bare(one), Bare(other), StringComparison.Ordinal);

    private static string Bare(string id) =>
        id.ToLowerInvariant()
            .Replace("-", "", StringComparison.Ordinal)
            .Replace('0', 'o')
            .Replace('1', 'l')
            .Replace('i', 'l')
            .Replace('5', 's')
            .Replace("rn", "m", StringComparison.Ordinal)
            .Replace("vv", "w", StringComparison.Ordinal);
}

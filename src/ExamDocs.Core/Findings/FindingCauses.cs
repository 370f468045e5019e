namespace ExamDocs.Core.Findings;

/// <summary>
/// Ties findings to those that they follow from. A rule says itself what would explain its finding; beyond that, whatever is
/// found at a place whose value was lost follows from the loss. A finding never follows from one that is less grave, so that
/// no error goes untold for the sake of a warning.
/// </summary>
public static class FindingCauses
{
    /// <param name="findings">All findings of one record.</param>
    /// <returns>The same in the same order, each with <see cref="Finding.FollowsFrom"/>.</returns>
    public static IReadOnlyList<Finding> Tie(IReadOnlyList<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        var bare = findings.Select(f => f.FollowsFrom is null ? f : f with { FollowsFrom = null }).ToList();
        var causes = new int?[bare.Count];
        var byPath = Enumerable.Range(0, bare.Count).ToLookup(n => bare[n].Path, StringComparer.Ordinal);
        var lost = Enumerable
            .Range(0, bare.Count)
            .Where(n => bare[n].LostAt is not null)
            .ToLookup(n => bare[n].LostAt!, StringComparer.Ordinal);
        // What a rule names comes first: of two findings at one place it says which is the one to read.
        for (var n = 0; n < bare.Count; n++)
        {
            if (bare[n].PossibleCause is { Code: { } code } named)
                Link(n, byPath[named.Path].Where(c => string.Equals(bare[c].Code, code, StringComparison.Ordinal)));
        }
        for (var n = 0; n < bare.Count; n++)
        {
            if (bare[n].PossibleCause is { } named)
                Link(n, RecordPointer.WithinRow(named.Path).SelectMany(at => lost[at]));
            Link(n, RecordPointer.WithinRow(bare[n].Path).SelectMany(at => lost[at]));
        }
        return [.. bare.Select((f, n) => causes[n] is null ? f : f with { FollowsFrom = bare[Root(n)] })];

        void Link(int n, IEnumerable<int> candidates)
        {
            if (causes[n] is not null)
                return;
            foreach (var cause in candidates)
            {
                if (bare[cause].Severity < bare[n].Severity || Root(cause) == n)
                    continue;
                causes[n] = cause;
                return;
            }
        }

        int Root(int n)
        {
            while (causes[n] is { } cause)
                n = cause;
            return n;
        }
    }
}

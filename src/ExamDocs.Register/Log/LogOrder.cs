namespace ExamDocs.Register.Log;

/// <summary>What the entries say of themselves: that each is written as entries are, and stands where it says.</summary>
internal static class LogOrder
{
    /// <summary>One sentence for each entry unreadable, missing, doubled or out of its order.</summary>
    public static IReadOnlyList<string> Faults(IReadOnlyList<ReadOnlyMemory<byte>> entries)
    {
        var positions = new List<long>();
        var faults = new List<string>();
        for (var row = 0; row < entries.Count; row++)
        {
            var entry = LogEntryJson.Read(entries[row]);
            if (entry is null)
                faults.Add(FormattableString.Invariant($"Row {row} of the log was altered: it is not written as an entry is."));
            // Nothing else being known, an unreadable row is what should follow the one before.
            positions.Add(entry?.Position ?? (row == 0 ? 0 : positions[^1] + 1));
        }
        return [.. faults, .. Missing(positions), .. Doubled(positions), .. OutOfOrder(positions)];
    }

    private static IEnumerable<string> Missing(List<long> positions)
    {
        var expected = 0L;
        foreach (var position in positions.Distinct().Order())
        {
            if (position == expected + 1)
                yield return FormattableString.Invariant($"Log entry {expected} is missing.");
            else if (position > expected)
                yield return FormattableString.Invariant($"Log entries {expected} to {position - 1} are missing.");
            expected = position + 1;
        }
    }

    private static IEnumerable<string> Doubled(List<long> positions) =>
        positions.GroupBy(position => position).Where(group => group.Count() > 1)
            .Select(group => FormattableString.Invariant($"Log entry {group.Key} is there {group.Count()} times."));

    private static IEnumerable<string> OutOfOrder(List<long> positions) =>
        positions.Zip(positions.Order(), (at, ordered) => (at, ordered)).Index()
            .Where(row => row.Item.at != row.Item.ordered)
            .Select(row => FormattableString.Invariant($"Log entry {row.Item.at} stands out of its order, in row {row.Index}."));
}

namespace ExamDocs.Register.Log;

/// <summary>Whether each entry is written as entries are, and is at the position that it names.</summary>
internal sealed class LogOrder
{
    private readonly List<long> _positions = [];
    private readonly List<string> _unreadable = [];

    /// <returns>The entry; null where it is not written as one is.</returns>
    public LogEntry? Add(ReadOnlyMemory<byte> bytes)
    {
        var (entry, row) = (LogEntryJson.Read(bytes), _positions.Count);
        if (entry is null)
            _unreadable.Add(FormattableString.Invariant($"Row {row} of the log was altered: it is not written as an entry is."));
        // Nothing else being known, an unreadable row is what should follow the one before.
        _positions.Add(entry?.Position ?? (row == 0 ? 0 : _positions[^1] + 1));
        return entry;
    }

    /// <summary>One sentence for each entry unreadable, missing, doubled or out of its order.</summary>
    public IReadOnlyList<string> Faults() => [.. _unreadable, .. Missing(_positions), .. Doubled(_positions), .. OutOfOrder(_positions)];

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
        positions
            .GroupBy(position => position)
            .Where(group => group.Count() > 1)
            .Select(group => FormattableString.Invariant($"Log entry {group.Key} is there {group.Count()} times."));

    private static IEnumerable<string> OutOfOrder(List<long> positions) =>
        positions
            .Zip(positions.Order(), (at, ordered) => (at, ordered))
            .Index()
            .Where(row => row.Item.at != row.Item.ordered)
            .Select(row => FormattableString.Invariant($"Log entry {row.Item.at} is out of order, in row {row.Index}."));
}

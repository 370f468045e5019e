namespace ExamDocs.Register.Log;

/// <summary>
/// Whether each entry is written as entries are, and is at the position that it names. A log that is in order takes no memory: only
/// where each unbroken run of positions begins is kept.
/// </summary>
internal sealed class LogOrder
{
    private readonly List<(long First, long Count)> _runs = [];
    private readonly List<string> _unreadable = [];
    private long _rows;

    /// <returns>The entry; null where it is not written as one is.</returns>
    public LogEntry? Add(ReadOnlyMemory<byte> bytes)
    {
        var entry = LogEntryJson.Read(bytes);
        if (entry is null)
            _unreadable.Add(FormattableString.Invariant($"Row {_rows} of the log was altered: it is not written as an entry is."));
        // Nothing else being known, an unreadable row is what should follow the one before.
        Add(entry?.Position ?? Next);
        return entry;
    }

    /// <summary>An entry that something else vouches for, which is not read.</summary>
    public void Skip() => Add(Next);

    /// <summary>One sentence for each entry unreadable, missing, doubled or out of its order.</summary>
    public IReadOnlyList<string> Faults()
    {
        if (_runs is [] or [(0, _)])
            return _unreadable;
        List<long> positions = [.. _runs.SelectMany(Positions)];
        return [.. _unreadable, .. Missing(positions), .. Doubled(positions), .. OutOfOrder(positions)];
    }

    private long Next => _runs is [.., var last] ? last.First + last.Count : 0;

    private void Add(long position)
    {
        if (_runs.Count > 0 && position == Next)
            _runs[^1] = (_runs[^1].First, _runs[^1].Count + 1);
        else
            _runs.Add((position, 1));
        _rows++;
    }

    private static IEnumerable<long> Positions((long First, long Count) run)
    {
        for (var n = 0L; n < run.Count; n++)
            yield return run.First + n;
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

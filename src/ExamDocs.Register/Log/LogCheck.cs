namespace ExamDocs.Register.Log;

/// <summary>
/// Whether a log is what it was. What somebody alters in the log alone disagrees with the checkpoints that the register
/// keeps; whoever alters these too is caught by a checkpoint that was exported before.
/// </summary>
public static class LogCheck
{
    /// <summary>Looks at every entry and compares the log with each checkpoint.</summary>
    /// <param name="entries">The stored bytes of each, in the order stored.</param>
    /// <param name="kept">Checkpoints of the register itself; the last one is to cover every entry.</param>
    /// <param name="exported">A checkpoint kept elsewhere; null for none.</param>
    /// <returns>One sentence for each thing that is wrong; empty where nothing is.</returns>
    public static IReadOnlyList<string> Run(
        IReadOnlyList<ReadOnlyMemory<byte>> entries,
        IReadOnlyList<Checkpoint> kept,
        Checkpoint? exported = null
    )
    {
        ArgumentNullException.ThrowIfNull(entries);
        ArgumentNullException.ThrowIfNull(kept);
        var ordered = kept.OrderBy(checkpoint => checkpoint.Size);
        return Run(entries, ordered, exported is null ? [] : [exported], static (_, _, _) => { }).Faults;
    }

    /// <summary>Goes through the log once, beside the register's checkpoints, and keeps neither.</summary>
    /// <param name="entries">In the order stored.</param>
    /// <param name="kept">Checkpoints of the register itself, by size.</param>
    /// <param name="exported">Checkpoints kept elsewhere.</param>
    /// <param name="seen">Gets the row of each entry, from 0, its bytes and the entry; null where it is unreadable or vouched for.</param>
    /// <param name="vouched">So many entries are those of an exported checkpoint: their bytes count for its root and are not read.</param>
    /// <param name="full">Gets every full subtree: level, place and hash; left out, nobody does.</param>
    /// <returns>One sentence for each thing that is wrong, and the log that was gone through.</returns>
    internal static (IReadOnlyList<string> Faults, MerkleFrontier Log) Run(
        IEnumerable<ReadOnlyMemory<byte>> entries,
        IEnumerable<Checkpoint> kept,
        IReadOnlyList<Checkpoint> exported,
        Action<long, ReadOnlyMemory<byte>, LogEntry?> seen,
        long vouched = 0,
        Action<int, long, byte[]>? full = null
    )
    {
        using var own = new KeptRoots(kept);
        var (order, frontier, sizes) = (new LogOrder(), new MerkleFrontier(), exported.Select(c => c.Size).ToHashSet());
        var roots = new Dictionary<long, byte[]> { [0] = frontier.Root() };
        own.At(frontier);
        foreach (var bytes in entries)
        {
            LogEntry? entry = null;
            if (frontier.Size < vouched)
                order.Skip();
            else
                entry = order.Add(bytes);
            seen(frontier.Size, bytes, entry);
            frontier.Append(MerkleTree.LeafHash(bytes.Span), full ?? (static (_, _, _) => { }));
            own.At(frontier);
            if (sizes.Contains(frontier.Size))
                roots[frontier.Size] = frontier.Root();
        }
        var count = frontier.Size;
        IReadOnlyList<string> faults =
        [
            .. order.Faults(),
            .. own.Faults(count),
            .. exported.SelectMany(e => Exported(e, own.Last, roots, count)).Distinct(StringComparer.Ordinal),
        ];
        return (faults, frontier);
    }

    private static IEnumerable<string> Exported(Checkpoint exported, Checkpoint? kept, Dictionary<long, byte[]> roots, long count)
    {
        if (kept is not null && !string.Equals(exported.Origin, kept.Origin, StringComparison.Ordinal))
            yield return $"The exported checkpoint is of another register: {exported.Origin}.";
        else if (exported.Size > count)
            yield return $"The log was cut: the exported checkpoint is of {Invariant(exported.Size)}, {Invariant(count)} are there.";
        else if (!exported.Root.Span.SequenceEqual(roots[exported.Size]))
            yield return $"The exported checkpoint of {Invariant(exported.Size)} does not hold: {Between(0, exported.Size)}.";
    }

    internal static string Between(long sound, long size) =>
        (size - sound) switch
        {
            <= 0 => "its own root was altered",
            1 => FormattableString.Invariant($"log entry {sound} was altered, or its root was"),
            _ => FormattableString.Invariant(
                $"among log entries {sound} to {size - 1} something was altered, removed, added or put in another order"
            ),
        };

    internal static string Invariant(long count) => FormattableString.Invariant($"{count} {(count == 1 ? "entry" : "entries")}");
}

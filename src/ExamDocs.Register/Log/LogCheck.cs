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
        return Run(entries, kept, exported is null ? [] : [exported], static (_, _) => { });
    }

    /// <summary>Goes through the log once and keeps no entry; of each one a number and a root stay.</summary>
    /// <param name="entries">In the order stored.</param>
    /// <param name="kept">Checkpoints of the register itself.</param>
    /// <param name="exported">Checkpoints kept elsewhere.</param>
    /// <param name="seen">Gets the row of each entry, from 0, and the entry; null where it is unreadable.</param>
    /// <param name="full">Gets every full subtree: level, place and hash.</param>
    internal static IReadOnlyList<string> Run(
        IEnumerable<ReadOnlyMemory<byte>> entries,
        IReadOnlyList<Checkpoint> kept,
        IReadOnlyList<Checkpoint> exported,
        Action<int, LogEntry?> seen,
        Action<int, long, byte[]>? full = null
    )
    {
        ArgumentNullException.ThrowIfNull(kept);
        var ordered = kept.OrderBy(checkpoint => checkpoint.Size).ToList();
        var (order, frontier, sizes) = (new LogOrder(), new MerkleFrontier(), ordered.Concat(exported).Select(c => c.Size).ToHashSet());
        var roots = new Dictionary<long, byte[]> { [0] = frontier.Root() };
        foreach (var bytes in entries)
        {
            seen((int)frontier.Size, order.Add(bytes));
            frontier.Append(MerkleTree.LeafHash(bytes.Span), full ?? (static (_, _, _) => { }));
            if (sizes.Contains(frontier.Size))
                roots[frontier.Size] = frontier.Root();
        }
        var count = frontier.Size;
        return
        [
            .. order.Faults(),
            .. Kept(ordered, roots, count),
            .. Uncovered(ordered, count),
            .. exported.SelectMany(e => Exported(e, ordered, roots, count)).Distinct(StringComparer.Ordinal),
        ];
    }

    private static IEnumerable<string> Kept(List<Checkpoint> kept, Dictionary<long, byte[]> roots, long count)
    {
        foreach (var origin in kept.Select(c => c.Origin).Distinct(StringComparer.Ordinal).Skip(1))
            yield return $"A checkpoint that the register keeps is of another register: {origin}.";
        var sound = 0L;
        foreach (var checkpoint in kept.Where(c => c.Size <= count))
        {
            if (Matches(checkpoint, roots))
            {
                sound = checkpoint.Size;
                continue;
            }
            // Once one root is off, all later ones are.
            yield return $"The register's checkpoint of {Invariant(checkpoint.Size)} does not hold: {Between(sound, checkpoint.Size)}.";
            break;
        }
        if (kept.Count > 0 && kept[^1].Size > count)
            yield return $"The log was cut: the register's own checkpoint is of {Invariant(kept[^1].Size)}, {Invariant(count)} are there.";
    }

    private static IEnumerable<string> Uncovered(List<Checkpoint> kept, long count)
    {
        var covered = kept.Count == 0 ? 0 : kept[^1].Size;
        if (covered < count)
            yield return FormattableString.Invariant($"No checkpoint of the register covers the log entries from {covered} on.");
    }

    private static IEnumerable<string> Exported(Checkpoint exported, List<Checkpoint> kept, Dictionary<long, byte[]> roots, long count)
    {
        if (kept.Count > 0 && !string.Equals(exported.Origin, kept[^1].Origin, StringComparison.Ordinal))
            yield return $"The exported checkpoint is of another register: {exported.Origin}.";
        else if (exported.Size > count)
            yield return $"The log was cut: the exported checkpoint is of {Invariant(exported.Size)}, {Invariant(count)} are there.";
        else if (!Matches(exported, roots))
            yield return $"The exported checkpoint of {Invariant(exported.Size)} does not hold: {Between(0, exported.Size)}.";
    }

    private static bool Matches(Checkpoint checkpoint, Dictionary<long, byte[]> roots) =>
        checkpoint.Root.Span.SequenceEqual(roots[checkpoint.Size]);

    private static string Between(long sound, long size) =>
        (size - sound) switch
        {
            <= 0 => "its own root was altered",
            1 => FormattableString.Invariant($"log entry {sound} was altered, or its root was"),
            _ => FormattableString.Invariant(
                $"among log entries {sound} to {size - 1} something was altered, removed, added or put in another order"
            ),
        };

    private static string Invariant(long count) => FormattableString.Invariant($"{count} {(count == 1 ? "entry" : "entries")}");
}

namespace ExamDocs.Register.Log;

/// <summary>
/// Whether a log is what it was. What somebody alters in the log alone disagrees with the checkpoints that the register
/// keeps; who alters these too is found out by a checkpoint that was exported before.
/// </summary>
public static class LogCheck
{
    /// <summary>Looks at every entry and holds the log against each checkpoint.</summary>
    /// <param name="entries">The stored bytes of each, in the order stored.</param>
    /// <param name="kept">Checkpoints of the register itself; the last one is to cover every entry.</param>
    /// <param name="exported">A checkpoint kept elsewhere; null for none.</param>
    /// <returns>One sentence for each thing that is wrong; empty where nothing is.</returns>
    public static IReadOnlyList<string> Run(
        IReadOnlyList<ReadOnlyMemory<byte>> entries, IReadOnlyList<Checkpoint> kept, Checkpoint? exported = null)
    {
        ArgumentNullException.ThrowIfNull(entries);
        ArgumentNullException.ThrowIfNull(kept);
        var ordered = kept.OrderBy(checkpoint => checkpoint.Size).ToList();
        var roots = Roots(entries, [.. ordered.Select(c => c.Size), exported?.Size ?? 0]);
        return
        [
            .. LogOrder.Faults(entries), .. Kept(ordered, roots, entries.Count), .. Uncovered(ordered, entries.Count),
            .. Exported(exported, ordered, roots, entries.Count),
        ];
    }

    /// <summary>Roots of the beginnings of the log that are asked for and are there.</summary>
    private static Dictionary<long, byte[]> Roots(IReadOnlyList<ReadOnlyMemory<byte>> entries, HashSet<long> sizes)
    {
        var frontier = new MerkleFrontier();
        var roots = new Dictionary<long, byte[]> { [0] = frontier.Root() };
        foreach (var entry in entries)
        {
            frontier.Append(MerkleTree.LeafHash(entry.Span));
            if (sizes.Contains(frontier.Size))
                roots[frontier.Size] = frontier.Root();
        }
        return roots;
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
            yield return FormattableString.Invariant($"Log entries from {covered} on stand under no checkpoint of the register.");
    }

    private static IEnumerable<string> Exported(
        Checkpoint? exported, List<Checkpoint> kept, Dictionary<long, byte[]> roots, long count)
    {
        if (exported is null)
            yield break;
        if (kept.Count > 0 && !string.Equals(exported.Origin, kept[^1].Origin, StringComparison.Ordinal))
            yield return $"The exported checkpoint is of another register: {exported.Origin}.";
        else if (exported.Size > count)
            yield return $"The log was cut: the exported checkpoint is of {Invariant(exported.Size)}, {Invariant(count)} are there.";
        else if (!Matches(exported, roots))
            yield return $"The exported checkpoint of {Invariant(exported.Size)} does not hold: {Between(0, exported.Size)}.";
    }

    private static bool Matches(Checkpoint checkpoint, Dictionary<long, byte[]> roots) =>
        checkpoint.Root.Span.SequenceEqual(roots[checkpoint.Size]);

    private static string Between(long sound, long size) => (size - sound) switch
    {
        <= 0 => "its own root was altered",
        1 => FormattableString.Invariant($"log entry {sound} was altered, or its root was"),
        _ => FormattableString.Invariant($"among log entries {sound} to {size - 1} something was altered, removed, added or put in another order"),
    };

    private static string Invariant(long count) =>
        FormattableString.Invariant($"{count} {(count == 1 ? "entry" : "entries")}");
}

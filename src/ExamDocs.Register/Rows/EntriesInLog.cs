using ExamDocs.Register.Log;
using ExamDocs.Register.Model;

namespace ExamDocs.Register.Rows;

/// <summary>
/// Whether some entries are those under the last root of the log: the 64 entries around each are hashed, and their hash is led up to
/// the root over the nodes that are kept. What it costs hardly depends on how long the log is.
/// </summary>
internal sealed class EntriesInLog(LogRows log, LogNodes nodes)
{
    /// <summary>Blocks that are read with one statement: entries of large visits are long.</summary>
    private const int AtOnce = 8;

    private readonly HashSet<long> _sound = [];

    /// <param name="positions">Of entries that were read before this is asked.</param>
    /// <exception cref="RegisterAlteredException">One of them is not in it.</exception>
    public void Require(IEnumerable<long> positions)
    {
        var blocks = positions.Select(p => p / LogNodes.BlockSize).Distinct().Where(b => !_sound.Contains(b)).ToList();
        if (blocks.Count == 0)
            return;
        var last = log.Latest() ?? throw Altered();
        var whole = Math.Min(nodes.Covered(), last.Size / LogNodes.BlockSize * LogNodes.BlockSize);
        var peaks = MerkleFrontier.Peaks(whole).ToList();
        var paths = blocks.Where(b => b < whole / LogNodes.BlockSize).ToDictionary(b => b, b => PathOf(b, peaks).ToList());
        var kept = nodes.Read(
            peaks
                .Select(p => LogNodes.IdOf(p.Level, p.Place))
                .Concat(paths.Values.SelectMany(p => p.Select(n => LogNodes.IdOf(n.Level, n.Place))))
        );
        if (!peaks.TrueForAll(p => kept.ContainsKey(LogNodes.IdOf(p.Level, p.Place))))
            throw Altered();
        foreach (var some in paths.Chunk(AtOnce))
        {
            var leaves = log.At(some.SelectMany(p => PositionsOf(p.Key)))
                .ToLookup(e => e.Position / LogNodes.BlockSize, e => MerkleTree.LeafHash(e.Entry));
            foreach (var (block, path) in some)
                RequireBlock(block, [.. leaves[block]], path, kept);
        }
        var frontier = MerkleFrontier.Of(whole, [.. peaks.Select(p => kept[LogNodes.IdOf(p.Level, p.Place)])]);
        foreach (var entry in log.Between(whole, last.Size))
            frontier.Append(MerkleTree.LeafHash(entry));
        if (frontier.Size != last.Size || !frontier.Root().AsSpan().SequenceEqual(last.Root.Span))
            throw Altered();
        _sound.UnionWith(paths.Keys);
    }

    /// <summary>The neighbours on the way up, and at its end the full subtree at the right edge that it leads to.</summary>
    private static IEnumerable<(int Level, long Place)> PathOf(long block, List<(int Level, long Place)> peaks)
    {
        var (level, place) = (LogNodes.Lowest, block);
        for (; !peaks.Contains((level, place)); level++, place >>= 1)
            yield return (level, place ^ 1);
        yield return (level, place);
    }

    private static IEnumerable<long> PositionsOf(long block) =>
        Enumerable.Range(0, LogNodes.BlockSize).Select(n => (block * LogNodes.BlockSize) + n);

    private static void RequireBlock(
        long block,
        List<byte[]> leaves,
        List<(int Level, long Place)> path,
        IReadOnlyDictionary<long, byte[]> kept
    )
    {
        if (leaves.Count != LogNodes.BlockSize || !path.TrueForAll(n => kept.ContainsKey(LogNodes.IdOf(n.Level, n.Place))))
            throw Altered();
        var hash = MerkleTree.Root(leaves);
        foreach (var (level, place) in path.SkipLast(1))
        {
            var neighbour = kept[LogNodes.IdOf(level, place)];
            hash = (place & 1) == 1 ? MerkleTree.Node(hash, neighbour) : MerkleTree.Node(neighbour, hash);
        }
        if (!hash.AsSpan().SequenceEqual(kept[LogNodes.IdOf(path[^1].Level, path[^1].Place)]))
            throw Altered();
    }

    private static RegisterAlteredException Altered() => new("its log", "The log does not have the root that was kept for it.");
}

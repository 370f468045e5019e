namespace ExamDocs.Register.Log;

/// <summary>
/// The hash tree of a log with every node kept, for whoever asks for many paths: each costs no hashing. Path and root are those that
/// <see cref="MerkleTree"/> gives.
/// </summary>
internal sealed class MerkleLevels
{
    private readonly List<IReadOnlyList<byte[]>> _levels;

    /// <param name="leafHashes">Each as <see cref="MerkleTree.LeafHash"/> gives it.</param>
    public MerkleLevels(IReadOnlyList<byte[]> leafHashes)
    {
        _levels = [leafHashes];
        while (_levels[^1].Count > 1)
            _levels.Add(Above(_levels[^1]));
    }

    /// <summary>SHA-256 of nothing where there is no leaf.</summary>
    public byte[] Root => _levels[^1] is [var root] ? root : MerkleTree.Root([]);

    /// <param name="index">Of the leaf, from 0.</param>
    public IReadOnlyList<byte[]> Path(int index)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(index, _levels[0].Count);
        var path = new List<byte[]>();
        foreach (var level in _levels)
        {
            // The last node of a level of odd length has no neighbour, and goes up as it is.
            if ((index ^ 1) < level.Count)
                path.Add(level[index ^ 1]);
            index >>= 1;
        }
        return path;
    }

    private static List<byte[]> Above(IReadOnlyList<byte[]> level) =>
        [
            .. Enumerable
                .Range(0, (level.Count + 1) / 2)
                .Select(n => (2 * n) + 1 < level.Count ? MerkleTree.Node(level[2 * n], level[(2 * n) + 1]) : level[2 * n]),
        ];
}

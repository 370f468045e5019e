using System.Security.Cryptography;

namespace ExamDocs.Register.Log;

/// <summary>
/// The root of a growing log, without going through all of it again: it remembers one hash for each full subtree at the
/// right edge, as many as the size has ones in binary.
/// </summary>
public sealed class MerkleFrontier
{
    private readonly Stack<byte[]> _full = new();

    /// <summary>Number of entries so far.</summary>
    public long Size { get; private set; }

    /// <summary>The full subtrees at the right edge of a tree, from the left.</summary>
    /// <param name="size">Of the tree.</param>
    /// <returns>Of each its level, 0 for a single entry, and its place among those of its level, from 0.</returns>
    internal static IEnumerable<(int Level, long Place)> Peaks(long size)
    {
        for (var level = 62; level >= 0; level--)
        {
            if ((size >> level & 1) == 1)
                yield return (level, (size >> level) - 1);
        }
    }

    /// <param name="size">Number of entries.</param>
    /// <param name="peaks">Hashes of the subtrees that <see cref="Peaks"/> names.</param>
    internal static MerkleFrontier Of(long size, IReadOnlyList<byte[]> peaks)
    {
        var frontier = new MerkleFrontier { Size = size };
        foreach (var peak in peaks)
            frontier._full.Push(peak);
        return frontier;
    }

    /// <param name="leafHash">Of the next entry, as <see cref="MerkleTree.LeafHash"/> gives it.</param>
    public void Append(byte[] leafHash) => Append(leafHash, static (_, _, _) => { });

    /// <param name="leafHash">Of the next entry.</param>
    /// <param name="full">Gets each subtree that becomes full by it: level, place and hash.</param>
    internal void Append(byte[] leafHash, Action<int, long, byte[]> full)
    {
        ArgumentNullException.ThrowIfNull(leafHash);
        var (hash, level) = (leafHash, 0);
        full(level, Size, hash);
        // Each one at the end of the size is a full subtree as high as the new one has become.
        for (var size = Size; (size & 1) == 1; size >>= 1)
        {
            hash = MerkleTree.Node(_full.Pop(), hash);
            full(++level, Size >> level, hash);
        }
        _full.Push(hash);
        Size++;
    }

    /// <summary>The same as <see cref="MerkleTree.Root(IReadOnlyList{byte[]})"/> of all leaves so far.</summary>
    public byte[] Root()
    {
        byte[]? root = null;
        foreach (var hash in _full)
            root = root is null ? hash : MerkleTree.Node(hash, root);
        return root ?? SHA256.HashData([]);
    }
}

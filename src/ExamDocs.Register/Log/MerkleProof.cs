using System.Numerics;

namespace ExamDocs.Register.Log;

/// <summary>
/// Checks what <see cref="MerkleTree"/> gives out, without the tree: the procedures of RFC 9162 sections 2.1.3.2 and
/// 2.1.4.2, whose tree and proofs are those of RFC 6962. Nothing here throws; what is malformed is not shown.
/// </summary>
public static class MerkleProof
{
    /// <summary>Whether a leaf is shown to be at a place of the tree with this root.</summary>
    /// <param name="leafHash">Hash of the entry.</param>
    /// <param name="index">Its place, from 0.</param>
    /// <param name="size">Number of leaves of the tree.</param>
    /// <param name="path">As <see cref="MerkleTree.InclusionPath"/> gives it.</param>
    /// <param name="root">Of the tree.</param>
    public static bool ShowsInclusion(byte[] leafHash, long index, long size, IReadOnlyList<byte[]> path, byte[] root)
    {
        if (index < 0 || index >= size || !AreHashes(path, leafHash, root))
            return false;
        var (at, last, hash) = (index, size - 1, leafHash);
        foreach (var sibling in path)
        {
            if (last == 0)
                return false;
            if ((at & 1) == 1 || at == last)
            {
                hash = MerkleTree.Node(sibling, hash);
                var levels = LevelsToRightSibling(at);
                (at, last) = (at >> levels, last >> levels);
            }
            else
            {
                hash = MerkleTree.Node(hash, sibling);
            }
            (at, last) = (at >> 1, last >> 1);
        }
        return last == 0 && Same(hash, root);
    }

    /// <summary>Whether the earlier tree is shown to be the beginning of the later one.</summary>
    /// <param name="earlierSize">Number of leaves of the earlier tree, from 1.</param>
    /// <param name="laterSize">Number of leaves of the later tree.</param>
    /// <param name="earlierRoot">Of the earlier tree.</param>
    /// <param name="laterRoot">Of the later tree.</param>
    /// <param name="proof">As <see cref="MerkleTree.ConsistencyProof"/> gives it.</param>
    public static bool ShowsConsistency(long earlierSize, long laterSize, byte[] earlierRoot, byte[] laterRoot, IReadOnlyList<byte[]> proof)
    {
        if (earlierSize < 1 || earlierSize > laterSize || !AreHashes(proof, earlierRoot, laterRoot))
            return false;
        if (earlierSize == laterSize)
            return proof.Count == 0 && Same(earlierRoot, laterRoot);
        // An earlier tree that is full is itself the first hash, and is not sent.
        IReadOnlyList<byte[]> hashes = BitOperations.IsPow2(earlierSize) ? [earlierRoot, .. proof] : proof;
        return hashes.Count > 0
            && Climb(earlierSize - 1, laterSize - 1, hashes) is var (earlier, later)
            && Same(earlier, earlierRoot)
            && Same(later, laterRoot);
    }

    /// <returns>Both roots as the proof gives them; null where it is too long or too short.</returns>
    private static (byte[] Earlier, byte[] Later)? Climb(long at, long last, IReadOnlyList<byte[]> hashes)
    {
        var skipped = BitOperations.TrailingZeroCount(~at);
        (at, last) = (at >> skipped, last >> skipped);
        var (earlier, later) = (hashes[0], hashes[0]);
        foreach (var hash in hashes.Skip(1))
        {
            if (last == 0)
                return null;
            if ((at & 1) == 1 || at == last)
            {
                (earlier, later) = (MerkleTree.Node(hash, earlier), MerkleTree.Node(hash, later));
                var levels = LevelsToRightSibling(at);
                (at, last) = (at >> levels, last >> levels);
            }
            else
            {
                later = MerkleTree.Node(later, hash);
            }
            (at, last) = (at >> 1, last >> 1);
        }
        return last == 0 ? (earlier, later) : null;
    }

    /// <summary>Levels at which a node at the right edge has no sibling of its own.</summary>
    private static int LevelsToRightSibling(long at) => at == 0 ? 0 : BitOperations.TrailingZeroCount(at);

    private static bool AreHashes(IReadOnlyList<byte[]> several, byte[] first, byte[] second) =>
        several is not null && several.Append(first).Append(second).All(hash => hash is { Length: MerkleTree.HashLength });

    private static bool Same(byte[] one, byte[] other) => one.AsSpan().SequenceEqual(other);
}

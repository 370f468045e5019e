using System.Numerics;
using System.Security.Cryptography;

namespace ExamDocs.Register.Log;

/// <summary>
/// The hash tree over a log, RFC 6962 section 2.1: SHA-256, a leaf hashed behind the octet 0x00 and a node behind 0x01, so
/// that neither can pass for the other. A list of n &gt; 1 leaves is split at the greatest power of two below n.
/// </summary>
public static class MerkleTree
{
    /// <summary>Octets of every hash here.</summary>
    public const int HashLength = SHA256.HashSizeInBytes;

    /// <summary>Hash of one entry: SHA-256 of 0x00 and its bytes.</summary>
    public static byte[] LeafHash(ReadOnlySpan<byte> entry)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData([0x00]);
        hash.AppendData(entry);
        return hash.GetHashAndReset();
    }

    /// <summary>Hash of all leaves in their order; SHA-256 of nothing where there is none.</summary>
    /// <param name="leafHashes">Each as <see cref="LeafHash"/> gives it.</param>
    public static byte[] Root(IReadOnlyList<byte[]> leafHashes)
    {
        ArgumentNullException.ThrowIfNull(leafHashes);
        return Root(leafHashes, 0, leafHashes.Count);
    }

    /// <summary>What shows, together with the leaf, that it is in the tree: section 2.1.1, nearest the leaf first.</summary>
    /// <param name="leafHashes">All leaves of the tree.</param>
    /// <param name="index">Of the leaf, from 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such leaf.</exception>
    public static IReadOnlyList<byte[]> InclusionPath(IReadOnlyList<byte[]> leafHashes, int index)
    {
        ArgumentNullException.ThrowIfNull(leafHashes);
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(index, leafHashes.Count);
        var path = new List<byte[]>();
        Include(leafHashes, 0, leafHashes.Count, index, path);
        return path;
    }

    /// <summary>What shows that an earlier tree is the beginning of this one: section 2.1.2; empty where they are one.</summary>
    /// <param name="leafHashes">All leaves of the later tree.</param>
    /// <param name="earlierSize">Number of leaves of the earlier tree, from 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The earlier tree is empty, or greater than the later one.</exception>
    public static IReadOnlyList<byte[]> ConsistencyProof(IReadOnlyList<byte[]> leafHashes, int earlierSize)
    {
        ArgumentNullException.ThrowIfNull(leafHashes);
        ArgumentOutOfRangeException.ThrowIfLessThan(earlierSize, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(earlierSize, leafHashes.Count);
        var proof = new List<byte[]>();
        Connect(leafHashes, 0, leafHashes.Count, earlierSize, isWhole: true, proof);
        return proof;
    }

    internal static byte[] Node(ReadOnlySpan<byte> left, ReadOnlySpan<byte> right)
    {
        Span<byte> both = stackalloc byte[1 + (2 * HashLength)];
        both[0] = 0x01;
        left.CopyTo(both[1..]);
        right.CopyTo(both[(1 + HashLength)..]);
        return SHA256.HashData(both);
    }

    private static byte[] Root(IReadOnlyList<byte[]> leaves, int start, int count)
    {
        if (count == 0)
            return SHA256.HashData([]);
        if (count == 1)
            return leaves[start];
        var left = Split(count);
        return Node(Root(leaves, start, left), Root(leaves, start + left, count - left));
    }

    private static void Include(IReadOnlyList<byte[]> leaves, int start, int count, int index, List<byte[]> path)
    {
        if (count == 1)
            return;
        var left = Split(count);
        if (index < left)
        {
            Include(leaves, start, left, index, path);
            path.Add(Root(leaves, start + left, count - left));
        }
        else
        {
            Include(leaves, start + left, count - left, index - left, path);
            path.Add(Root(leaves, start, left));
        }
    }

    private static void Connect(IReadOnlyList<byte[]> leaves, int start, int count, int earlier, bool isWhole, List<byte[]> proof)
    {
        if (earlier == count)
        {
            // The earlier root itself is known to whoever asks; only a part of it is not.
            if (!isWhole)
                proof.Add(Root(leaves, start, count));
            return;
        }
        var left = Split(count);
        if (earlier <= left)
        {
            Connect(leaves, start, left, earlier, isWhole, proof);
            proof.Add(Root(leaves, start + left, count - left));
        }
        else
        {
            Connect(leaves, start + left, count - left, earlier - left, isWhole: false, proof);
            proof.Add(Root(leaves, start, left));
        }
    }

    /// <summary>The greatest power of two below a count of 2 or more.</summary>
    private static int Split(int count) => 1 << BitOperations.Log2((uint)(count - 1));
}

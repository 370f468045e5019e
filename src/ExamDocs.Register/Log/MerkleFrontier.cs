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

    /// <param name="leafHash">Of the next entry, as <see cref="MerkleTree.LeafHash"/> gives it.</param>
    public void Append(byte[] leafHash)
    {
        ArgumentNullException.ThrowIfNull(leafHash);
        var hash = leafHash;
        // Each one at the end of the size is a full subtree as high as the new one has become.
        for (var size = Size; (size & 1) == 1; size >>= 1)
            hash = MerkleTree.Node(_full.Pop(), hash);
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

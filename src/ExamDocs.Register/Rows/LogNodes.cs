using System.Data.Common;
using ExamDocs.Register.Log;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Rows;

/// <summary>
/// Hashes of full subtrees of the log's tree, so that the next root, and whether an entry is in the log, takes a few rows instead of
/// all entries.
/// </summary>
internal sealed class LogNodes(DbConnection connection)
{
    /// <summary>The lowest level that is kept: a subtree of 64 entries.</summary>
    public const int Lowest = 6;

    /// <summary>Entries below one of the lowest nodes.</summary>
    public const int BlockSize = 1 << Lowest;

    /// <summary>A level has fewer nodes than this: positions are whole numbers of 32 bits.</summary>
    private const int LevelSize = 1 << 26;

    /// <param name="level">Of the node; the entries have level 0.</param>
    /// <param name="place">From the left, from 0.</param>
    public static long IdOf(int level, long place) => ((level - (long)Lowest) * LevelSize) + place;

    /// <summary>The entries that nodes were kept for, always whole blocks.</summary>
    public long Covered() => (connection.Number($"SELECT coalesce(max(node), -1) FROM log_node WHERE node < {LevelSize}") + 1) * BlockSize;

    /// <summary>Hashes by the ids of the nodes; those that are not kept, or cannot be one, are left out.</summary>
    public IReadOnlyDictionary<long, byte[]> Read(IEnumerable<long> ids)
    {
        // They are reckoned here, never typed.
        var list = string.Join(", ", ids.Distinct());
        return list.Length == 0 ? new Dictionary<long, byte[]>() : Where($"node IN ({list})");
    }

    /// <inheritdoc cref="Read"/>
    public IReadOnlyDictionary<long, byte[]> All() => Where("node >= 0");

    /// <summary>Another run may have kept some already.</summary>
    public void Keep(IEnumerable<(int Level, long Place, byte[] Hash)> nodes) =>
        connection.Insert(
            "log_node (node, hash)",
            nodes.Select(n => new object?[] { (int)IdOf(n.Level, n.Place), Convert.ToBase64String(n.Hash) }),
            "ON CONFLICT (node) DO NOTHING"
        );

    /// <summary>The right edge of the tree over as many whole blocks as nodes are kept for; empty where one is missing.</summary>
    public MerkleFrontier Frontier()
    {
        var covered = Covered();
        var peaks = MerkleFrontier.Peaks(covered).Select(p => IdOf(p.Level, p.Place)).ToList();
        var kept = Read(peaks);
        return peaks.TrueForAll(kept.ContainsKey) ? MerkleFrontier.Of(covered, [.. peaks.Select(p => kept[p])]) : new();
    }

    private Dictionary<long, byte[]> Where(string condition) =>
        connection
            .Rows(row => (Id: row.GetInt64(0), Hash: row.GetString(1)), $"SELECT node, hash FROM log_node WHERE {condition}")
            .ToDictionary(n => n.Id, n => LogRows.Root(n.Hash));
}

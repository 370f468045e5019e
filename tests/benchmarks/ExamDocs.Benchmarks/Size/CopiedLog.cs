using ExamDocs.Register.Log;

namespace ExamDocs.Benchmarks.Size;

/// <summary>The log of a generated register: every entry with the root of the tree after it.</summary>
internal sealed class CopiedLog(string connection) : IDisposable
{
    private readonly CopiedTable _entries = new(connection, "log", "position, entry");
    private readonly CopiedTable _roots = new(connection, "checkpoint", "size, root");
    private readonly MerkleFrontier _frontier = new();

    public long Size => _frontier.Size;

    public void Append(Func<long, LogEntry> entry)
    {
        var bytes = entry(Size).Bytes();
        _entries.Row(Size, bytes);
        _frontier.Append(MerkleTree.LeafHash(bytes));
        _roots.Row(Size, Convert.ToBase64String(_frontier.Root()));
    }

    public void Complete()
    {
        _entries.Complete();
        _roots.Complete();
    }

    public void Dispose()
    {
        _entries.Dispose();
        _roots.Dispose();
    }
}

using ExamDocs.Register.Rows;

namespace ExamDocs.Register.Checking;

/// <summary>Whether the nodes that a register keeps of its log are those of its entries.</summary>
/// <param name="kept">By their ids.</param>
internal sealed class NodesCheck(IReadOnlyDictionary<long, byte[]> kept)
{
    private readonly HashSet<long> _foreign = [.. kept.Keys];
    private int _wrong;

    public void Add(int level, long place, byte[] hash)
    {
        if (level < LogNodes.Lowest)
            return;
        var id = LogNodes.IdOf(level, place);
        if (!_foreign.Remove(id) || !kept[id].AsSpan().SequenceEqual(hash))
            _wrong++;
    }

    public IEnumerable<string> Faults()
    {
        if (_wrong + _foreign.Count > 0)
            yield return "Some of the hashes kept of the log are not those of its entries, or are missing.";
    }
}

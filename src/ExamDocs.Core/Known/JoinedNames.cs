namespace ExamDocs.Core.Known;

/// <summary>Names that belong together, directly or by way of others.</summary>
internal sealed class JoinedNames
{
    private readonly Dictionary<string, int> _names = new(StringComparer.Ordinal);
    private readonly List<int> _above = [];

    /// <summary>The group that a name is in now; a name that is new is a group by itself.</summary>
    public int GroupOf(string name)
    {
        if (!_names.TryGetValue(name, out var at))
        {
            _names[name] = at = _above.Count;
            _above.Add(at);
        }
        return Top(at);
    }

    /// <summary>Null for a name that was never given.</summary>
    public int? Find(string name) => _names.TryGetValue(name, out var at) ? Top(at) : null;

    public void Join(string one, string other) => _above[GroupOf(one)] = GroupOf(other);

    private int Top(int at)
    {
        while (_above[at] != at)
            at = _above[at] = _above[_above[at]];
        return at;
    }
}

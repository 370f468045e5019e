namespace ExamDocs.Core.Identity;

/// <summary>Gives every spelling of one id the same name, so that comparing many ids with many costs little.</summary>
public sealed class FoldedIds
{
    private readonly Dictionary<string, string> _names = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _byKey = new(StringComparer.Ordinal);

    /// <summary>The name of an id: of all spellings that are one id by <see cref="Folded"/>, the one that was asked for first.</summary>
    public string Of(string id)
    {
        if (_names.TryGetValue(id, out var name))
            return name;
        var keys = Folded.Keys(id);
        name = keys.Select(k => _byKey.GetValueOrDefault(k)).FirstOrDefault(n => n is not null) ?? id;
        foreach (var key in keys)
            _byKey.TryAdd(key, name);
        return _names[id] = name;
    }

    /// <summary>True where both are given and are one id.</summary>
    public bool Same(string? one, string? other) =>
        one is not null
        && other is not null
        && (string.Equals(one, other, StringComparison.Ordinal) || string.Equals(Of(one), Of(other), StringComparison.Ordinal));
}

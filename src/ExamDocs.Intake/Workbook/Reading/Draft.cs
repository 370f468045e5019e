using System.Globalization;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>An object of the record while rows are still being added to it.</summary>
internal sealed class DraftObject(string pointer)
{
    private readonly List<KeyValuePair<string, object>> _members = [];

    public string Pointer => pointer;

    public void Add(string name, SourceNode value) => _members.Add(KeyValuePair.Create<string, object>(name, value));

    /// <summary>The text of a member; null where it is missing or something else.</summary>
    public string? Text(string name) => (Find<SourceNode>(name) as TextNode)?.Text;

    /// <summary>The object within, made where it is not there yet.</summary>
    public DraftObject Child(string name) => Find<DraftObject>(name) ?? Added(name, new DraftObject($"{pointer}/{name}"));

    /// <summary>The list within, made where it is not there yet.</summary>
    public DraftList List(string name) => Find<DraftList>(name) ?? Added(name, new DraftList($"{pointer}/{name}"));

    public ObjectNode Freeze()
    {
        var members = new KeyValuePair<string, SourceNode>[_members.Count];
        for (var at = 0; at < members.Length; at++)
            members[at] = KeyValuePair.Create(_members[at].Key, Frozen(_members[at].Value));
        return new(pointer, members);
    }

    internal static SourceNode Frozen(object draft) => draft switch
    {
        DraftObject inner => inner.Freeze(),
        DraftList list => list.Freeze(),
        _ => (SourceNode)draft,
    };

    private T? Find<T>(string name) where T : class
    {
        foreach (var member in _members)
        {
            if (member.Value is T found && string.Equals(member.Key, name, StringComparison.Ordinal))
                return found;
        }
        return null;
    }

    private T Added<T>(string name, T draft) where T : class
    {
        _members.Add(KeyValuePair.Create<string, object>(name, draft));
        return draft;
    }
}

/// <summary>A list of the record while rows are still being added to it.</summary>
internal sealed class DraftList(string pointer)
{
    private readonly List<object> _elements = [];

    public string Pointer => pointer;

    /// <summary>Pointer of the element that is added next.</summary>
    public string Next => string.Create(CultureInfo.InvariantCulture, $"{pointer}/{_elements.Count}");

    public DraftObject AddObject()
    {
        var element = new DraftObject(Next);
        _elements.Add(element);
        return element;
    }

    public void Add(SourceNode element) => _elements.Add(element);

    public ListNode Freeze() => new(pointer, [.. _elements.Select(DraftObject.Frozen)]);
}

using System.Globalization;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>An object of the record while rows are still being added to it.</summary>
/// <param name="likely">How many members it will have at least, if known.</param>
internal sealed class DraftObject(string pointer, int likely = 0)
{
    private readonly List<KeyValuePair<string, SourceNode>> _members = new(likely);

    /// <summary>Members that are drafts themselves: they stand empty among the others until all is read.</summary>
    private List<(int At, object Draft)>? _drafts;

    public string Pointer => pointer;

    /// <summary>Of an item: the examination that was filled in in the same row; null where none was.</summary>
    public DraftObject? Examination { get; set; }

    public void Add(string name, SourceNode value) => _members.Add(KeyValuePair.Create(name, value));

    /// <summary>The text of a member; null where it is missing or something else.</summary>
    public string? Text(string name)
    {
        foreach (var member in _members)
        {
            if (string.Equals(member.Key, name, StringComparison.Ordinal) && member.Value is not null)
                return (member.Value as TextNode)?.Text;
        }
        return null;
    }

    /// <summary>The object within, made where it is not there yet.</summary>
    public DraftObject Child(string name) => Find<DraftObject>(name) ?? Added(name, new DraftObject($"{pointer}/{name}"));

    /// <summary>The list within, made where it is not there yet.</summary>
    public DraftList List(string name) => Find<DraftList>(name) ?? Added(name, new DraftList($"{pointer}/{name}"));

    /// <summary>As it is now, once and for all.</summary>
    public ObjectNode Freeze()
    {
        foreach (var (at, draft) in _drafts ?? [])
            _members[at] = KeyValuePair.Create(_members[at].Key, Frozen(draft));
        return new(pointer, _members);
    }

    private static SourceNode Frozen(object draft) => draft is DraftObject inner ? inner.Freeze() : ((DraftList)draft).Freeze();

    private T? Find<T>(string name)
        where T : class
    {
        foreach (var (at, draft) in _drafts ?? [])
        {
            if (draft is T found && string.Equals(_members[at].Key, name, StringComparison.Ordinal))
                return found;
        }
        return null;
    }

    private T Added<T>(string name, T draft)
        where T : class
    {
        (_drafts ??= []).Add((_members.Count, draft));
        _members.Add(KeyValuePair.Create<string, SourceNode>(name, null!));
        return draft;
    }
}

/// <summary>A list of the record while rows are still being added to it.</summary>
internal sealed class DraftList(string pointer)
{
    private readonly List<SourceNode> _elements = [];

    /// <summary>Elements that are drafts themselves: they stand empty among the others until all is read.</summary>
    private List<(int At, DraftObject Draft)>? _drafts;

    public string Pointer => pointer;

    /// <summary>Pointer of the element that is added next.</summary>
    public string Next => string.Create(CultureInfo.InvariantCulture, $"{pointer}/{_elements.Count}");

    public DraftObject AddObject()
    {
        var element = new DraftObject(Next);
        (_drafts ??= []).Add((_elements.Count, element));
        _elements.Add(null!);
        return element;
    }

    public void Add(SourceNode element) => _elements.Add(element);

    /// <inheritdoc cref="DraftObject.Freeze"/>
    public ListNode Freeze()
    {
        foreach (var (at, draft) in _drafts ?? [])
            _elements[at] = draft.Freeze();
        return new(pointer, _elements);
    }
}

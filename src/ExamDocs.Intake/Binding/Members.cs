using System.Globalization;
using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Binding;

/// <summary>
/// The members of one object, taken one by one by name and kind. What is left over when all are taken is unknown;
/// what is there twice is reported, and the worse or no value holds.
/// </summary>
/// <remarks>How a member is read that is one value is said in a class for each kind: texts, numbers, dates, words.</remarks>
internal sealed class Members(ObjectNode node, FindingSink sink)
{
    /// <summary>Of what was typed, for a message.</summary>
    public const int MostShown = 80;

    private readonly KeyValuePair<string, SourceNode>[] _members = node.Members as KeyValuePair<string, SourceNode>[] ?? [.. node.Members];

    /// <summary>Of each member whether something asked for its name.</summary>
    private readonly bool[] _asked = new bool[node.Members.Count];

    /// <summary>The names asked for.</summary>
    private readonly List<string> _known = [];

    public string Pointer => node.Pointer;

    /// <summary>Whether a value was typed at all, readable or not.</summary>
    public bool IsTyped(string name) => Of(name).Any(m => !IsMissing(m));

    public bool IsTwice(string name) => Of(name).Skip(1).Any();

    public bool? Flag(string name)
    {
        bool? value = null;
        foreach (var member in Take(name))
        {
            if (member is BooleanNode flag)
                value = value is true || flag.Value;
            else if (!IsMissing(member))
                ReportKind(member, $"true or false");
        }
        return value;
    }

    /// <summary>An object within; null where it is missing.</summary>
    public T? Part<T>(string name, Func<Members, T> bind)
        where T : class
    {
        T? part = null;
        foreach (var member in Take(name))
        {
            if (member is ObjectNode inner)
                part ??= Bind(inner, bind);
            else if (!IsMissing(member))
                ReportKind(member, $"an object in braces");
        }
        return part;
    }

    /// <summary>A list of objects; an element of another kind is bound as an empty object, so that the others keep their places.</summary>
    public IReadOnlyList<T> List<T>(string name, Func<Members, T> bind)
    {
        var elements = Elements(name);
        var list = elements.TryGetNonEnumeratedCount(out var count) ? new List<T>(count) : [];
        foreach (var element in elements)
        {
            if (element is not ObjectNode)
                ReportKind(element, $"an object in braces");
            list.Add(element is ObjectNode inner ? Bind(inner, bind) : bind(new Members(new ObjectNode(element.Pointer, []), sink)));
        }
        return list;
    }

    /// <summary>Reports every member that nothing asked for.</summary>
    public void Finish()
    {
        for (var n = 0; n < _members.Length; n++)
        {
            if (_asked[n])
                continue;
            var member = _members[n];
            var near = SpellingSuggestion.Of(member.Key, _known);
            Report(
                IntakeRules.UnknownMember,
                member.Value.Pointer,
                $"'{TextGuard.Cut(member.Key, MostShown)}' is not a member of this object",
                near is null ? null : (Message)$"Did you mean '{near}'?"
            );
        }
    }

    /// <summary>Every value of this name, blank ones included; more than one is reported.</summary>
    public SourceNode[] Take(string name)
    {
        _known.Add(name);
        SourceNode? first = null;
        List<SourceNode>? all = null;
        for (var n = 0; n < _members.Length; n++)
        {
            if (!string.Equals(_members[n].Key, name, StringComparison.Ordinal))
                continue;
            _asked[n] = true;
            if (first is null)
                first = _members[n].Value;
            else
                (all ??= [first]).Add(_members[n].Value);
        }
        if (all is null)
            return first is null ? [] : [first];
        Report(IntakeRules.DuplicateMember, all[1].Pointer, $"'{name}' is written {all.Count} times");
        return [.. all];
    }

    /// <summary>The values of this name that are not blank.</summary>
    public SourceNode[] TakeTyped(string name)
    {
        var found = Take(name);
        return Array.Exists(found, IsMissing) ? Array.FindAll(found, m => !IsMissing(m)) : found;
    }

    /// <summary>The one value of this name; null where there is none, or more than one: nobody knows then which holds.</summary>
    public SourceNode? TakeOnly(string name) => TakeTyped(name) is [var only] ? only : null;

    /// <summary>The elements of the lists of this name.</summary>
    public IEnumerable<SourceNode> Elements(string name)
    {
        var found = Take(name);
        return found is [ListNode only] ? only.Elements : ElementsOf(found);
    }

    private IEnumerable<SourceNode> ElementsOf(SourceNode[] found)
    {
        foreach (var member in found)
        {
            if (member is ListNode list)
            {
                foreach (var element in list.Elements)
                    yield return element;
            }
            else if (!IsMissing(member))
            {
                ReportKind(member, $"a list in square brackets");
            }
        }
    }

    public void Report(RuleInfo rule, string pointer, Message message, Message? hint = null, PossibleCause? cause = null) =>
        sink.Report(rule, pointer, message, hint, cause);

    /// <summary>Reports a value that is not of the kind its member holds.</summary>
    public void ReportKind(SourceNode member, Message wanted) => Report(IntakeRules.WrongType, member.Pointer, $"this must be {wanted}");

    /// <inheritdoc cref="ReportKind(SourceNode, Message)"/>
    /// <returns>No value.</returns>
    public T? ReportKind<T>(SourceNode member, Message wanted)
    {
        ReportKind(member, wanted);
        return default;
    }

    public static bool IsMissing(SourceNode member) =>
        member is NullNode || (member is TextNode text && string.IsNullOrWhiteSpace(text.Text));

    private IEnumerable<SourceNode> Of(string name) =>
        node.Members.Where(m => string.Equals(m.Key, name, StringComparison.Ordinal)).Select(m => m.Value);

    private T Bind<T>(ObjectNode inner, Func<Members, T> bind)
    {
        var members = new Members(inner, sink);
        var bound = bind(members);
        members.Finish();
        return bound;
    }
}

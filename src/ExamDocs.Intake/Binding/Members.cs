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

    private readonly HashSet<string> _known = new(StringComparer.Ordinal);

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
    public IReadOnlyList<T> List<T>(string name, Func<Members, T> bind) =>
        [
            .. Elements(name)
                .Select(element =>
                {
                    if (element is ObjectNode inner)
                        return Bind(inner, bind);
                    ReportKind(element, $"an object in braces");
                    return bind(new Members(new ObjectNode(element.Pointer, []), sink));
                }),
        ];

    /// <summary>Reports every member that nothing asked for.</summary>
    public void Finish()
    {
        foreach (var member in node.Members.Where(m => !_known.Contains(m.Key)))
        {
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
    public List<SourceNode> Take(string name)
    {
        _known.Add(name);
        List<SourceNode> found = [];
        foreach (var (key, value) in node.Members)
        {
            if (string.Equals(key, name, StringComparison.Ordinal))
                found.Add(value);
        }
        if (found.Count > 1)
            Report(IntakeRules.DuplicateMember, found[1].Pointer, $"'{name}' is written {found.Count} times");
        return found;
    }

    /// <summary>The values of this name that are not blank.</summary>
    public IEnumerable<SourceNode> TakeTyped(string name) => Take(name).Where(m => !IsMissing(m));

    /// <summary>The one value of this name; null where there is none, or more than one: nobody knows then which holds.</summary>
    public SourceNode? TakeOnly(string name) => TakeTyped(name).ToList() is [var only] ? only : null;

    /// <summary>The elements of the lists of this name.</summary>
    public IEnumerable<SourceNode> Elements(string name)
    {
        foreach (var member in Take(name))
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

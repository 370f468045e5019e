using System.Globalization;
using ExamDocs.Core.Records;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.Intake;

/// <summary>Collects the members of one object of the tree.</summary>
internal sealed class TreeMembers(string pointer)
{
    private readonly List<KeyValuePair<string, SourceNode>> _members = [];

    public ObjectNode Node => new(pointer, _members);

    public TreeMembers Text(string name, string? text) => text is null ? this : Add(name, at => new TextNode(at, text));

    public TreeMembers Date(string name, LocalDate? date) => date is { } day ? Text(name, LocalDatePattern.Iso.Format(day)) : this;

    public TreeMembers Number(string name, decimal? number) => number is { } value ? Add(name, at => NumberAt(at, value)) : this;

    public TreeMembers Flag(string name, bool? flag) => flag is { } value ? Add(name, at => new BooleanNode(at, value)) : this;

    /// <summary>A flag whose absence means no.</summary>
    public TreeMembers FlagIfSet(string name, bool flag) => Flag(name, flag ? true : null);

    public TreeMembers Word<T>(string name, T? value, WordTable<T> words)
        where T : struct, Enum => Text(name, value is { } known ? words.WordFor(known) : null);

    public TreeMembers Texts(string name, IReadOnlyList<string> texts) =>
        texts.Count == 0 ? this : Add(name, at => new ListNode(at, [.. texts.Select((t, n) => new TextNode(Element(at, n), t))]));

    public TreeMembers Numbers(string name, IReadOnlyList<decimal?> numbers) =>
        Add(name, at => new ListNode(
            at,
            [
                .. numbers.Select(
                    (number, n) => number is { } value ? NumberAt(Element(at, n), value) : (SourceNode)new NullNode(Element(at, n))
                ),
            ]
        ));

    public TreeMembers Part<T>(string name, T? part, Action<TreeMembers, T> fill)
        where T : class => part is null ? this : Add(name, at => Filled(at, part, fill));

    public TreeMembers List<T>(string name, IReadOnlyList<T> parts, Action<TreeMembers, T> fill) =>
        Add(name, at => new ListNode(at, [.. parts.Select((part, n) => Filled(Element(at, n), part, fill))]));

    /// <summary>A list whose absence means that it is empty.</summary>
    public TreeMembers ListIfAny<T>(string name, IReadOnlyList<T> parts, Action<TreeMembers, T> fill) =>
        parts.Count == 0 ? this : List(name, parts, fill);

    private static ObjectNode Filled<T>(string at, T part, Action<TreeMembers, T> fill)
    {
        var members = new TreeMembers(at);
        fill(members, part);
        return members.Node;
    }

    private static string Element(string list, int n) => string.Create(CultureInfo.InvariantCulture, $"{list}/{n}");

    private static NumberNode NumberAt(string at, decimal value) => new(at, value.ToString(CultureInfo.InvariantCulture));

    public TreeMembers Add(string name, Func<string, SourceNode> node)
    {
        _members.Add(KeyValuePair.Create(name, node($"{pointer}/{name}")));
        return this;
    }
}

using System.Globalization;

namespace ExamDocs.Intake.Merging;

/// <summary>A row of one of the lists of a record, with the input it came from.</summary>
internal sealed class SourceRow
{
    private static readonly HashSet<string> Keyed = new(StringComparer.Ordinal) { "criterion", "id" };

    private readonly Lazy<string> _text;

    /// <param name="input">Which input, counted from 0.</param>
    /// <param name="read">That input.</param>
    /// <param name="list">The list, for example items.</param>
    /// <param name="index">Place in the list of its own input.</param>
    /// <param name="node">What it says.</param>
    /// <param name="flawed">Whether reading found anything at it: what was typed may then differ from what it says.</param>
    public SourceRow(int input, ReadResult read, string list, int index, ObjectNode node, bool flawed)
    {
        (Input, Read, List, Index, Node, IsFlawed) = (input, read, list, index, node, flawed);
        _text = new(() => string.Join('\n', Leaves(node, "").Select(l => $"{l.Name}={l.Value}").Order(StringComparer.Ordinal)));
    }

    public int Input { get; }

    public ReadResult Read { get; }

    public string List { get; }

    public int Index { get; }

    public ObjectNode Node { get; }

    public bool IsFlawed { get; }

    public string Pointer => string.Create(CultureInfo.InvariantCulture, $"/{List}/{Index}");

    /// <summary>The item that it is or is about; null where it names none.</summary>
    public string? Item => Member("item") ?? (List is "items" ? Member("id") : null);

    /// <summary>All that it says; rows of equal text say the same.</summary>
    public string Text => _text.Value;

    /// <summary>Where it, or a place within it, was typed.</summary>
    public string Located(string within = "") => Read.Sources.Locate(Pointer + within);

    public string? Member(string name) =>
        Node
            .Members.Where(m => string.Equals(m.Key, name, StringComparison.Ordinal))
            .Select(m => m.Value)
            .OfType<TextNode>()
            .FirstOrDefault()
            ?.Text;

    /// <summary>
    /// The single values in it: what each is called, where it stands below the row, and the value. Observations and
    /// defects are called by their criterion, items told apart by their id, so that their order does not matter.
    /// </summary>
    public IEnumerable<Leaf> Leaves() => Leaves(Node, "").Where(l => l.Value.Length > 0);

    private static IEnumerable<Leaf> Leaves(SourceNode node, string path, string name = "") =>
        node switch
        {
            ObjectNode o => o.Members.SelectMany(m => Leaves(m.Value, $"{path}/{m.Key}", $"{name}/{m.Key}")),
            ListNode l => l.Elements.SelectMany((e, n) => Leaves(e, $"{path}/{Number(n)}", $"{name}/{KeyOf(e) ?? Number(n)}")),
            TextNode t => [new(name, path, t.Text)],
            NumberNode n => [new(name, path, Plain(n.Raw))],
            BooleanNode b => [new(name, path, b.Value ? "yes" : "no")],
            _ => [],
        };

    /// <summary>11.0 and 11 are one number: a number cell does not keep the zeros after the point.</summary>
    private static string Plain(string raw) =>
        decimal.TryParse(raw, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? number.ToString("0.############################", CultureInfo.InvariantCulture)
            : raw;

    private static string Number(int n) => n.ToString(CultureInfo.InvariantCulture);

    private static string? KeyOf(SourceNode element) =>
        (element as ObjectNode)?.Members.Where(m => Keyed.Contains(m.Key)).Select(m => (m.Value as TextNode)?.Text).FirstOrDefault();
}

/// <param name="Name">What it is called within the row, for example /observations/cover-cut/state.</param>
/// <param name="Path">Where it stands below the row, for example /observations/3/state.</param>
internal sealed record Leaf(string Name, string Path, string Value);

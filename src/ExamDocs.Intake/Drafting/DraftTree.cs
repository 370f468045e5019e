using System.Globalization;

namespace ExamDocs.Intake.Drafting;

/// <summary>Finds and sets one value in the tree of a record.</summary>
internal static class DraftTree
{
    public static SourceNode? Find(SourceNode? node, ReadOnlySpan<string> steps)
    {
        foreach (var step in steps)
        {
            node = node switch
            {
                ObjectNode o => o.Members.FirstOrDefault(m => string.Equals(m.Key, step, StringComparison.Ordinal)).Value,
                ListNode l when Index(step) is { } n && n < l.Elements.Count => l.Elements[n],
                _ => null,
            };
        }
        return node;
    }

    /// <param name="node">The tree; null where there is none yet.</param>
    /// <param name="steps">Members and places in lists, from its root to the value.</param>
    /// <param name="value">Null to take away what is there.</param>
    /// <returns>The tree with the value; null where nothing is left of it.</returns>
    public static SourceNode? Set(SourceNode? node, ReadOnlySpan<string> steps, SourceNode? value)
    {
        if (steps.Length == 0)
            return value;
        return Index(steps[0]) is { } at
            ? InList((node as ListNode)?.Elements ?? [], at, steps[1..], value)
            : InObject((node as ObjectNode)?.Members ?? [], steps, value);
    }

    private static ListNode InList(IReadOnlyList<SourceNode> before, int at, ReadOnlySpan<string> within, SourceNode? value)
    {
        var elements = before.ToList();
        var element = Set(at < elements.Count ? elements[at] : null, within, value);
        if (at >= elements.Count && element is not null)
            elements.Add(element);
        else if (at < elements.Count && element is null && within.Length == 0)
            elements.RemoveAt(at);
        else if (at < elements.Count)
            // One that lost its last member stays, so that the others keep their places.
            elements[at] = element ?? new ObjectNode("", []);
        return new ListNode("", elements);
    }

    private static ObjectNode? InObject(
        IReadOnlyList<KeyValuePair<string, SourceNode>> before,
        ReadOnlySpan<string> steps,
        SourceNode? value
    )
    {
        var (name, members) = (steps[0], before.ToList());
        var at = members.FindIndex(m => string.Equals(m.Key, name, StringComparison.Ordinal));
        var member = Set(at < 0 ? null : members[at].Value, steps[1..], value);
        if (member is null && at >= 0)
            members.RemoveAt(at);
        else if (member is not null && at >= 0)
            members[at] = KeyValuePair.Create(name, member);
        else if (member is not null)
            members.Add(KeyValuePair.Create(name, member));
        return members.Count == 0 ? null : new ObjectNode("", members);
    }

    private static int? Index(string step) => int.TryParse(step, NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : null;
}

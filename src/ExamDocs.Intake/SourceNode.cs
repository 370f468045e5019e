using System.Runtime.InteropServices;

namespace ExamDocs.Intake;

/// <summary>
/// A value as it stands in the input, before anything is made of it: what JSON and workbooks have in common.
/// Every node knows its JSON pointer within the record.
/// </summary>
public abstract record SourceNode(JsonPlace At)
{
    public string Pointer => At.ToString();
}

/// <summary>Text; an empty or blank one counts as missing.</summary>
public sealed record TextNode(JsonPlace At, string Text) : SourceNode(At);

/// <summary>A number with the characters it was written in, so that no digit is lost.</summary>
public sealed record NumberNode(JsonPlace At, string Raw) : SourceNode(At);

public sealed record BooleanNode(JsonPlace At, bool Value) : SourceNode(At);

/// <summary>Nothing there: JSON null or an empty cell.</summary>
public sealed record NullNode(JsonPlace At) : SourceNode(At);

public sealed record ListNode(JsonPlace At, IReadOnlyList<SourceNode> Elements) : SourceNode(At);

/// <summary>Members in input order; the same name may stand twice, which the binder reports.</summary>
public sealed record ObjectNode(JsonPlace At, IReadOnlyList<KeyValuePair<string, SourceNode>> Members) : SourceNode(At)
{
    /// <summary>The node at a member path such as source/title; null where there is none.</summary>
    internal SourceNode? Find(string path)
    {
        SourceNode? at = this;
        foreach (var step in path.Split('/'))
            at = (at as ObjectNode)?.Members.FirstOrDefault(m => string.Equals(m.Key, step, StringComparison.Ordinal)).Value;
        return at;
    }

    /// <summary>The text at a member path; null where there is none, or something else.</summary>
    internal string? Text(string path) => (Find(path) as TextNode)?.Text;
}

/// <summary>
/// A JSON pointer (RFC 6901), put together only when it is asked for: most never are, and a record's would weigh more than
/// the record.
/// </summary>
/// <param name="Within">Pointer of the whole, or of what the member stands in.</param>
/// <param name="Member">Name or number of the member, escaped already; null for the whole.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct JsonPlace(string Within, string? Member = null)
{
    public static implicit operator JsonPlace(string pointer) => new(pointer);

    public override string ToString() => Member is null ? Within : $"{Within}/{Member}";
}

namespace ExamDocs.Intake;

/// <summary>
/// A value as it stands in the input, before anything is made of it: the common ground of JSON and workbooks.
/// Every node knows its JSON pointer within the record.
/// </summary>
public abstract record SourceNode(string Pointer);

/// <summary>Text; an empty or blank one counts as missing.</summary>
public sealed record TextNode(string Pointer, string Text) : SourceNode(Pointer);

/// <summary>A number with the characters it was written in, so that no digit is lost.</summary>
public sealed record NumberNode(string Pointer, string Raw) : SourceNode(Pointer);

public sealed record BooleanNode(string Pointer, bool Value) : SourceNode(Pointer);

/// <summary>Nothing there: JSON null or an empty cell.</summary>
public sealed record NullNode(string Pointer) : SourceNode(Pointer);

public sealed record ListNode(string Pointer, IReadOnlyList<SourceNode> Elements) : SourceNode(Pointer);

/// <summary>Members in input order; the same name may stand twice, which the binder reports.</summary>
public sealed record ObjectNode(string Pointer, IReadOnlyList<KeyValuePair<string, SourceNode>> Members) : SourceNode(Pointer);

using ExamDocs.Core.Identity;

namespace ExamDocs.UseCases.Issuing;

/// <summary>Ids of items in documents of several versions of one record, which may spell them otherwise.</summary>
internal static class ItemIds
{
    /// <summary>The keys to look an id up by; for a thing without an id the empty one, as in documents.</summary>
    public static IReadOnlyList<string> Keys(string? id) => Folded.Keys(id) is { Count: > 0 } keys ? keys : [id ?? ""];

    /// <summary>Whether both are one id, or both are none.</summary>
    public static bool Same(string? one, string? other) =>
        string.Equals(one ?? "", other ?? "", StringComparison.Ordinal) || Folded.Same(one, other);

    /// <summary>Whether both are the same ids in the same order.</summary>
    public static bool Same(IReadOnlyList<string> some, IReadOnlyList<string> others) =>
        some.Count == others.Count && some.Zip(others).All(pair => Same(pair.First, pair.Second));
}

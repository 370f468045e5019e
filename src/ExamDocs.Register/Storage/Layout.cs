namespace ExamDocs.Register.Storage;

/// <summary>The tables of a register. What was added by a version is a step of its own, so that every older register can take it.</summary>
internal static class Layout
{
    /// <summary>The layout that this version writes.</summary>
    public const int Version = 7;

    public static readonly IReadOnlyList<string> Tables =
    [
        "checkpoint",
        "content",
        "content_place",
        "counter",
        "document",
        "document_item",
        "ended_line",
        "examination",
        "item",
        "item_key",
        "line_end",
        "log",
        "log_node",
        "makers_limits",
        "merged_visit",
        "observation",
        "outcome",
        "person",
        "register",
        "renewal",
        "replacement",
        "visit",
        "visit_key",
    ];
}

namespace ExamDocs.Register.Storage;

/// <summary>The tables of a register. What was added by a version is a step of its own, so that every older register can take it.</summary>
internal static class Layout
{
    /// <summary>The layout that this version writes.</summary>
    public const int Version = 4;

    /// <summary>
    /// The table of the log's nodes, each the hash of a full subtree. It changes no layout either: it is made where it is missing, and
    /// without it the whole log is read.
    /// </summary>
    public const string LogNode = "log_node";

    public const string LogNodeStatement =
        "CREATE TABLE log_node (node INTEGER NOT NULL PRIMARY KEY CHECK (node >= 0), hash TEXT NOT NULL){strict}";

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
        LogNode,
        "makers_limits",
        "merged_visit",
        "observation",
        "outcome",
        "person",
        "register",
        "renewal",
        "replacement",
        "visit",
    ];

    /// <summary>
    /// Indexes that change no layout: an earlier version works with and without them. They are made where they are missing, and
    /// without them the same is found by reading more.
    /// </summary>
    /// <param name="visitOfEntry">As <see cref="RegisterDatabase.VisitOfEntry"/> has it.</param>
    public static IReadOnlyList<(string Name, string Statement)> Indexes(string visitOfEntry) =>
        [
            ("log_by_visit", $"CREATE INDEX log_by_visit ON log (({visitOfEntry}))"),
            ("item_by_serial", "CREATE INDEX item_by_serial ON item {equal}(serial)"),
            ("pending_document", "CREATE INDEX pending_document ON document (letter, year, sequence) WHERE state = 'pending'"),
            // A mark itself may be longer than a server takes into a tree.
            ("item_with_mark", "CREATE INDEX item_with_mark ON item (visit) WHERE owners_mark IS NOT NULL"),
            ("replacement_of", "CREATE INDEX replacement_of ON replacement (replaced)"),
        ];
}

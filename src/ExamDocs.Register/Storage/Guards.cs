namespace ExamDocs.Register.Storage;

/// <summary>A trigger that refuses a change.</summary>
/// <param name="Name">Of the trigger.</param>
/// <param name="Table">The table it guards.</param>
/// <param name="Event">UPDATE or DELETE.</param>
/// <param name="When">The changes that it refuses.</param>
/// <param name="Words">What it says.</param>
internal sealed record Guard(string Name, string Table, string Event, string When, string Words);

/// <summary>What nobody may change in the tables or delete from them.</summary>
internal static class Guards
{
    /// <summary>Whether the document of a row is issued, as a query of its own.</summary>
    public const string IsIssued = "(SELECT state FROM document WHERE number = OLD.number) = 'issued'";

    /// <summary>Ends the name of each guard against TRUNCATE, which a file does not have.</summary>
    public const string NeverEmptied = "_is_never_emptied";

    private static readonly string[] TakenWith =
    [
        "number",
        "letter",
        "year",
        "sequence",
        "kind",
        "job_key",
        "folder",
        "language",
        "visit",
        "copy_of",
        "origin",
    ];

    private static readonly string[] IssuedWith = [.. TakenWith, "state", "sha256", "pages", "outcomes", "void_reason", "run", "issued_on"];

    /// <summary>Tables of which no row is ever changed or deleted, beside those with words of their own.</summary>
    private static readonly string[] AppendOnly =
    [
        "checkpoint",
        "content_place",
        "document_item",
        "person",
        "item",
        "makers_limits",
        "examination",
        "observation",
        "renewal",
        "outcome",
        "item_key",
        "visit_key",
        "line_end",
        "ended_line",
        "merged_visit",
        "log_node",
    ];

    /// <summary>Moving documents to another place takes their bytes out of the register.</summary>
    public static Guard KeepsIssuedBytes { get; } =
        new("issued_bytes_are_kept", "content", "DELETE", IsIssued, "the bytes of an issued document are kept");

    public static readonly IReadOnlyList<Guard> All =
    [
        new("numbers_are_never_taken_back", "document", "DELETE", "TRUE", "a number that was taken stays listed"),
        new(
            "what_was_taken_stays_so",
            "document",
            "UPDATE",
            $"OLD.state = 'pending' AND NOT ({Same(TakenWith)})",
            "what a number was taken for is never changed"
        ),
        new(
            "what_is_issued_or_void_stays_so",
            "document",
            "UPDATE",
            $"OLD.state <> 'pending' AND NOT (OLD.state = 'issued' AND OLD.ended IS NULL AND NEW.ended IS NOT NULL AND {Same(IssuedWith)})",
            "an issued or void document is never changed"
        ),
        new("issued_bytes_stay", "content", "UPDATE", "TRUE", "the bytes of a document are never changed"),
        KeepsIssuedBytes,
        new("replacements_stay", "replacement", "UPDATE", "TRUE", "what replaced what is never changed"),
        new("replacements_are_kept", "replacement", "DELETE", IsIssued, "what an issued document replaced is kept"),
        new(
            "sequences_go_on",
            "counter",
            "UPDATE",
            $"NOT ({Same(["letter", "year"])} AND NEW.last > OLD.last)",
            "a sequence of numbers only goes on"
        ),
        new("sequences_are_kept", "counter", "DELETE", "TRUE", "a sequence of numbers is kept"),
        new("the_register_keeps_its_row", "register", "DELETE", "TRUE", "a register keeps its own row"),
        new(
            "the_register_stays_itself",
            "register",
            "UPDATE",
            $"NOT ({Same(["single", "id", "layout", "kept_since"])} AND NEW.log_size = OLD.log_size + 1)",
            "a register stays the one it is"
        ),
        new("log_is_never_changed", "log", "UPDATE", "TRUE", "the log is never changed"),
        new("log_is_kept", "log", "DELETE", "TRUE", "the log is kept"),
        new("visits_stay", "visit", "UPDATE", "TRUE", "a recorded visit is never changed"),
        new("visits_are_kept", "visit", "DELETE", "TRUE", "a recorded visit is kept"),
        .. AppendOnly.SelectMany(
            IEnumerable<Guard> (table) =>
                [
                    new($"{table}_is_never_changed", table, "UPDATE", "TRUE", $"a row of {table} is never changed"),
                    new($"{table}_is_kept", table, "DELETE", "TRUE", $"a row of {table} is kept"),
                ]
        ),
    ];

    private static string Same(IEnumerable<string> columns) =>
        string.Join(" AND ", columns.Select(c => $"NEW.{c} IS NOT DISTINCT FROM OLD.{c}"));
}

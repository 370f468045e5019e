namespace ExamDocs.Register.Opening;

/// <summary>
/// Where the bytes of issued documents are kept (a register without a row there keeps them itself), the nodes of the log's tree, each
/// the hash of a full subtree, and indexes by which a large register finds a few rows.
/// </summary>
internal static class FourthLayout
{
    /// <summary>Executed before anything is entered in the log, which keeps nodes of its entries from then on.</summary>
    public const string Statements = """
        CREATE TABLE content_place (
          position INTEGER NOT NULL PRIMARY KEY CHECK (position >= 0),
          word TEXT NOT NULL CHECK (word IN ('kept-at', 'cleared')),
          place TEXT NOT NULL,
          day TEXT NOT NULL
        ){strict};

        CREATE TABLE log_node (
          node INTEGER NOT NULL PRIMARY KEY CHECK (node >= 0),
          hash TEXT NOT NULL
        ){strict};
        """;

    /// <summary>A register of the third layout may have some of them. A mark may be longer than a server takes into a tree.</summary>
    /// <param name="visitOfEntry">As <see cref="Storage.RegisterDatabase.VisitOfEntry"/> has it.</param>
    public static string Indexes(string visitOfEntry) =>
        $$"""
            CREATE INDEX IF NOT EXISTS log_by_visit ON log (({{visitOfEntry}}));
            CREATE INDEX IF NOT EXISTS item_by_serial ON item {equal}(serial);
            CREATE INDEX IF NOT EXISTS pending_document ON document (letter, year, sequence) WHERE state = 'pending';
            CREATE INDEX IF NOT EXISTS item_with_mark ON item (visit) WHERE owners_mark IS NOT NULL;
            CREATE INDEX IF NOT EXISTS replacement_of ON replacement (replaced);
            """;
}

namespace ExamDocs.Register.Opening;

/// <summary>
/// The keys by which the versions of one visit find each other, however their reference is spelt, and an index by which the entries of
/// the log about a document are found. The keys of items are made anew, since more spellings count as one.
/// </summary>
internal static class FifthLayout
{
    /// <param name="documentOfEntry">As <see cref="Storage.RegisterDatabase.DocumentOfEntry"/> has it.</param>
    public static string Statements(string documentOfEntry) =>
        $$"""
            CREATE TABLE visit_key (
              visit INTEGER NOT NULL REFERENCES visit (visit),
              position INTEGER NOT NULL,
              key TEXT NOT NULL,
              PRIMARY KEY (visit, position)
            ){strict};

            CREATE INDEX visit_by_key ON visit_key {equal}(key);
            CREATE INDEX log_by_document ON log (({{documentOfEntry}})) WHERE ({{documentOfEntry}}) IS NOT NULL;
            """;
}

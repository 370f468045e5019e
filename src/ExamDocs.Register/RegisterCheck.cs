using Microsoft.Data.Sqlite;

namespace ExamDocs.Register;

/// <summary>Whether a register is sound in itself.</summary>
internal static class RegisterCheck
{
    /// <summary>One sentence for each thing that is wrong; empty where nothing is.</summary>
    public static IReadOnlyList<string> Run(SqliteConnection connection, DocumentRows rows) =>
        [.. Damage(connection), .. Gaps(connection), .. Contents(rows)];

    private static IEnumerable<string> Damage(SqliteConnection connection) =>
        connection.Rows(row => row.GetString(0), "PRAGMA integrity_check")
            .Where(line => !string.Equals(line, "ok", StringComparison.Ordinal))
            .Concat(connection.Rows(row => $"A row of {row.GetString(0)} refers to nothing.", "PRAGMA foreign_key_check"));

    private static List<string> Gaps(SqliteConnection connection) =>
        connection.Rows(
            row => FormattableString.Invariant(
                $"Sequence {row.GetString(0)}-{row.GetInt64(1)} has a gap: the last number is {row.GetInt64(2)}, {row.GetInt64(3)} are listed."),
            """
            SELECT counter.letter, counter.year, counter.last, count(document.number)
            FROM counter LEFT JOIN document ON document.letter = counter.letter AND document.year = counter.year
            GROUP BY counter.letter, counter.year
            HAVING count(document.number) <> counter.last OR max(document.sequence) <> counter.last
            """);

    private static IEnumerable<string> Contents(DocumentRows rows)
    {
        foreach (var document in rows.AllIssued())
        {
            string? problem = null;
            try
            {
                rows.Content(document.Number, document.Sha256);
            }
            catch (InvalidDataException altered)
            {
                problem = altered.Message;
            }
            if (problem is not null)
                yield return problem;
        }
    }
}

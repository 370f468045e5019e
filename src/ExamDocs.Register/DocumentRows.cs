using Microsoft.Data.Sqlite;

namespace ExamDocs.Register;

/// <summary>Documents as rows of the database. Every change is one transaction.</summary>
internal sealed class DocumentRows(SqliteConnection connection)
{
    private const string Columns = "number, kind, job_key, folder, sha256, pages, outcomes, void_reason";

    /// <summary>Takes the next number of a letter and year and records it pending.</summary>
    /// <exception cref="InvalidOperationException">The job has a document already, issued or pending.</exception>
    public string Add(char letter, int year, string kind, string jobKey, IReadOnlyList<string> items, string folder)
    {
        using var transaction = connection.BeginTransaction();
        if (connection.Number("SELECT count(*) FROM document WHERE job_key = $1 AND state <> 'void'", jobKey) > 0)
            throw new InvalidOperationException("The same job has a document already: look it up before taking a number.");
        var sequence = (int)connection.Number(
            """
            INSERT INTO counter (letter, year, last) VALUES ($1, $2, 1)
            ON CONFLICT (letter, year) DO UPDATE SET last = last + 1 RETURNING last
            """,
            letter.ToString(), year);
        var number = new DocumentNumber(letter, year, sequence).ToString();
        connection.Execute(
            "INSERT INTO document (number, letter, year, sequence, kind, job_key, folder) VALUES ($1, $2, $3, $4, $5, $6, $7)",
            number, letter.ToString(), year, sequence, kind, jobKey, folder);
        for (var position = 0; position < items.Count; position++)
            connection.Execute("INSERT INTO document_item VALUES ($1, $2, $3)", number, position, items[position]);
        transaction.Commit();
        return number;
    }

    /// <summary>Records what is about to be written, so that a later run can tell a whole file from a broken one.</summary>
    public void Prepare(string number, byte[] bytes, int pages, string outcomesJson)
    {
        using var transaction = connection.BeginTransaction();
        ChangePending(number, "sha256 = $2, pages = $3, outcomes = $4", DurableFile.Hash(bytes), pages, outcomesJson);
        connection.Execute("INSERT INTO content VALUES ($1, $2)", number, bytes);
        transaction.Commit();
    }

    public void MarkIssued(string number)
    {
        using var transaction = connection.BeginTransaction();
        ChangePending(number, "state = 'issued'");
        transaction.Commit();
    }

    public void Void(string number, string reason)
    {
        using var transaction = connection.BeginTransaction();
        ChangePending(number, "state = 'void', void_reason = $2", reason);
        connection.Execute("DELETE FROM content WHERE number = $1", number);
        transaction.Commit();
    }

    public IssuedDocument? IssuedFor(string jobKey) => Issued("job_key = $1", jobKey).SingleOrDefault();

    public IssuedDocument? IssuedAs(string number) => Issued("number = $1", number).SingleOrDefault();

    public IReadOnlyList<IssuedDocument> AllIssued() => Issued("$1 = $1", "");

    public IReadOnlyList<VoidedDocument> AllVoid() =>
        connection.Rows(
            row => new VoidedDocument(row.GetString(0), row.GetString(1), Items(row.GetString(0)), row.GetString(7)),
            $"SELECT {Columns} FROM document WHERE state = 'void' ORDER BY letter, year, sequence");

    /// <summary>Pending documents, with the hash of the file where one was about to be written.</summary>
    public IReadOnlyList<(PendingDocument Document, string? Sha256)> AllPending() =>
        connection.Rows(
            row => (Pending(row), row.IsDBNull(4) ? null : row.GetString(4)),
            $"SELECT {Columns} FROM document WHERE state = 'pending' ORDER BY letter, year, sequence");

    /// <exception cref="InvalidDataException">The bytes kept are missing or not those that were recorded.</exception>
    public byte[] Content(string number, string sha256)
    {
        var bytes = connection
            .Rows(row => row.GetFieldValue<byte[]>(0), "SELECT bytes FROM content WHERE number = $1", number)
            .SingleOrDefault();
        return bytes is not null && string.Equals(DurableFile.Hash(bytes), sha256, StringComparison.Ordinal)
            ? bytes
            : throw new InvalidDataException($"The register no longer holds {number} as it was issued.");
    }

    private List<IssuedDocument> Issued(string condition, string value) =>
        connection.Rows(
            Issued,
            $"SELECT {Columns} FROM document WHERE state = 'issued' AND {condition} ORDER BY letter, year, sequence",
            value);

    private void ChangePending(string number, string change, params object?[] values)
    {
        var rows = connection.Execute(
            $"UPDATE document SET {change} WHERE number = $1 AND state = 'pending'", [number, .. values]);
        if (rows != 1)
            throw new InvalidOperationException($"{number} is not pending in this register.");
    }

    private PendingDocument Pending(SqliteDataReader row) =>
        new(row.GetString(0), row.GetString(1), row.GetString(2), Items(row.GetString(0)), row.GetString(3));

    private IssuedDocument Issued(SqliteDataReader row) => new(
        row.GetString(0), row.GetString(1), row.GetString(2), Items(row.GetString(0)), row.GetString(3),
        row.GetString(4), row.GetInt32(5), row.GetString(6));

    private List<string> Items(string number) =>
        connection.Rows(row => row.GetString(0), "SELECT item FROM document_item WHERE number = $1 ORDER BY position", number);
}

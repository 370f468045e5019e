using System.Data.Common;
using System.Globalization;
using ExamDocs.Register.Log;
using ExamDocs.Register.Storage;
using NodaTime;

namespace ExamDocs.Register;

/// <summary>Documents as rows of the database. Every change is one transaction, and stands in the log.</summary>
internal sealed class DocumentRows(RegisterDatabase database, LogRows log, LocalDate today)
{
    private readonly DbConnection _connection = database.Connection;

    private string Today => Day(today)!;

    /// <summary>The day that is entered for what happens now.</summary>
    public LocalDate Now => today;

    /// <summary>The lines of documents that later visits ended.</summary>
    public LineEnds Ends => field ??= new(database, log, this);

    /// <summary>Takes the next number of a letter and year and records it pending.</summary>
    /// <exception cref="DocumentInProgressException">The job has a document already, issued or pending.</exception>
    public string Add(DocumentRequest request, string run)
    {
        using var transaction = database.BeginWriting();
        if (
            _connection.Number("SELECT count(*) FROM document WHERE job_key = $1 AND state <> 'void' AND ended IS NULL", request.JobKey) > 0
        )
            throw new DocumentInProgressException(request.Kind);
        var (letter, year) = (request.Letter.ToString(), request.Year);
        var sequence = (int)
            _connection.Number(
                """
                INSERT INTO counter (letter, year, last) VALUES ($1, $2, 1)
                ON CONFLICT (letter, year) DO UPDATE SET last = counter.last + 1 RETURNING last
                """,
                letter,
                year
            );
        var number = new DocumentNumber(request.Letter, year, sequence).ToString();
        _connection.Execute(
            """
            INSERT INTO document (number, letter, year, sequence, kind, job_key, folder, run, language, visit, copy_of)
            VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11)
            """,
            number,
            letter,
            year,
            sequence,
            request.Kind,
            request.JobKey,
            request.Folder,
            run,
            request.Language,
            request.Visit,
            request.CopyOf
        );
        for (var position = 0; position < request.Items.Count; position++)
            _connection.Execute("INSERT INTO document_item VALUES ($1, $2, $3)", number, position, request.Items[position]);
        foreach (var replaced in request.Replaces)
            _connection.Execute("INSERT INTO replacement VALUES ($1, $2, $3)", number, replaced.Number, replaced.Reason);
        transaction.Commit();
        return number;
    }

    /// <summary>Records what is about to be written, so that a later run can tell a whole file from a broken one.</summary>
    public void Prepare(string number, byte[] bytes, int pages, string outcomesJson)
    {
        using var transaction = database.BeginWriting();
        ChangePending(number, "sha256 = $2, pages = $3, outcomes = $4", DurableFile.Hash(bytes), pages, outcomesJson);
        _connection.Execute("INSERT INTO content VALUES ($1, $2)", number, bytes);
        transaction.Commit();
    }

    /// <summary>It is out, and what it replaces is no longer current, both at once.</summary>
    public void MarkIssued(string number)
    {
        using var transaction = database.BeginWriting();
        ChangePending(number, "state = 'issued', issued_on = $2, run = NULL", Today);
        var document = Find(number)!;
        log.Append(at => LogEntry.Issued(at, Logged(document), document.Sha256!, today, RowOf(document)));
        foreach (var (replaced, reason) in Replacements("number", number).Select(r => (r.Replaced, r.Reason)))
        {
            if (End(replaced, "replaced", today, reason))
                log.Append(at => LogEntry.Replaced(at, Logged(Find(replaced)!), number, reason, today));
        }
        // A visit that ends what it says may have been stored while it was printed.
        Ends.Apply(document);
        transaction.Commit();
    }

    public void Void(string number, string reason)
    {
        reason = Sql.Storable(reason);
        using var transaction = database.BeginWriting();
        ChangePending(number, "state = 'void', void_reason = $2, run = NULL", reason);
        _connection.Execute("DELETE FROM content WHERE number = $1", number);
        _connection.Execute("DELETE FROM replacement WHERE number = $1", number);
        var document = Find(number)!;
        log.Append(at => LogEntry.Void(at, Logged(document), reason, today, RowOf(document)));
        transaction.Commit();
    }

    /// <returns>False where it is not issued, or no longer current.</returns>
    public bool Withdraw(string number, string reason)
    {
        reason = Sql.Storable(reason);
        using var transaction = database.BeginWriting();
        if (!End(number, "withdrawn", today, reason))
            return false;
        log.Append(at => LogEntry.Withdrawn(at, Logged(Find(number)!), reason, today));
        transaction.Commit();
        return true;
    }

    /// <summary>Makes a pending number of a run that has ended this run's own. Only one of several that try gets it.</summary>
    public bool Claim(string number, string? from, string run)
    {
        using var transaction = database.BeginWriting();
        var claimed = _connection.Execute(
            "UPDATE document SET run = $2 WHERE number = $1 AND state = 'pending' AND coalesce(run, '') = $3",
            number,
            run,
            from ?? ""
        );
        transaction.Commit();
        return claimed == 1;
    }

    public DocumentStatus? IssuedFor(string jobKey) =>
        Read("state = 'issued' AND ended IS NULL AND job_key = $1", jobKey).SingleOrDefault();

    public DocumentStatus? Find(string number) => Read("number = $1", number).SingleOrDefault();

    public IReadOnlyList<DocumentStatus> In(DocumentState state) => Read("state = $1", Word(state));

    /// <summary>Current documents made from the visits of one reference.</summary>
    public IReadOnlyList<DocumentStatus> CurrentOf(string reference) =>
        Read("state = 'issued' AND ended IS NULL AND visit IN (SELECT visit FROM visit WHERE reference = $1)", reference);

    /// <summary>Documents issued from one visit that speak of an item, current or not.</summary>
    public IReadOnlyList<DocumentStatus> About(string item, int visit) =>
        Read(
            FormattableString.Invariant(
                $"state = 'issued' AND visit = {visit} AND number IN (SELECT number FROM document_item WHERE item = $1)"
            ),
            item
        );

    /// <summary>Pending numbers, with the hash of the file where one was about to be written, and the run they belong to.</summary>
    public IReadOnlyList<(PendingDocument Document, string? Sha256, string? Run)> Pending() =>
        _connection
            .Rows(
                row => (Number: row.GetString(0), Run: row.Text(1)),
                "SELECT number, run FROM document WHERE state = 'pending' ORDER BY letter, year, sequence"
            )
            .ConvertAll(row =>
                (Find(row.Number)!, row.Run) is var (d, run)
                    ? (new PendingDocument(d.Number, d.Kind, d.JobKey, d.Items, d.Folder), d.Sha256, run)
                    : default
            );

    /// <exception cref="InvalidDataException">The bytes kept are missing or not those that were recorded.</exception>
    public byte[] Content(string number, string sha256)
    {
        var bytes = _connection
            .Rows(row => row.GetFieldValue<byte[]>(0), "SELECT bytes FROM content WHERE number = $1", number)
            .SingleOrDefault();
        return bytes is not null && string.Equals(DurableFile.Hash(bytes), sha256, StringComparison.Ordinal)
            ? bytes
            : throw new InvalidDataException($"The register no longer holds {number} as it was issued.");
    }

    /// <summary>Issued documents of a visit that are current.</summary>
    public IReadOnlyList<DocumentStatus> CurrentOf(int visit) => Read("state = 'issued' AND ended IS NULL AND visit = $1", visit);

    /// <summary>Issued documents of a visit, current or not.</summary>
    public IReadOnlyList<DocumentStatus> Of(int visit) => Read("state = 'issued' AND visit = $1", visit);

    /// <returns>False where it is not issued, or ended before.</returns>
    public bool End(string number, string how, LocalDate on, string reason) =>
        _connection.Execute(
            "UPDATE document SET ended = $2, ended_on = $3, ended_reason = $4 WHERE number = $1 AND state = 'issued' AND ended IS NULL",
            number,
            how,
            Day(on),
            reason
        ) == 1;

    /// <summary>SHA-256 of what is listed of a document, except whether it has ended.</summary>
    public static string RowOf(DocumentStatus document) =>
        DurableFile.Hash(
            new CanonicalObject()
                .Text("job", document.JobKey)
                .Text("folder", document.Folder)
                .Number("pages", document.Pages)
                .Text("outcomes", document.OutcomesJson)
                .Text("sha256", document.Sha256)
                .Text("voidReason", document.VoidReason)
                .Day("issuedOn", document.IssuedOn)
                .Text("language", document.Language)
                .Number("visit", document.Visit)
                .Text("copyOf", document.CopyOf)
                .Text("origin", document.Origin)
                .Objects("replaces", document.Replaces.Select(r => new CanonicalObject().Text("number", r.Number).Text("reason", r.Reason)))
                .Bytes()
        );

    private void ChangePending(string number, string change, params object?[] values)
    {
        var rows = _connection.Execute($"UPDATE document SET {change} WHERE number = $1 AND state = 'pending'", [number, .. values]);
        if (rows != 1)
            throw new InvalidOperationException($"{number} is not pending in this register.");
    }

    internal static LoggedDocument Logged(DocumentStatus document) => new(document.Number, document.Kind, document.Items);

    private List<DocumentStatus> Read(string condition, object value) =>
        _connection
            .Rows(
                row => new DocumentStatus
                {
                    Number = row.GetString(0),
                    Kind = row.GetString(1),
                    JobKey = row.GetString(2),
                    Folder = row.GetString(3),
                    State = State(row.GetString(4)),
                    Sha256 = row.Text(5),
                    Pages = row.IsDBNull(6) ? null : row.GetInt32(6),
                    OutcomesJson = row.Text(7),
                    VoidReason = row.Text(8),
                    IssuedOn = Day(row.Text(9)),
                    Language = row.Text(10),
                    Visit = row.IsDBNull(11) ? null : row.GetInt32(11),
                    CopyOf = row.Text(12),
                    Ended = row.Text(13) switch
                    {
                        "replaced" => DocumentEnd.Replaced,
                        "withdrawn" => DocumentEnd.Withdrawn,
                        "ended" => DocumentEnd.Ended,
                        _ => null,
                    },
                    EndedOn = Day(row.Text(14)),
                    EndedReason = row.Text(15),
                    Origin = row.Text(16),
                },
                $"""
                SELECT number, kind, job_key, folder, state, sha256, pages, outcomes, void_reason, issued_on, language, visit, copy_of, ended, ended_on, ended_reason, origin
                FROM document WHERE {condition} ORDER BY letter, year, sequence
                """,
                value
            )
            .ConvertAll(d =>
                d with
                {
                    Items = _connection.Rows(
                        row => row.GetString(0),
                        "SELECT item FROM document_item WHERE number = $1 ORDER BY position",
                        d.Number
                    ),
                    EndedLines = Ends.In(d.Number),
                    Replaces = [.. Replacements("number", d.Number).Select(r => new Replacement(r.Replaced, r.Reason))],
                    ReplacedBy =
                        d.Ended is DocumentEnd.Replaced
                            ? [.. Replacements("replaced", d.Number).Select(r => r.Number).Where(IsIssued)]
                            : [],
                }
            );

    private bool IsIssued(string number) =>
        _connection.Number("SELECT count(*) FROM document WHERE number = $1 AND state = 'issued'", number) == 1;

    private List<(string Number, string Replaced, string Reason)> Replacements(string by, string number) =>
        _connection.Rows(
            row => (row.GetString(0), row.GetString(1), row.GetString(2)),
            $"SELECT number, replaced, reason FROM replacement WHERE {by} = $1 ORDER BY number, replaced",
            number
        );

    private static string Word(DocumentState state) =>
        state switch
        {
            DocumentState.Issued => "issued",
            DocumentState.Void => "void",
            _ => "pending",
        };

    private static DocumentState State(string word) =>
        word switch
        {
            "issued" => DocumentState.Issued,
            "void" => DocumentState.Void,
            _ => DocumentState.Pending,
        };

    internal static string? Day(LocalDate? day) => day?.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);

    internal static LocalDate? Day(string? text) => text is null ? null : NodaTime.Text.LocalDatePattern.Iso.Parse(text).GetValueOrThrow();
}

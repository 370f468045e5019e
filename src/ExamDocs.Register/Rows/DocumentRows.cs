using System.Data.Common;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Rows;

/// <summary>Reads the documents that a register lists.</summary>
internal sealed class DocumentRows
{
    private readonly DbConnection _connection;

    public DocumentRows(DbConnection connection) => (_connection, EndedLines) = (connection, new(connection));

    /// <summary>The lines of documents that later visits ended.</summary>
    public EndedLineRows EndedLines { get; }

    /// <summary>The current document of a job; null where there is none.</summary>
    public DocumentStatus? IssuedFor(string jobKey) =>
        Read("state = 'issued' AND ended IS NULL AND job_key = $1", jobKey).SingleOrDefault();

    /// <summary>Whether a job has a document that is current, or not out yet.</summary>
    public bool HasLive(string jobKey) =>
        _connection.Number("SELECT count(*) FROM document WHERE job_key = $1 AND state <> 'void' AND ended IS NULL", jobKey) > 0;

    public DocumentStatus? Find(string number) => Read("number = $1", number).SingleOrDefault();

    public IReadOnlyList<DocumentStatus> Find(RegisterDatabase database, IReadOnlyList<string> numbers) =>
        Read($"number {database.AmongTexts("$1")}", System.Text.Json.JsonSerializer.Serialize(numbers));

    public IReadOnlyList<DocumentStatus> In(DocumentState state) => Read("state = $1", DocumentWords.Of(state));

    /// <summary>Issued documents of a visit that are current.</summary>
    public IReadOnlyList<DocumentStatus> CurrentOf(int visit) => Read("state = 'issued' AND ended IS NULL AND visit = $1", visit);

    /// <summary>Issued documents of a visit, current or not.</summary>
    public IReadOnlyList<DocumentStatus> Of(int visit) => Read("state = 'issued' AND visit = $1", visit);

    /// <summary>Issued documents of a visit that name an item, current or not.</summary>
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

    /// <summary>A statement for each table, however many documents there are.</summary>
    private List<DocumentStatus> Read(string condition, params object[] values)
    {
        var these = $"IN (SELECT number FROM document WHERE {condition})";
        var items = _connection
            .Rows(
                row => (Number: row.GetString(0), Item: row.GetString(1)),
                $"SELECT number, item FROM document_item WHERE number {these} ORDER BY number, position",
                values
            )
            .ToLookup(i => i.Number, i => i.Item, StringComparer.Ordinal);
        var ended = EndedLines.In(these, values);
        var replaces = Replacements("number", these, values).ToLookup(r => r.Number, StringComparer.Ordinal);
        var replacedBy = Replacements("replaced", these, values).ToLookup(r => r.Replaced, StringComparer.Ordinal);
        return _connection
            .Rows(
                Status,
                $"""
                SELECT number, kind, job_key, folder, state, sha256, pages, outcomes, void_reason, issued_on, language, visit, copy_of,
                ended, ended_on, ended_reason, origin
                FROM document WHERE {condition} ORDER BY letter, year, sequence
                """,
                values
            )
            .ConvertAll(d =>
                d with
                {
                    Items = [.. items[d.Number]],
                    EndedLines = [.. ended[d.Number]],
                    Replaces = [.. replaces[d.Number].Select(r => new Replacement(r.Replaced, r.Reason))],
                    ReplacedBy = d.Ended is DocumentEnd.Replaced ? [.. replacedBy[d.Number].Select(r => r.Number).Where(IsIssued)] : [],
                }
            );
    }

    private static DocumentStatus Status(DbDataReader row) =>
        new()
        {
            Number = row.GetString(0),
            Kind = row.GetString(1),
            JobKey = row.GetString(2),
            Folder = row.GetString(3),
            State = DocumentWords.State(row.GetString(4)),
            Sha256 = row.Text(5),
            Pages = row.Integer(6),
            OutcomesJson = row.Text(7),
            VoidReason = row.Text(8),
            IssuedOn = row.Day(9),
            Language = row.Text(10),
            Visit = row.Integer(11),
            CopyOf = row.Text(12),
            Ended = DocumentWords.End(row.Text(13)),
            EndedOn = row.Day(14),
            EndedReason = row.Text(15),
            Origin = row.Text(16),
        };

    private bool IsIssued(string number) =>
        _connection.Number("SELECT count(*) FROM document WHERE number = $1 AND state = 'issued'", number) == 1;

    private List<(string Number, string Replaced, string Reason)> Replacements(string by, string these, object[] values) =>
        _connection.Rows(
            row => (row.GetString(0), row.GetString(1), row.GetString(2)),
            $"SELECT number, replaced, reason FROM replacement WHERE {by} {these} ORDER BY number, replaced",
            values
        );
}

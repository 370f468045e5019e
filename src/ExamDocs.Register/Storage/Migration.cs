using System.Data.Common;
using ExamDocs.Core.Identity;
using ExamDocs.Register.Log;
using NodaTime;

namespace ExamDocs.Register.Storage;

/// <summary>Brings the content of an older register to the present layout, within the transaction that changes its tables.</summary>
internal static class Migration
{
    /// <summary>
    /// What was issued and voided before there was a log is entered in the order of its numbers, on the day of the change.
    /// </summary>
    public static void ToSecond(DbConnection connection, LocalDate today)
    {
        connection.Execute(
            "INSERT INTO register (single, id, layout, log_size) VALUES (1, $1, $2, 0)",
            Guid.NewGuid().ToString("N"),
            Layout.Version
        );
        var log = new LogRows(connection);
        var older = connection.Rows(
            row => (Number: row.GetString(0), Kind: row.GetString(1), Sha256: row.Text(2), Reason: row.Text(3)),
            "SELECT number, kind, sha256, void_reason FROM document WHERE state <> 'pending' ORDER BY letter, year, sequence"
        );
        foreach (var document in older)
        {
            var logged = new LoggedDocument(
                document.Number,
                document.Kind,
                connection.Rows(
                    row => row.GetString(0),
                    "SELECT item FROM document_item WHERE number = $1 ORDER BY position",
                    document.Number
                )
            );
            log.Append(at =>
                document.Sha256 is { } sha256 && document.Reason is null
                    ? LogEntry.Issued(at, logged, sha256, today)
                    : LogEntry.Void(at, logged, document.Reason ?? "not recorded", today)
            );
        }
    }

    /// <summary>
    /// Which register it is, what is listed of each document, and each visit with its outcomes are entered in the log, and the keys
    /// of each visit's items are taken from its record.
    /// </summary>
    public static void ToThird(RegisterDatabase database, LocalDate today)
    {
        var (connection, log) = (database.Connection, new LogRows(database.Connection));
        var since = connection
            .Rows(
                row => row.Text(0),
                "SELECT min(day) FROM (SELECT stored_on AS day FROM visit UNION ALL SELECT issued_on FROM document) days"
            )
            .Single()
            ?? DocumentRows.Day(today)!;
        connection.Execute("UPDATE register SET layout = $1, kept_since = $2", Layout.Version, since);
        log.Append(at =>
            LogEntry.Of(at, connection.Rows(row => row.GetString(0), "SELECT id FROM register").Single(), DocumentRows.Day(since)!.Value)
        );
        var documents = new DocumentRows(database, log, today);
        foreach (var document in documents.In(DocumentState.Issued).Concat(documents.In(DocumentState.Void)))
            log.Append(at => LogEntry.Listed(at, DocumentRows.Logged(document), DocumentRows.RowOf(document), today));
        var visits = new VisitRegister(database, log, documents.Ends, today);
        foreach (var visit in visits.All())
        {
            foreach (var row in VisitRows.Keys(visit.Visit, StoredKeys.Of(Bytes(connection, visit.Visit))))
                connection.Execute("INSERT INTO item_key VALUES ($1, $2, $3, $4)", row.Values);
            var logged = new LoggedVisit(visit.Visit, visit.Sha256) { Outcomes = visits.OutcomesOf(visit.Visit) };
            log.Append(at => LogEntry.Remembered(at, logged, visit.StoredOn ?? today));
        }
    }

    private static byte[] Bytes(DbConnection connection, int visit) =>
        connection.Rows(row => row.GetFieldValue<byte[]>(0), "SELECT record FROM visit WHERE visit = $1", visit).Single();
}

using System.Data.Common;
using ExamDocs.Core.Identity;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;
using NodaTime;

namespace ExamDocs.Register.Opening;

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
        var connection = database.Connection;
        var since = connection
            .Rows(
                row => row.Text(0),
                "SELECT min(day) FROM (SELECT stored_on AS day FROM visit UNION ALL SELECT issued_on FROM document) days"
            )
            .Single()
            ?? StoredDay.Of(today);
        connection.Execute("UPDATE register SET layout = $1, kept_since = $2", Layout.Version, since);
        var rows = new RegisterRows(database, today);
        var id = connection.Rows(row => row.GetString(0), "SELECT id FROM register").Single();
        rows.Log.Append(at => LogEntry.Of(at, id, StoredDay.Read(since)));
        foreach (var document in rows.Documents.In(DocumentState.Issued).Concat(rows.Documents.In(DocumentState.Void)))
            rows.Log.Append(at => LogEntry.Listed(at, LoggedDocument.Of(document), LoggedDocument.RowOf(document), today));
        foreach (var visit in rows.Visits.All())
        {
            connection.Insert("item_key", VisitRows.Keys(visit.Visit, StoredKeys.Of(Bytes(connection, visit.Visit))).Select(r => r.Values));
            var logged = new LoggedVisit(visit.Visit, visit.Sha256) { Outcomes = rows.Visits.OutcomesOf(visit.Visit) };
            rows.Log.Append(at => LogEntry.Remembered(at, logged, visit.StoredOn ?? today));
        }
    }

    /// <summary>The bytes stay where they are, in the register itself; the nodes of the log so far are kept.</summary>
    public static void ToFourth(DbConnection connection)
    {
        connection.Execute("UPDATE register SET layout = $1", Layout.Version);
        new LogRows(connection).MakeNodes();
    }

    /// <summary>
    /// The last step, whichever layout a register had: the keys of visits and of items are made anew where they are others by now. Layout 5
    /// brought those of visits, layouts 6 and 7 more spellings that count as one.
    /// </summary>
    public static void ToLatestKeys(RegisterDatabase database)
    {
        var connection = database.Connection;
        connection.Execute("UPDATE register SET layout = $1", Layout.Version);
        foreach (var visit in new RememberedVisits(database).Stream())
        {
            MakeAnew("visit_key", VisitRows.Keys(visit.Visit, visit.Reference));
            var keys = StoredKeys.Of(Bytes(connection, visit.Visit));
            if (keys.Count > 0)
                MakeAnew("item_key", VisitRows.Keys(visit.Visit, keys));

            void MakeAnew(string table, IEnumerable<VisitRow> rows)
            {
                IReadOnlyList<object?[]> wanted = [.. rows.Select(r => r.Values)];
                var stored = connection.Raw($"SELECT * FROM {table} WHERE visit = $1 ORDER BY position", visit.Visit);
                if (!RawRows.Differences("", "", stored, wanted, "").Any())
                    return;
                connection.Execute($"DELETE FROM {table} WHERE visit = $1", visit.Visit);
                connection.Insert(table, wanted);
            }
        }
    }

    private static byte[] Bytes(DbConnection connection, int visit) =>
        connection.Rows(row => row.GetFieldValue<byte[]>(0), "SELECT record FROM visit WHERE visit = $1", visit).Single();
}

using System.Data.Common;
using ExamDocs.Register.Log;
using NodaTime;

namespace ExamDocs.Register.Storage;

/// <summary>Brings the content of an older register to the present layout, within the transaction that changes its tables.</summary>
internal static class Migration
{
    /// <summary>What was issued and voided before there was a log is entered in the order of its numbers, on the day of the change.</summary>
    public static void ToSecond(DbConnection connection, LocalDate today)
    {
        connection.Execute("INSERT INTO register (single, id, layout, log_size) VALUES (1, $1, $2, 0)", Guid.NewGuid().ToString("N"), Layout.Version);
        var log = new LogRows(connection);
        var older = connection.Rows(
            row => (Number: row.GetString(0), Kind: row.GetString(1), Sha256: row.Text(2), Reason: row.Text(3)),
            "SELECT number, kind, sha256, void_reason FROM document WHERE state <> 'pending' ORDER BY letter, year, sequence");
        foreach (var document in older)
        {
            var logged = new LoggedDocument(document.Number, document.Kind,
                connection.Rows(row => row.GetString(0), "SELECT item FROM document_item WHERE number = $1 ORDER BY position", document.Number));
            log.Append(at => document.Sha256 is { } sha256 && document.Reason is null
                ? LogEntry.Issued(at, logged, sha256, today) : LogEntry.Void(at, logged, document.Reason ?? "not recorded", today));
        }
    }
}

using System.Data.Common;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;
using NodaTime;

namespace ExamDocs.Register.Rows;

/// <summary>
/// Ends documents that are out, and enters the end in the log, within the caller's transaction. Each returns false, and changes nothing,
/// where the document is not issued or ended before.
/// </summary>
internal sealed class DocumentEnds(DbConnection connection, LogRows log, DocumentRows documents)
{
    /// <param name="by">Number of the document that takes its place.</param>
    public bool Replace(string number, string by, string reason, LocalDate on) =>
        End(number, DocumentEnd.Replaced, reason, on, (at, document) => LogEntry.Replaced(at, document, by, reason, on));

    public bool Withdraw(string number, string reason, LocalDate on) =>
        End(number, DocumentEnd.Withdrawn, reason, on, (at, document) => LogEntry.Withdrawn(at, document, reason, on));

    /// <param name="byVisit">The later visit whose findings end it.</param>
    public bool End(string number, int byVisit, string reason, LocalDate on) =>
        End(number, DocumentEnd.Ended, reason, on, (at, document) => LogEntry.Ended(at, document, byVisit, reason, on));

    private bool End(string number, DocumentEnd how, string reason, LocalDate on, Func<long, LoggedDocument, LogEntry> entry)
    {
        var ended = connection.Execute(
            "UPDATE document SET ended = $2, ended_on = $3, ended_reason = $4 WHERE number = $1 AND state = 'issued' AND ended IS NULL",
            number,
            DocumentWords.Of(how),
            StoredDay.Of(on),
            reason
        );
        if (ended != 1)
            return false;
        var document = LoggedDocument.Of(documents.Find(number)!);
        log.Append(at => entry(at, document));
        return true;
    }
}

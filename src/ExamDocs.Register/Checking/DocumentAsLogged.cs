using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Checking;

/// <summary>Whether all that is listed of a document is what the entries of the log about it say.</summary>
internal sealed class DocumentAsLogged(RegisterDatabase database)
{
    /// <summary>What is not, each as the end of a sentence about the document.</summary>
    /// <param name="document">As it is listed.</param>
    /// <param name="entries">All that are about it, in their order.</param>
    public IEnumerable<string> Faults(DocumentStatus document, List<LogEntry> entries)
    {
        if (document.State is DocumentState.Pending)
            return entries.Count == 0 ? [] : ["the log says how it came out, and it is listed as not out yet"];
        var came = entries.Where(e => e.What is LogEntry.IssuedWord or LogEntry.VoidWord).ToList();
        if (came.Count != 1 || (came[0].What is LogEntry.VoidWord) != (document.State is DocumentState.Void))
            return ["the log does not say exactly once how it came out", .. Ended(document, entries)];
        return
        [
            .. Listed(document, came[0], entries.FindLast(e => e.Row is not null)?.Row),
            .. Ended(document, entries),
            .. Lines(document, entries),
        ];
    }

    private IEnumerable<string> Listed(DocumentStatus document, LogEntry came, string? row)
    {
        if (document.State is DocumentState.Issued && !string.Equals(came.Sha256, document.Sha256, StringComparison.Ordinal))
            yield return "the log has other bytes";
        else if (!came.Document!.Items.SequenceEqual(document.Items, StringComparer.Ordinal))
            yield return "the log has other items";
        else if (!string.Equals(came.Document.Kind, document.Kind, StringComparison.Ordinal))
            yield return "the log has another kind";
        else if (!string.Equals(row, LoggedDocument.RowOf(document), StringComparison.Ordinal))
            yield return "what is listed of it (its outcomes, visit, day, folder, pages, language, what it replaces or is a copy of) is "
                + "not what the log has";
        var kept = database.Connection.Raw("SELECT position FROM document_item WHERE number = $1 ORDER BY position", document.Number);
        if (kept.Where((p, i) => !string.Equals(p[0].Value, RawRows.Written(i), StringComparison.Ordinal)).Any())
            yield return "its items are not numbered one after the other";
        if (database.Connection.Raw("SELECT run FROM document WHERE number = $1", document.Number) is [[{ Value: not null }]])
            yield return "a run is listed as still at work on it";
        if (document.Visit is { } visit && database.Connection.Number("SELECT count(*) FROM visit WHERE visit = $1", visit) == 0)
            yield return FormattableString.Invariant($"it is listed as of visit {visit}, which is not there");
    }

    /// <summary>What it says may be used must have been decided so in its visit, whoever had it issued.</summary>
    public IEnumerable<string> NotDecided(DocumentStatus document)
    {
        if (document.Usable() is not { } usable)
            return ["its outcomes cannot be read"];
        if (document.Visit is not { } visit || usable.Count == 0)
            return [];
        var decided = database
            .Connection.Rows(row => (row.Text(0) ?? "", row.GetString(1)), "SELECT item, outcome FROM outcome WHERE visit = $1", visit)
            .ToHashSet();
        return usable
            .Where(u => !decided.Contains(u))
            .Select(u => $"it says that {u.Item} is {u.Outcome}, and its visit did not decide so");
    }

    private static IEnumerable<string> Ended(DocumentStatus document, List<LogEntry> entries)
    {
        var ends = entries.Where(e => e.What is LogEntry.ReplacedWord or LogEntry.WithdrawnWord or LogEntry.EndedWord).ToList();
        var end = ends.Count == 1 ? ends[0] : null;
        var how = end?.What switch
        {
            LogEntry.ReplacedWord => DocumentEnd.Replaced,
            LogEntry.WithdrawnWord => DocumentEnd.Withdrawn,
            LogEntry.EndedWord => DocumentEnd.Ended,
            _ => (DocumentEnd?)null,
        };
        if (ends.Count > 1 || how != document.Ended)
            yield return "the log and the list of documents disagree on whether it is current";
        else if (
            end is not null
            && (document.EndedOn != end.Day || !string.Equals(document.EndedReason, end.Reason, StringComparison.Ordinal))
        )
            yield return "the log gives another day or reason why it is no longer current";
    }

    private IEnumerable<string> Lines(DocumentStatus document, List<LogEntry> entries) =>
        RawRows
            .Differences(
                "its ended lines",
                "ended_line",
                database.Connection.Raw(
                    "SELECT position, item, ended_on, reason, by_visit FROM ended_line WHERE number = $1 ORDER BY position",
                    document.Number
                ),
                [
                    .. entries
                        .Where(e => e.What is LogEntry.LineEndedWord)
                        .Select((e, i) => (object?[])[i, e.Item, StoredDay.Of(e.Day), e.Reason, e.ByVisit]),
                ],
                "the log"
            )
            .Select(f => f.TrimEnd('.'));
}

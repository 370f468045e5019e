using ExamDocs.Register.Log;

namespace ExamDocs.Register;

/// <summary>Whether the log and the list of documents tell the same: somebody may have altered one and not the other.</summary>
internal static class LogAgainstDocuments
{
    public static IEnumerable<string> Faults(DocumentRows rows, IReadOnlyList<ReadOnlyMemory<byte>> entries)
    {
        var logged = entries.Select(LogEntryJson.Read).OfType<LogEntry>().Where(e => e.Document is not null).ToLookup(e => e.Document!.Number, StringComparer.Ordinal);
        var documents = rows.In(DocumentState.Issued).Concat(rows.In(DocumentState.Void)).ToDictionary(d => d.Number, StringComparer.Ordinal);
        foreach (var document in documents.Values)
        {
            foreach (var fault in Faults(document, [.. logged[document.Number]]))
                yield return $"{document.Number}: {fault}.";
        }
        foreach (var number in logged.Select(g => g.Key).Where(n => !documents.ContainsKey(n)))
            yield return $"{number} is in the log and not among the documents.";
    }

    private static IEnumerable<string> Faults(DocumentStatus document, IReadOnlyList<LogEntry> entries)
    {
        var came = entries.Where(e => e.What is LogEntry.IssuedWord or LogEntry.VoidWord).ToList();
        if (came.Count != 1 || (came[0].What is LogEntry.VoidWord) != (document.State is DocumentState.Void))
            yield return "the log does not tell once how it came out";
        else if (document.State is DocumentState.Issued && !string.Equals(came[0].Sha256, document.Sha256, StringComparison.Ordinal))
            yield return "the log tells of other bytes";
        else if (!came[0].Document!.Items.SequenceEqual(document.Items, StringComparer.Ordinal))
            yield return "the log tells of other items";
        var ended = entries.Where(e => e.What is LogEntry.ReplacedWord or LogEntry.WithdrawnWord or LogEntry.EndedWord).Select(e => e.What switch { LogEntry.ReplacedWord => DocumentEnd.Replaced, LogEntry.WithdrawnWord => DocumentEnd.Withdrawn, _ => DocumentEnd.Ended }).ToList();
        if (ended.Count > 1 || (ended.Count == 0 ? document.Ended is not null : document.Ended != ended[0]))
            yield return "the log and the list of documents disagree on whether it is current";
    }
}

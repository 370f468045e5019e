using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Checking;

/// <summary>Whether documents are as they were issued, and whether the log and the list of documents agree.</summary>
internal sealed class DocumentsCheck(RegisterDatabase database, DocumentRows rows, ContentRows contents)
{
    private readonly List<(string Number, string Sha256)> _missing = [];
    private IReadOnlyList<string>? _places;
    private string? _unreachable;

    private readonly Dictionary<string, List<LogEntry>> _logged = new(StringComparer.Ordinal);
    private readonly List<(string Number, string Words)> _ofDocuments = [];

    /// <summary>Every fault that was found of a document, with its number.</summary>
    public IReadOnlyList<(string Number, string Words)> OfDocuments => _ofDocuments;

    public void Add(LogEntry entry)
    {
        if (entry.Document is not { Number: var number })
            return;
        if (!_logged.TryGetValue(number, out var entries))
            _logged[number] = entries = [];
        entries.Add(entry);
    }

    public IEnumerable<string> Faults()
    {
        foreach (var row in database.Connection.Raw("SELECT number, letter, year, sequence FROM document ORDER BY letter, year, sequence"))
        {
            var number = row[0].Value ?? "";
            if (
                !DocumentNumber.TryParse(number, out var parsed)
                || row.Skip(1)
                    .Select(c => c.Value)
                    .SequenceEqual(
                        [$"{parsed.Letter}", RawRows.Written(parsed.Year), RawRows.Written(parsed.Sequence)],
                        StringComparer.Ordinal
                    )
                    is false
            )
            {
                yield return $"{number}: its letter, year and sequence are not those of its number.";
            }
            var entries = _logged.Remove(number, out var known) ? known : [];
            foreach (var fault in Faults(number, entries))
            {
                _ofDocuments.Add((number, fault));
                yield return fault;
            }
        }
        foreach (var number in _logged.Keys)
            yield return $"{number} is in the log and not among the documents.";
    }

    private List<string> Faults(string number, List<LogEntry> entries)
    {
        try
        {
            return rows.Find(number) is { } document
                ? [.. Content(document), .. Faults(document, entries).Select(f => $"{number}: {f}.")]
                : [];
        }
        catch (RegisterDamagedException unreadable)
        {
            return [$"{number}: a row of {unreadable.Table} cannot be read."];
        }
    }

    private IEnumerable<string> Content(DocumentStatus document)
    {
        var kept = database.Connection.Raw("SELECT bytes FROM content WHERE number = $1", document.Number);
        if (document.State is DocumentState.Issued && kept.Count == 0 && !ContentRows.AreInside(_places ??= contents.Places()))
            return Outside(document);
        return Inside(document, kept);
    }

    private static IEnumerable<string> Inside(DocumentStatus document, List<(string Name, string? Value)[]> kept)
    {
        if (
            document.State is DocumentState.Issued
            && (kept.Count != 1 || !string.Equals(kept[0][0].Value, $"(bytes {document.Sha256})", StringComparison.Ordinal))
        )
            yield return $"The register no longer holds {document.Number} as it was issued.";
        else if (document.State is DocumentState.Void && kept.Count > 0)
            yield return $"{document.Number} is void, and the register holds a document of that number.";
    }

    private IReadOnlyList<string> Outside(DocumentStatus document)
    {
        if (_unreachable is not null)
            return [];
        try
        {
            if (contents.Outside(document.Number, document.Sha256!, _places!) is null)
                _missing.Add((document.Number, document.Sha256!));
            return [];
        }
        catch (InvalidDataException other)
        {
            return [other.Message];
        }
        catch (ContentStoreException unreachable)
        {
            _unreachable = unreachable.Message;
            return [];
        }
    }

    /// <summary>
    /// The documents whose bytes were not found, once more: another run may have moved them while the rest was looked at. To be asked
    /// when nothing is read as of an earlier moment any more.
    /// </summary>
    public IEnumerable<string> Missing()
    {
        if (_unreachable is not null)
            yield return $"The documents kept outside the register were not all looked at. {_unreachable}";
        foreach (var (number, sha256) in _missing)
        {
            if (Lost(number, sha256) is not { } lost)
                continue;
            _ofDocuments.Add((number, lost));
            yield return lost;
        }
    }

    private string? Lost(string number, string sha256)
    {
        try
        {
            contents.Of(number, sha256);
            return null;
        }
        catch (Exception lost) when (lost is InvalidDataException or ContentStoreException)
        {
            return lost.Message;
        }
    }

    private IEnumerable<string> Faults(DocumentStatus document, List<LogEntry> entries)
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

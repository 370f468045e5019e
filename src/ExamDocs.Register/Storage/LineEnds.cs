using System.Text.Json;
using ExamDocs.Core.Identity;
using ExamDocs.Register.Log;

namespace ExamDocs.Register.Storage;

/// <summary>
/// What later visits ended of what documents say: a visit that withdraws an item ends its line in the reports of earlier visits,
/// and its due labels and certificates as a whole. Everything here is part of the caller's transaction.
/// </summary>
internal sealed class LineEnds(RegisterDatabase database, LogRows log, DocumentRows documents)
{
    private const string Word = "ended";

    /// <summary>Kinds that say of an item that it may be used; of those that say it of one item or one renewal nothing is left.</summary>
    private static readonly Dictionary<string, bool> EndsWhole = new(StringComparer.Ordinal)
    {
        ["report"] = false,
        ["due-label"] = true,
        ["certificate"] = true,
    };

    /// <summary>Keeps what a visit ends, and ends it in every current document of the visits that said it.</summary>
    public void Store(int byVisit, IReadOnlyList<LineEnd> ends)
    {
        var added = new List<LineEnd>();
        foreach (var end in ends.Select(e => e with { Item = Sql.Storable(e.Item), Why = Sql.Storable(e.Why) }))
        {
            ArgumentException.ThrowIfNullOrWhiteSpace(end.Why, nameof(ends));
            if (added.Exists(e => IsOf(e, end)) || Of(end.Visit).Any(e => IsOf(e.End, end)))
                continue;
            added.Add(end);
        }
        var position = database.Connection.Number("SELECT count(*) FROM line_end WHERE by_visit = $1", byVisit);
        foreach (var end in added)
        {
            database.Connection.Execute(
                "INSERT INTO line_end (by_visit, position, visit, item, ended_on, reason) VALUES ($1, $2, $3, $4, $5, $6)",
                byVisit,
                position++,
                end.Visit,
                end.Item,
                DocumentRows.Day(end.On),
                end.Why
            );
        }
        if (added.Count > 0)
            log.Append(at => LogEntry.EndsOf(at, byVisit, added, documents.Now));
        foreach (var document in added.Select(e => e.Visit).Distinct().SelectMany(documents.CurrentOf))
            Apply(document);
    }

    /// <summary>What was ended of what the documents of a visit say, in the order in which it was.</summary>
    public IReadOnlyList<(LineEnd End, int ByVisit)> Of(int visit) =>
        database.Connection.Rows(
            row =>
                (
                    new LineEnd(row.GetInt32(0), row.GetString(1), DocumentRows.Day(row.GetString(2))!.Value, row.GetString(3)),
                    row.GetInt32(4)
                ),
            "SELECT visit, item, ended_on, reason, by_visit FROM line_end WHERE visit = $1 ORDER BY by_visit, position",
            visit
        );

    /// <summary>The lines of a document that were ended, in the order in which they were.</summary>
    public IReadOnlyList<EndedLine> In(string number) =>
        database
            .Connection.Rows(
                row =>
                    (
                        Item: row.GetString(0),
                        On: DocumentRows.Day(row.GetString(1))!.Value,
                        Why: row.GetString(2),
                        By: row.GetInt32(3),
                        Visit: row.IsDBNull(4) ? (int?)null : row.GetInt32(4)
                    ),
                """
                SELECT ended_line.item, ended_line.ended_on, ended_line.reason, ended_line.by_visit, document.visit
                FROM ended_line JOIN document ON document.number = ended_line.number WHERE ended_line.number = $1 ORDER BY ended_line.position
                """,
                number
            )
            .ConvertAll(line => new EndedLine(line.Item, line.On, line.Why, line.By, Telling(line.By, line.Item, line.Visit)));

    /// <summary>Ends in a document that is out whatever later visits have ended of it.</summary>
    public void Apply(DocumentStatus document)
    {
        if (document.Visit is not { } visit || !EndsWhole.TryGetValue(document.Kind, out var endsWhole))
            return;
        var ended = In(document.Number).Select(l => l.Item).ToHashSet(StringComparer.Ordinal);
        var (position, last) = (ended.Count, ((LineEnd End, int ByVisit)?)null);
        foreach (var (end, byVisit) in Of(visit).Where(e => IsSaidBy(document, e.End)))
        {
            if (!ended.Add(end.Item))
                continue;
            database.Connection.Execute(
                "INSERT INTO ended_line (number, position, item, ended_on, reason, by_visit) VALUES ($1, $2, $3, $4, $5, $6)",
                document.Number,
                position++,
                end.Item,
                DocumentRows.Day(end.On),
                end.Why,
                byVisit
            );
            log.Append(at => LogEntry.LineEnded(at, DocumentRows.Logged(document), end.Item, byVisit, end.Why, end.On));
            last = (end, byVisit);
        }
        if (
            last is { } by
            && (endsWhole || document.Items.All(ended.Contains))
            && documents.End(document.Number, Word, by.End.On, by.End.Why)
        )
            log.Append(at => LogEntry.Ended(at, DocumentRows.Logged(document), by.ByVisit, by.End.Why, by.End.On));
    }

    /// <summary>Whether a document that is listed as current tells of all that later visits ended of it.</summary>
    public bool AreIn(DocumentStatus document)
    {
        if (!document.IsCurrent || document.Visit is not { } visit || !EndsWhole.TryGetValue(document.Kind, out var endsWhole))
            return true;
        var ended = Of(visit).Where(e => IsSaidBy(document, e.End)).Select(e => e.End.Item).ToHashSet(StringComparer.Ordinal);
        return ended.Count == 0
            || (!endsWhole && !document.Items.All(ended.Contains) && ended.IsSubsetOf(document.EndedLines.Select(l => l.Item)));
    }

    private static bool IsSaidBy(DocumentStatus document, LineEnd end) =>
        document.Items.Contains(end.Item, StringComparer.Ordinal) && MayBeUsed(document, end.Item);

    private static bool IsOf(LineEnd one, LineEnd other) =>
        one.Visit == other.Visit && string.Equals(one.Item, other.Item, StringComparison.Ordinal);

    /// <summary>What cannot be read is taken for a document that says so.</summary>
    private static bool MayBeUsed(DocumentStatus document, string item)
    {
        try
        {
            using var outcomes = JsonDocument.Parse(document.OutcomesJson ?? "{}");
            return !outcomes.RootElement.TryGetProperty(item, out var outcome) || outcome.GetString() is not ("withdraw" or "undetermined");
        }
        catch (Exception unreadable) when (unreadable is JsonException or InvalidOperationException)
        {
            return true;
        }
    }

    /// <summary>Labels and notices that a visit gave about an item, which it may have under another id than the document.</summary>
    private List<string> Telling(int byVisit, string item, int? visit)
    {
        var told = documents.Of(byVisit).Where(d => d.Kind is "quarantine-label" or "notice").ToList();
        var alike = told.Where(d => d.Items.Any(i => Folded.Same(i, item))).ToList();
        if (alike.Count == 0 && visit is { } ended && told.Count > 0)
        {
            var others = database.Connection.Rows(
                row => row.GetString(0),
                "SELECT DISTINCT b.item FROM item_key a JOIN item_key b ON b.key = a.key AND b.visit = $1 WHERE a.visit = $2 "
                    + "AND a.item = $3",
                byVisit,
                ended,
                item
            );
            alike = [.. told.Where(d => d.Items.Any(i => others.Contains(i, StringComparer.Ordinal)))];
        }
        return alike.ConvertAll(d => d.Number);
    }
}

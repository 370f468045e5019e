using System.Data.Common;
using System.Text.Json;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;
using NodaTime;

namespace ExamDocs.Register.Rows;

/// <summary>
/// What later visits ended of what documents say: a visit that withdraws an item ends its line in the reports of earlier visits,
/// and its due labels and certificates as a whole. Everything here is part of the caller's transaction.
/// </summary>
internal sealed class LineEnds(DbConnection connection, LogRows log, DocumentRows documents, DocumentEnds documentEnds, LocalDate today)
{
    private readonly EndedLineRows _lines = documents.EndedLines;

    /// <summary>
    /// Kinds that say an item may be used, and whether one ended line ends all of the document: labels and certificates are about one
    /// thing only.
    /// </summary>
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
        foreach (var end in ends.Select(e => e with { Item = StorableText.Of(e.Item), Why = StorableText.Of(e.Why) }))
        {
            ArgumentException.ThrowIfNullOrWhiteSpace(end.Why, nameof(ends));
            if (added.Exists(e => IsOf(e, end)) || _lines.Of(end.Visit).Any(e => IsOf(e.End, end)))
                continue;
            added.Add(end);
        }
        var position = connection.Number("SELECT count(*) FROM line_end WHERE by_visit = $1", byVisit);
        connection.Insert(
            "line_end (by_visit, position, visit, item, ended_on, reason)",
            added.Select((end, n) => new object?[] { byVisit, position + n, end.Visit, end.Item, StoredDay.Of(end.On), end.Why })
        );
        if (added.Count > 0)
            log.Append(at => LogEntry.EndsOf(at, byVisit, added, today));
        foreach (var document in added.Select(e => e.Visit).Distinct().SelectMany(documents.CurrentOf))
            Apply(document);
    }

    /// <summary>Ends in a document that is out whatever later visits have ended of it.</summary>
    public void Apply(DocumentStatus document)
    {
        if (document.Visit is not { } visit || !EndsWhole.TryGetValue(document.Kind, out var endsWhole))
            return;
        var ended = _lines.In(document.Number).Select(l => l.Item).ToHashSet(StringComparer.Ordinal);
        var (position, last) = (ended.Count, ((LineEnd End, int ByVisit)?)null);
        foreach (var (end, byVisit) in _lines.Of(visit).Where(e => IsSaidBy(document, e.End)))
        {
            if (!ended.Add(end.Item))
                continue;
            connection.Execute(
                "INSERT INTO ended_line (number, position, item, ended_on, reason, by_visit) VALUES ($1, $2, $3, $4, $5, $6)",
                document.Number,
                position++,
                end.Item,
                StoredDay.Of(end.On),
                end.Why,
                byVisit
            );
            log.Append(at => LogEntry.LineEnded(at, LoggedDocument.Of(document), end.Item, byVisit, end.Why, end.On));
            last = (end, byVisit);
        }
        if (last is { } by && (endsWhole || document.Items.All(ended.Contains)))
            documentEnds.End(document.Number, by.ByVisit, by.End.Why, by.End.On);
    }

    /// <summary>Whether a document that is listed as current shows all that later visits ended of it.</summary>
    public bool AreIn(DocumentStatus document)
    {
        if (!document.IsCurrent || document.Visit is not { } visit || !EndsWhole.TryGetValue(document.Kind, out var endsWhole))
            return true;
        var ended = _lines.Of(visit).Where(e => IsSaidBy(document, e.End)).Select(e => e.End.Item).ToHashSet(StringComparer.Ordinal);
        return ended.Count == 0
            || (!endsWhole && !document.Items.All(ended.Contains) && ended.IsSubsetOf(document.EndedLines.Select(l => l.Item)));
    }

    private static bool IsSaidBy(DocumentStatus document, LineEnd end) =>
        document.Items.Contains(end.Item, StringComparer.Ordinal) && MayBeUsed(document, end.Item);

    private static bool IsOf(LineEnd one, LineEnd other) =>
        one.Visit == other.Visit && string.Equals(one.Item, other.Item, StringComparison.Ordinal);

    /// <summary>A document whose outcomes cannot be read counts as one that says so.</summary>
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
}

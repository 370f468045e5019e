using System.Text.Json;
using ExamDocs.Register.Log;
using ExamDocs.Register.Storage;
using Microsoft.Data.Sqlite;

namespace ExamDocs.Register.Checking;

/// <summary>
/// Entries of the log by the document or the visit that they are about, in a database of its own that is on the disk where it grows and
/// gone afterwards: a log of any length takes little memory.
/// </summary>
internal sealed class LoggedEntries : IDisposable
{
    private const string Visits = "visit ";

    private readonly SqliteConnection _scratch = new("Data Source=;Pooling=False");

    public LoggedEntries()
    {
        _scratch.Open();
        _scratch.Execute(
            """
            CREATE TABLE entry (
              about TEXT NOT NULL, position INTEGER NOT NULL, comes INTEGER NOT NULL, bytes BLOB NOT NULL, PRIMARY KEY (about, position)
            ) STRICT, WITHOUT ROWID;
            BEGIN;
            """
        );
    }

    /// <summary>Whether an entry is the first about its document or visit: it came out, or was remembered.</summary>
    public static bool Comes(LogEntry entry) => entry.What is LogEntry.IssuedWord or LogEntry.VoidWord or LogEntry.RememberedWord;

    /// <summary>Whom an entry is about: the number of a document, or a visit; null where neither.</summary>
    public static string? About(LogEntry entry) =>
        entry.Document?.Number
        ?? (
            (entry.What is LogEntry.EndsWord ? entry.ByVisit : entry.Visit?.Number) is { } visit
                ? Visit(FormattableString.Invariant($"{visit}"))
                : null
        );

    /// <summary>How a visit is named here.</summary>
    /// <param name="number">Its number, as digits.</param>
    public static string Visit(string number) => Visits + number;

    /// <summary>The number in the name of a visit.</summary>
    public static string NumberIn(string about) => about[Visits.Length..];

    public void Add(long row, LogEntry entry, ReadOnlyMemory<byte> bytes)
    {
        if (About(entry) is { } about)
            _scratch.Execute("INSERT INTO entry VALUES ($1, $2, $3, $4)", about, row, Comes(entry) ? 1 : 0, bytes.ToArray());
    }

    public bool Has(string about) => _scratch.Number("SELECT EXISTS (SELECT 1 FROM entry WHERE about = $1)", about) == 1;

    /// <summary>Whether of a document or visit only what happened to it later is here.</summary>
    public bool LacksBeginnings => _scratch.Number("SELECT EXISTS (SELECT 1 FROM entry GROUP BY about HAVING sum(comes) = 0)") == 1;

    /// <summary>The entries about some, in the order of the log; they are not here any more then.</summary>
    public ILookup<string, LogEntry> Take(IEnumerable<string> about)
    {
        var list = JsonSerializer.Serialize(about);
        const string These = "about IN (SELECT value FROM json_each($1))";
        var found = _scratch
            .Rows(
                row => (row.GetString(0), row.GetFieldValue<byte[]>(1)),
                $"SELECT about, bytes FROM entry WHERE {These} ORDER BY about, position",
                list
            )
            .ToLookup(e => e.Item1, e => LogEntry.Parse(e.Item2), StringComparer.Ordinal);
        _scratch.Execute($"DELETE FROM entry WHERE {These}", list);
        return found;
    }

    /// <summary>Some of those that are still here, documents or visits, by their names; the next ones after a name.</summary>
    public IReadOnlyList<string> Next(string after, bool visits, int count) =>
        _scratch.Rows(
            row => row.GetString(0),
            $"SELECT DISTINCT about FROM entry WHERE about > $1 AND (about LIKE '{Visits}%') = $2 ORDER BY about LIMIT {count}",
            after,
            visits ? 1 : 0
        );

    public void Dispose() => _scratch.Dispose();
}

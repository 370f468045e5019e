using System.Globalization;
using System.Text.Json;
using ExamDocs.Core.Records;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Checking;

/// <summary>All that is stored of some visits, read with a statement for each table, beside their entries in the log.</summary>
internal sealed class StoredVisits
{
    private const string FromLog = "sha256, stored_on, seen, version, as_of, origin";

    private const string FromRecord = "reference, regime, employer, premises, examined_on";

    private readonly RegisterDatabase _database;
    private readonly IReadOnlyCollection<int> _visits;
    private readonly string _numbers;
    private readonly ILookup<int, (long Position, LogEntry? Entry)> _entries;
    private readonly Dictionary<string, ILookup<string?, RawColumn[]>> _rows = new(StringComparer.Ordinal);

    public StoredVisits(RegisterDatabase database, IReadOnlyCollection<int> visits)
    {
        (_database, _visits, _numbers) = (database, visits, JsonSerializer.Serialize(visits));
        _entries = database
            .Connection.Rows(
                row => (Visit: row.GetInt32(0), Position: row.GetInt64(1), Entry: LogEntryJson.Read(row.GetFieldValue<byte[]>(2))),
                $"""
                SELECT {database.VisitOfEntry}, position, entry FROM log
                WHERE {database.VisitOfEntry} {database.AmongNumbers("$1")} ORDER BY position
                """,
                _numbers
            )
            .ToLookup(e => e.Visit, e => (e.Position, e.Entry));
        Read("visit", $"SELECT visit, {FromLog}, {FromRecord} FROM visit");
        foreach (var (table, order) in VisitRows.OfRecord.Append(("outcome", "position")))
            Read(table, $"SELECT * FROM {table}", order);
        Read("line_end", "SELECT by_visit, position, visit, item, ended_on, reason FROM line_end", "position", "by_visit");
    }

    /// <summary>The first of the visits that the log says was remembered; null where it names none.</summary>
    public int? FirstInLog => _entries.Where(e => e.Any(r => r.Entry is not { What: LogEntry.EndsWord })).Min(e => (int?)e.Key);

    /// <summary>Where the entries about the visits are in the log.</summary>
    public IEnumerable<long> Positions => _entries.SelectMany(e => e.Select(r => r.Position));

    /// <summary>A visit as somebody would know it: its number, reference and day, as far as they are still there.</summary>
    public string Name(int visit)
    {
        var row = Rows("visit", visit).FirstOrDefault() ?? [];
        var known = string.Join(" of ", row.Where(c => c.Name is "reference" or "examined_on").Select(c => c.Value).OfType<string>());
        var stored = _entries[visit].Select(e => e.Entry).FirstOrDefault(e => e is { What: LogEntry.RememberedWord })?.Day;
        var more =
            known.Length > 0 ? $" ({known})"
            : stored is { } day ? $" (stored on {StoredDay.Of(day)})"
            : "";
        return FormattableString.Invariant($"visit {visit}{more}");
    }

    /// <summary>The first visit that is not as the log and its record have it, and what is not; null where all are.</summary>
    /// <param name="read">Reads a record, given the visit's number and bytes, on several threads at once; null where that is
    /// impossible.</param>
    public (int Visit, string Fault)? FirstFault(Func<int, byte[], ExaminationRecord?> read)
    {
        foreach (var lot in new StoredRecords(_database, _visits).Lots())
        {
            var faults = new string?[lot.Count];
            Parallel.For(0, lot.Count, i => faults[i] = Fault(lot[i].Visit, lot[i].Record, read));
            if (faults.Index().FirstOrDefault(f => f.Item is not null) is (var at, { } fault))
                return (lot[at].Visit, fault);
        }
        return null;
    }

    private string? Fault(int visit, byte[]? record, Func<int, byte[], ExaminationRecord?> read)
    {
        if (_entries[visit].Where(e => e.Entry?.Position != e.Position).ToList() is [var odd, ..])
            return FormattableString.Invariant($"Log entry {odd.Position}, which is about it, was altered.");
        var remembered = _entries[visit].Select(e => e.Entry!).Where(e => e.What is LogEntry.RememberedWord).ToList();
        if (remembered is not [{ Visit: { } logged } entry])
            return remembered.Count == 0 ? "It is not in the log." : "It is in the log twice.";
        return OfLog(logged, entry).FirstOrDefault() ?? OfRecord(logged, record, read);
    }

    private IEnumerable<string> OfLog(LoggedVisit logged, LogEntry entry)
    {
        var (visit, name) = (logged.Number, Number(logged.Number));
        var outcomes = VisitRows.Outcomes(visit, logged.Outcomes ?? []).Select(r => r.Values);
        var ends = _entries[visit]
            .Where(e => e.Entry is { What: LogEntry.EndsWord })
            .SelectMany(e => e.Entry!.Ends)
            .Select((e, at) => new object?[] { visit, at, e.Visit, e.Item, StoredDay.Of(e.On), e.Why });
        return
        [
            .. RawRows.Differences(
                name,
                "visit",
                Rows("visit", visit),
                [
                    [visit, logged.Record, StoredDay.Of(entry.Day), logged.Seen, logged.Version, StoredDay.Of(logged.AsOf), logged.Origin],
                ],
                "the log"
            ),
            .. RawRows.Differences(name, "outcome", Rows("outcome", visit), [.. outcomes], "the log"),
            .. RawRows.Differences(name, "line_end", Rows("line_end", visit), [.. ends], "the log"),
        ];
    }

    private string? OfRecord(LoggedVisit logged, byte[]? bytes, Func<int, byte[], ExaminationRecord?> read)
    {
        var (visit, name) = (logged.Number, Number(logged.Number));
        if (bytes is null || !string.Equals(Sha256Hex.Of(bytes), logged.Record, StringComparison.Ordinal))
            return "Its record is not the one that was stored.";
        if (read(visit, bytes) is not { } record)
            return "Its record can no longer be read.";
        var rows = VisitRows.Of(visit, record).ToLookup(r => r.Table, r => r.Values, StringComparer.Ordinal);
        var stored = Rows("visit", visit).ConvertAll(r => r[^VisitRows.Visit(record).Length..]);
        return RawRows
            .Differences(name, "visit", stored, [VisitRows.Visit(record)], "its record")
            .Concat(
                VisitRows.OfRecord.SelectMany(t =>
                    RawRows.Differences(name, t.Table, Rows(t.Table, visit), [.. rows[t.Table]], "its record")
                )
            )
            .FirstOrDefault();
    }

    private void Read(string table, string question, string? order = null, string visit = "visit")
    {
        var sorted = order is null ? visit : $"{visit}, {order}";
        _rows[table] = _database
            .Connection.Raw($"{question} WHERE {visit} {_database.AmongNumbers("$1")} ORDER BY {sorted}", _numbers)
            .ToLookup(r => r[0].Value, StringComparer.Ordinal);
    }

    private List<RawColumn[]> Rows(string table, int visit) => [.. _rows[table][RawRows.Written(visit)]];

    private static string Number(int visit) => $"Visit {visit.ToString(CultureInfo.InvariantCulture)}";
}

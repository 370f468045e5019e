using System.Globalization;
using ExamDocs.Core.Records;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Checking;

/// <summary>Whether what is stored of visits is what the log says and what their records give.</summary>
internal sealed class VisitsCheck(RegisterDatabase database, Func<byte[], ExaminationRecord?>? read)
{
    private readonly HashSet<string> _logged = new(StringComparer.Ordinal);
    private readonly List<object?[]> _ends = [];
    private readonly Dictionary<int, int> _endsOf = [];
    private readonly List<object?[]> _merged = [];

    /// <summary>Compares an entry with what is stored of its visit.</summary>
    public IReadOnlyList<string> Add(LogEntry entry)
    {
        if (entry is { What: LogEntry.EndsWord, ByVisit: { } by })
        {
            foreach (var end in entry.Ends)
            {
                var position = _endsOf[by] = _endsOf.GetValueOrDefault(by, -1) + 1;
                _ends.Add([by, position, end.Visit, end.Item, StoredDay.Of(end.On), end.Why]);
            }
        }
        if (entry.Visit is { Origin: { } origin, OriginNumber: { } number } known)
            _merged.Add([origin, number, known.Number]);
        return entry is { What: LogEntry.RememberedWord, Visit: { } visit } ? [.. Remembered(visit, entry)] : [];
    }

    /// <summary>What is wrong with the visits themselves, one after the other.</summary>
    public IEnumerable<string> Faults()
    {
        foreach (var visit in database.Connection.Raw("SELECT visit FROM visit ORDER BY visit").Select(r => r[0].Value ?? "empty"))
        {
            if (!_logged.Remove(visit))
                yield return $"{Name(visit)} is not in the log.";
            foreach (var fault in OfRecord(visit))
                yield return fault;
        }
        foreach (var missing in _logged)
            yield return $"{Name(missing)} is in the log and is no longer there.";
        var ends = database.Connection.Raw(
            "SELECT by_visit, position, visit, item, ended_on, reason FROM line_end ORDER BY by_visit, position"
        );
        foreach (
            var fault in RawRows.Differences(
                "What visits ended",
                "line_end",
                ends,
                [.. _ends.OrderBy(e => (int)e[0]!).ThenBy(e => (int)e[1]!)],
                "the log"
            )
        )
            yield return fault;
        var merged = database
            .Connection.Raw("SELECT origin, number, visit FROM merged_visit ORDER BY number, visit")
            .OrderBy(r => r[0].Value, StringComparer.Ordinal)
            .ToList();
        foreach (
            var fault in RawRows.Differences(
                "Visits of other registers",
                "merged_visit",
                merged,
                [.. _merged.OrderBy(m => (string)m[0]!, StringComparer.Ordinal).ThenBy(m => (int)m[1]!).ThenBy(m => (int)m[2]!)],
                "the log"
            )
        )
        {
            yield return fault;
        }
    }

    private static string Name(string visit) => $"Visit {visit.Trim('(', ')')}";

    private IEnumerable<string> Remembered(LoggedVisit visit, LogEntry entry)
    {
        if (!_logged.Add(RawRows.Written(visit.Number)!))
            return [FormattableString.Invariant($"Visit {visit.Number} is in the log twice.")];
        var name = FormattableString.Invariant($"Visit {visit.Number}");
        var stored = database.Connection.Raw(
            "SELECT sha256, stored_on, seen, version, as_of, origin FROM visit WHERE visit = $1",
            visit.Number
        );
        var outcomes = database.Connection.Raw("SELECT * FROM outcome WHERE visit = $1 ORDER BY position", visit.Number);
        return stored.Count == 0
            ? []
            :
            [
                // What came before a visit was always known to it: a smaller number would hide something from it.
                .. visit.Seen < (visit.OriginNumber ?? visit.Number)
                    ? [$"{name} is said to have been decided without what was stored before it."]
                    : Array.Empty<string>(),
                .. RawRows.Differences(
                    name,
                    "visit",
                    stored,
                    [
                        [visit.Record, StoredDay.Of(entry.Day), visit.Seen, visit.Version, StoredDay.Of(visit.AsOf), visit.Origin],
                    ],
                    "the log"
                ),
                .. RawRows.Differences(
                    name,
                    "outcome",
                    outcomes,
                    [.. VisitRows.Outcomes(visit.Number, visit.Outcomes ?? []).Select(r => r.Values)],
                    "the log"
                ),
            ];
    }

    private IEnumerable<string> OfRecord(string visit)
    {
        if (!int.TryParse(visit.Trim('(', ')'), NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            return [$"A visit has no number: {visit}."];
        var connection = database.Connection;
        var bytes = connection
            .Rows(row => row.IsDBNull(0) ? null : row.GetFieldValue<byte[]>(0), "SELECT record FROM visit WHERE visit = $1", number)
            .FirstOrDefault()
            ?? [];
        var sha256 = connection.Raw("SELECT sha256 FROM visit WHERE visit = $1", number)[0][0].Value;
        if (!string.Equals(Sha256Hex.Of(bytes), sha256, StringComparison.Ordinal))
            return [$"The record of visit {number.ToString(CultureInfo.InvariantCulture)} is not the one that was stored."];
        if (read is null)
            return [];
        if (read(bytes) is not { } record)
            return [$"The record of visit {number.ToString(CultureInfo.InvariantCulture)} can no longer be read."];
        var rows = VisitRows.Of(number, record).ToLookup(r => r.Table, r => r.Values, StringComparer.Ordinal);
        return
        [
            .. RawRows.Differences(
                Name(visit),
                "visit",
                connection.Raw("SELECT reference, regime, employer, premises, examined_on FROM visit WHERE visit = $1", number),
                [VisitRows.Visit(record)],
                "its record"
            ),
            .. VisitRows.OfRecord.SelectMany(t =>
                RawRows.Differences(
                    Name(visit),
                    t.Table,
                    connection.Raw($"SELECT * FROM {t.Table} WHERE visit = $1 ORDER BY {t.Order}", number),
                    [.. rows[t.Table]],
                    "its record"
                )
            ),
        ];
    }
}

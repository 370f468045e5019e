using System.Globalization;
using ExamDocs.Core.Records;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Checking;

/// <summary>Whether what is stored of visits is what the log says and what their records give.</summary>
internal sealed class VisitsCheck(RegisterDatabase database, Func<byte[], ExaminationRecord?>? read, LoggedEntries logged)
{
    /// <summary>Visits whose entries are read together.</summary>
    private const int AtOnce = 200;

    private readonly VisitAsStored _stored = new(database, read);
    private long _ends;
    private long _merged;

    /// <summary>What is wrong with the visits themselves, one after the other.</summary>
    /// <param name="onlyLogged">Only the visits that entries of the log are here of; else every one that is stored.</param>
    public IEnumerable<string> Faults(bool onlyLogged)
    {
        foreach (var lot in onlyLogged ? Logged() : Stored())
        {
            var entries = logged.Take(lot.Select(About));
            foreach (var visit in lot)
            {
                foreach (var fault in OfLog(visit, [.. entries[About(visit)]]))
                    yield return fault;
                foreach (var fault in _stored.OfRecord(visit))
                    yield return fault;
            }
        }
        for (var left = logged.Next("", visits: true, AtOnce); left.Count > 0; left = logged.Next(left[^1], visits: true, AtOnce))
        {
            foreach (var missing in left)
                yield return $"{Name(LoggedEntries.NumberIn(missing))} is in the log and is no longer there.";
        }
        if (onlyLogged)
            yield break;
        foreach (
            var fault in Others("What visits ended", "line_end", _ends).Concat(Others("Visits of other registers", "merged_visit", _merged))
        )
            yield return fault;
    }

    private static string About(string visit) => LoggedEntries.Visit(visit.Trim('(', ')'));

    /// <summary>Every visit that is stored, by its number as it is written.</summary>
    private IEnumerable<List<string>> Stored()
    {
        for (var lot = Lot(long.MinValue); lot.Count > 0; lot = Lot(lot[^1]))
            yield return lot.ConvertAll(v => RawRows.Written(v)!);
        List<long> Lot(long after) =>
            database.Connection.Rows(
                row => Convert.ToInt64(row.GetValue(0), CultureInfo.InvariantCulture),
                $"SELECT visit FROM visit WHERE visit > $1 ORDER BY visit LIMIT {AtOnce}",
                after
            );
    }

    /// <summary>Every visit of which entries are here and that is stored; the others are left to be named.</summary>
    private IEnumerable<List<string>> Logged()
    {
        for (var some = logged.Next("", visits: true, AtOnce); some.Count > 0; some = logged.Next(some[^1], visits: true, AtOnce))
        {
            var there = database
                .Connection.Raw(
                    $"SELECT visit FROM visit WHERE visit {database.AmongNumbers("$1")}",
                    $"[{string.Join(',', some.Select(LoggedEntries.NumberIn))}]"
                )
                .ConvertAll(r => r[0].Value!);
            yield return there;
        }
    }

    /// <summary>What is stored of no visit that was looked at.</summary>
    private IEnumerable<string> Others(string what, string table, long logged)
    {
        var stored = database.Connection.Number($"SELECT count(*) FROM {table}");
        if (stored != logged)
            yield return FormattableString.Invariant($"{what}: {stored} rows of {table}, the log gives {logged}.");
    }

    private IEnumerable<string> OfLog(string visit, List<LogEntry> entries)
    {
        var remembered = entries.Where(e => e.What is LogEntry.RememberedWord).ToList();
        if (remembered.Count == 0)
            yield return $"{Name(visit)} is not in the log.";
        if (remembered.Count > 1)
            yield return $"{Name(visit)} is in the log twice.";
        foreach (var fault in remembered.Take(1).SelectMany(e => _stored.Remembered(e.Visit!, e)))
            yield return fault;
        if (!int.TryParse(visit.Trim('(', ')'), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number))
            yield break;
        foreach (var fault in Ends(number, entries).Concat(Merged(number, entries)))
            yield return fault;
    }

    private IEnumerable<string> Ends(int visit, List<LogEntry> entries)
    {
        List<object?[]> ends =
        [
            .. entries
                .Where(e => e.What is LogEntry.EndsWord)
                .SelectMany(e => e.Ends)
                .Select((e, at) => (object?[])[visit, at, e.Visit, e.Item, StoredDay.Of(e.On), e.Why]),
        ];
        _ends += ends.Count;
        return RawRows.Differences(
            "What visits ended",
            "line_end",
            database.Connection.Raw(
                "SELECT by_visit, position, visit, item, ended_on, reason FROM line_end WHERE by_visit = $1 ORDER BY position",
                visit
            ),
            ends,
            "the log"
        );
    }

    private IEnumerable<string> Merged(int visit, List<LogEntry> entries)
    {
        List<object?[]> merged =
        [
            .. entries
                .Where(e => e.Visit is { Origin: not null, OriginNumber: not null })
                .Select(e => (object?[])[e.Visit!.Origin, e.Visit.OriginNumber, visit])
                .OrderBy(m => (string)m[0]!, StringComparer.Ordinal)
                .ThenBy(m => (int)m[1]!),
        ];
        _merged += merged.Count;
        return RawRows.Differences(
            "Visits of other registers",
            "merged_visit",
            [
                .. database
                    .Connection.Raw("SELECT origin, number, visit FROM merged_visit WHERE visit = $1 ORDER BY number", visit)
                    .OrderBy(r => r[0].Value, StringComparer.Ordinal),
            ],
            merged,
            "the log"
        );
    }

    internal static string Name(string visit) => $"Visit {visit.Trim('(', ')')}";
}

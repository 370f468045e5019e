using System.Globalization;
using ExamDocs.Core.Records;
using ExamDocs.Register.Log;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Checking;

/// <summary>Whether what is stored of one visit is what its entry in the log and its record give.</summary>
internal sealed class VisitAsStored(RegisterDatabase database, Func<byte[], ExaminationRecord?>? read)
{
    public IEnumerable<string> Remembered(LoggedVisit visit, LogEntry entry)
    {
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

    public IEnumerable<string> OfRecord(string visit)
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
                VisitsCheck.Name(visit),
                "visit",
                connection.Raw("SELECT reference, regime, employer, premises, examined_on FROM visit WHERE visit = $1", number),
                [VisitRows.Visit(record)],
                "its record"
            ),
            .. VisitRows.OfRecord.SelectMany(t =>
                RawRows.Differences(
                    VisitsCheck.Name(visit),
                    t.Table,
                    connection.Raw($"SELECT * FROM {t.Table} WHERE visit = $1 ORDER BY {t.Order}", number),
                    [.. rows[t.Table]],
                    "its record"
                )
            ),
        ];
    }
}

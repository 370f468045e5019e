using System.Data.Common;
using System.Text.Json;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Rows;

/// <summary>Reads the visits that a register remembers, and what was decided in them.</summary>
internal sealed class RememberedVisits(RegisterDatabase database)
{
    private const string VisitColumns =
        "visit.visit, visit.sha256, visit.reference, visit.regime, visit.employer, visit.examined_on, visit.stored_on, "
        + "visit.seen, visit.version, visit.as_of, visit.origin";

    private const int VisitColumnCount = 11;

    private const string OutcomeColumns =
        "outcome.item, outcome.outcome, outcome.codes, outcome.examined_on, outcome.until, outcome.next_by, outcome.parts, "
        + "outcome.never_releasable";

    private const int OutcomeColumnCount = 8;

    private DbConnection Connection => database.Connection;

    /// <summary>Number of the visit stored last; 0 where there is none.</summary>
    public int Latest => (int)Connection.Number("SELECT coalesce(max(visit), 0) FROM visit");

    /// <summary>All, in the order stored.</summary>
    public IReadOnlyList<RememberedVisit> All() => Visits("$1 = $1", "");

    /// <summary>The same, a few at a time.</summary>
    public IEnumerable<RememberedVisit> Stream()
    {
        const string AtOnce = " LIMIT 200";
        for (
            var lot = Visits("visit.visit >= $1", int.MinValue, AtOnce);
            lot.Count > 0;
            lot = Visits("visit.visit > $1", lot[^1].Visit, AtOnce)
        )
        {
            foreach (var visit in lot)
                yield return visit;
        }
    }

    /// <summary>The visit with this record that was stored last, and all that were stored after it; none where there is no such.</summary>
    public IReadOnlyList<RememberedVisit> SinceRecord(string sha256) =>
        Visits("visit.visit >= (SELECT max(same.visit) FROM visit same WHERE same.sha256 = $1)", sha256);

    /// <summary>The owner's marks that were recorded, each once for its visit.</summary>
    public IReadOnlyList<(int Visit, string Mark)> OwnersMarks() =>
        Connection.Rows(
            row => (row.GetInt32(0), row.GetString(1)),
            "SELECT DISTINCT visit, owners_mark FROM item WHERE owners_mark IS NOT NULL"
        );

    /// <summary>The versions stored under one reference, however it is spelt, in the order stored.</summary>
    public IReadOnlyList<RememberedVisit> OfReference(string reference) =>
        VisitRows.KeysOf(reference).ToList() is { Count: > 0 } keys
            ? Visits($"visit.visit IN (SELECT visit FROM visit_key WHERE key {database.AmongTexts("$1")})", JsonSerializer.Serialize(keys))
            : Visits("visit.reference = $1", reference);

    /// <summary>The reference of a visit of which a later version is stored; null where it is the latest.</summary>
    /// <param name="visit">Its number; null for none.</param>
    /// <param name="knownUpTo">Versions up to this visit do not count; null for those up to the visit itself.</param>
    public string? OvertakenReference(int? visit, int? knownUpTo)
    {
        if (visit is not { } number || Math.Max(number, knownUpTo ?? 0) is var known && Latest <= known)
            return null;
        return
            Visits("visit.visit = $1", number) is [{ Reference: { } reference } own]
            && OfReference(reference).Any(v => v.Visit > known && v.MayBeVersion(own.ExaminedOn, own.Employer))
            ? reference
            : null;
    }

    /// <summary>Visits with all that was decided in them, in the order stored.</summary>
    public IReadOnlyList<TouchingVisit> Of(IReadOnlyCollection<int> numbers)
    {
        var list = JsonSerializer.Serialize(numbers);
        var chosen = $"visit.visit {database.AmongNumbers("$1")}";
        var outcomes = Outcomes(chosen, list).ToLookup(o => o.Visit.Visit, o => o.Outcome);
        return [.. Visits(chosen, list).Select(v => new TouchingVisit(v, [.. outcomes[v.Visit]]))];
    }

    /// <summary>The record of a visit, as stored.</summary>
    /// <exception cref="InvalidDataException">It is not there, or not as it was stored.</exception>
    public byte[] Record(int visit)
    {
        var stored = Connection.Rows(
            row => (Sha256: row.GetString(0), Bytes: row.GetFieldValue<byte[]>(1)),
            "SELECT sha256, record FROM visit WHERE visit = $1",
            visit
        );
        return stored.Count == 1 && string.Equals(Sha256Hex.Of(stored[0].Bytes), stored[0].Sha256, StringComparison.Ordinal)
            ? stored[0].Bytes
            : throw new InvalidDataException(
                FormattableString.Invariant($"The register no longer holds the record of visit {visit} as it was stored.")
            );
    }

    /// <summary>SHA-256 of the record of a visit, as it is listed.</summary>
    public string HashOf(int visit) =>
        Connection.Rows(row => row.GetString(0), "SELECT sha256 FROM visit WHERE visit = $1", visit).Single();

    /// <summary>Everything ever decided of an id, in the order stored.</summary>
    public IReadOnlyList<PastOutcome> OutcomesOf(string item) => Outcomes("outcome.item = $1", item);

    /// <summary>Everything ever decided of items with a serial number, whatever its capitals, in the order stored.</summary>
    public IReadOnlyList<PastOutcome> OutcomesOfSerial(string serial) => Outcomes("upper(item.serial) = upper($1)", serial);

    /// <summary>Everything ever decided.</summary>
    public IReadOnlyList<PastOutcome> Outcomes() => Outcomes("$1 = $1", "");

    /// <summary>What was decided in one visit, in the order stored.</summary>
    public IReadOnlyList<RememberedOutcome> OutcomesOf(int visit) =>
        Connection.Rows(row => Outcome(row, 0), $"SELECT {OutcomeColumns} FROM outcome WHERE visit = $1 ORDER BY position", visit);

    private List<RememberedVisit> Visits(string condition, object? value, string limit = "") =>
        Connection.Rows(Visit, $"SELECT {VisitColumns} FROM visit WHERE {condition} ORDER BY visit.visit{limit}", value);

    private List<PastOutcome> Outcomes(string condition, object? value)
    {
        const int Identity = VisitColumnCount + OutcomeColumnCount;
        return Connection.Rows(
            row => new PastOutcome(
                Visit(row),
                Outcome(row, VisitColumnCount),
                row.Text(Identity),
                row.Text(Identity + 1),
                row.Text(Identity + 2),
                row.Text(Identity + 3)
            ),
            $"""
            SELECT {VisitColumns}, {OutcomeColumns}, item.category, item.maker, item.model, item.serial
            FROM outcome JOIN visit ON visit.visit = outcome.visit
            LEFT JOIN item ON item.visit = outcome.visit
            AND item.position = (SELECT min(i.position) FROM item i WHERE i.visit = outcome.visit AND i.id = outcome.item)
            WHERE {condition} ORDER BY outcome.visit, outcome.position
            """,
            value
        );
    }

    private static RememberedOutcome Outcome(DbDataReader row, int at) =>
        new(row.Text(at), row.GetString(at + 1), Words(row.GetString(at + 2)))
        {
            ExaminedOn = row.Day(at + 3),
            Until = row.Day(at + 4),
            NextBy = row.Day(at + 5),
            Parts = Words(row.GetString(at + 6)),
            NeverReleasable = row.GetInt32(at + 7) == 1,
        };

    private static RememberedVisit Visit(DbDataReader row) =>
        new(row.GetInt32(0), row.GetString(1), row.Text(2), row.Text(3), row.Text(4), row.Day(5), row.Day(6))
        {
            Seen = row.Integer(7),
            Version = row.Text(8),
            AsOf = row.Day(9),
            Origin = row.Text(10),
        };

    private static string[] Words(string json) => JsonSerializer.Deserialize<string[]>(json) ?? [];
}

using System.Data.Common;
using System.Text.Json;
using ExamDocs.Register.Storage;
using NodaTime;

namespace ExamDocs.Register;

/// <summary>The visits that a register remembers, each as it was recorded. None is ever changed: a corrected record is a visit of its own, of the same reference.</summary>
public sealed class VisitRegister
{
    private const string VisitColumns = "visit.visit, visit.sha256, visit.reference, visit.regime, visit.employer, visit.examined_on, visit.stored_on";

    private readonly RegisterDatabase _database;
    private readonly LocalDate _today;

    internal VisitRegister(RegisterDatabase database, LocalDate today) => (_database, _today) = (database, today);

    private DbConnection Connection => _database.Connection;

    /// <summary>Remembers a visit. The same record read twice changes nothing.</summary>
    /// <returns>Its number, and whether it is new.</returns>
    public (int Visit, bool IsNew) Remember(VisitToRemember visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        var sha256 = DurableFile.Hash(visit.Json);
        using var transaction = _database.BeginWriting();
        // An older version read again is the latest again; only what is the latest already changes nothing.
        if (LatestLike(visit.Record.Visit.Reference, sha256) is { } same && string.Equals(same.Sha256, sha256, StringComparison.Ordinal))
            return (same.Visit, false);
        var number = 1 + (int)Connection.Number("SELECT coalesce(max(visit), 0) FROM visit");
        new VisitRows(Connection).Insert(number, sha256, visit, _today);
        transaction.Commit();
        return (number, true);
    }

    /// <summary>All, in the order stored.</summary>
    public IReadOnlyList<RememberedVisit> All() => Visits("$1 = $1", "");

    /// <summary>The versions stored under one reference, in the order stored.</summary>
    public IReadOnlyList<RememberedVisit> OfReference(string reference) => Visits("visit.reference = $1", reference);

    /// <summary>The record of a visit, as stored.</summary>
    /// <exception cref="InvalidDataException">It is not there, or not as it was stored.</exception>
    public byte[] Record(int visit)
    {
        var stored = Connection.Rows(row => (Sha256: row.GetString(0), Bytes: row.GetFieldValue<byte[]>(1)), "SELECT sha256, record FROM visit WHERE visit = $1", visit);
        return stored.Count == 1 && string.Equals(DurableFile.Hash(stored[0].Bytes), stored[0].Sha256, StringComparison.Ordinal)
            ? stored[0].Bytes
            : throw new InvalidDataException(FormattableString.Invariant($"The register no longer holds the record of visit {visit} as it was stored."));
    }

    /// <summary>Everything ever decided of an id, in the order stored.</summary>
    public IReadOnlyList<PastOutcome> OutcomesOf(string item) => Outcomes("outcome.item = $1", item);

    /// <summary>Everything ever decided of items with a serial number, whatever its capitals, in the order stored.</summary>
    public IReadOnlyList<PastOutcome> OutcomesOfSerial(string serial) => Outcomes("upper(item.serial) = upper($1)", serial);

    /// <summary>Everything ever decided.</summary>
    public IReadOnlyList<PastOutcome> Outcomes() => Outcomes("$1 = $1", "");

    private RememberedVisit? LatestLike(string? reference, string sha256) =>
        (reference is null ? Visits("visit.reference IS NULL AND visit.sha256 = $1", sha256) : OfReference(reference)) is [.., var last] ? last : null;

    private List<RememberedVisit> Visits(string condition, string value) =>
        Connection.Rows(row => Visit(row), $"SELECT {VisitColumns} FROM visit WHERE {condition} ORDER BY visit.visit", value);

    private List<PastOutcome> Outcomes(string condition, string value) =>
        Connection.Rows(
            row => new PastOutcome(
                Visit(row),
                new RememberedOutcome(row.Text(7), row.GetString(8), Words(row.GetString(9)))
                {
                    ExaminedOn = DocumentRows.Day(row.Text(10)), Until = DocumentRows.Day(row.Text(11)), NextBy = DocumentRows.Day(row.Text(12)),
                    Parts = Words(row.GetString(13)), NeverReleasable = row.GetInt32(14) == 1,
                },
                row.Text(15), row.Text(16), row.Text(17), row.Text(18)),
            $"""
            SELECT {VisitColumns}, outcome.item, outcome.outcome, outcome.codes, outcome.examined_on, outcome.until, outcome.next_by, outcome.parts, outcome.never_releasable,
              item.category, item.maker, item.model, item.serial
            FROM outcome JOIN visit ON visit.visit = outcome.visit
            LEFT JOIN item ON item.visit = outcome.visit AND item.position = (SELECT min(i.position) FROM item i WHERE i.visit = outcome.visit AND i.id = outcome.item)
            WHERE {condition} ORDER BY outcome.visit, outcome.position
            """,
            value);

    private static RememberedVisit Visit(DbDataReader row) => new(
        row.GetInt32(0), row.GetString(1), row.Text(2), row.Text(3), row.Text(4), DocumentRows.Day(row.Text(5)), DocumentRows.Day(row.Text(6)));

    private static string[] Words(string json) => JsonSerializer.Deserialize<string[]>(json) ?? [];
}

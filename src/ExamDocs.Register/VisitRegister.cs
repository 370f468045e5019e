using System.Data.Common;
using System.Text.Json;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using ExamDocs.Register.Log;
using ExamDocs.Register.Storage;
using NodaTime;

namespace ExamDocs.Register;

/// <summary>
/// The visits that a register remembers, each as it was recorded. None is ever changed: a corrected record is a visit of its own, of the
/// same reference.
/// </summary>
public sealed class VisitRegister
{
    internal const string VisitColumns =
        "visit.visit, visit.sha256, visit.reference, visit.regime, visit.employer, visit.examined_on, visit.stored_on, "
        + "visit.seen, visit.version, visit.as_of, visit.origin";

    internal const int VisitColumnCount = 11;

    private readonly RegisterDatabase _database;
    private readonly LineEnds _ends;
    private readonly VisitStore _store;

    internal VisitRegister(RegisterDatabase database, LogRows log, LineEnds ends, LocalDate today)
    {
        (_database, _ends) = (database, ends);
        _store = new(database, this, log, ends, today);
    }

    /// <summary>Where visits are stored.</summary>
    internal VisitStore Store => _store;

    private DbConnection Connection => _database.Connection;

    /// <summary>Number of the visit stored last; 0 where there is none.</summary>
    public int Latest => (int)Connection.Number("SELECT coalesce(max(visit), 0) FROM visit");

    /// <summary>Remembers one visit, as <see cref="Remember(IReadOnlyList{VisitToRemember}, int?)"/> does.</summary>
    public (int Visit, bool IsNew) Remember(VisitToRemember visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return _store.Remember([visit], null)![0];
    }

    /// <summary>
    /// Remembers visits that were decided together, in one transaction with what they end. A record that is the latest version
    /// of its visit already, with the same outcomes, is not stored again.
    /// </summary>
    /// <param name="visits">In the order in which they are to be numbered.</param>
    /// <param name="knownUpTo">The last visit that was known when they were decided; left out, that is not asked.</param>
    /// <returns>Number of each, and whether it is new; null, and nothing is stored, where another run stored visits since
    /// <paramref name="knownUpTo"/>.</returns>
    public IReadOnlyList<(int Visit, bool IsNew)>? Remember(IReadOnlyList<VisitToRemember> visits, int? knownUpTo = null)
    {
        ArgumentNullException.ThrowIfNull(visits);
        return _store.Remember(visits, knownUpTo);
    }

    /// <summary>All, in the order stored.</summary>
    public IReadOnlyList<RememberedVisit> All() => Visits("$1 = $1", "");

    /// <summary>The versions stored under one reference, in the order stored.</summary>
    public IReadOnlyList<RememberedVisit> OfReference(string reference) => Visits("visit.reference = $1", reference);

    /// <summary>The record of a visit, as stored.</summary>
    /// <exception cref="InvalidDataException">It is not there, or not as it was stored.</exception>
    public byte[] Record(int visit)
    {
        var stored = Connection.Rows(
            row => (Sha256: row.GetString(0), Bytes: row.GetFieldValue<byte[]>(1)),
            "SELECT sha256, record FROM visit WHERE visit = $1",
            visit
        );
        return stored.Count == 1 && string.Equals(DurableFile.Hash(stored[0].Bytes), stored[0].Sha256, StringComparison.Ordinal)
            ? stored[0].Bytes
            : throw new InvalidDataException(
                FormattableString.Invariant($"The register no longer holds the record of visit {visit} as it was stored.")
            );
    }

    /// <summary>
    /// Visits in which an item of a record, or one that can be the same as it or be assembled with it, is named: by the keys of
    /// <see cref="ItemKeys"/>, over any number of other items between.
    /// </summary>
    /// <param name="record">The record that is to be decided.</param>
    /// <param name="upTo">The last visit that counts; left out, all do.</param>
    /// <param name="origin">The register in whose numbers <paramref name="upTo"/> is, for a visit that came from another; left out, this
    /// one.</param>
    /// <returns>In the order stored.</returns>
    public IReadOnlyList<TouchingVisit> Touching(ExaminationRecord record, int? upTo = null, string? origin = null)
    {
        ArgumentNullException.ThrowIfNull(record);
        return Of(new Connected(_database, upTo, origin).To(ItemKeys.Of(record).Select(k => k.Key)));
    }

    /// <summary>The same visits, each held against the log before it is given.</summary>
    /// <param name="read">Reads the record of a visit, given its number and bytes; null where that is impossible.</param>
    public VisitsAsLogged AsLogged(Func<int, byte[], ExaminationRecord?> read) => new(_database, this, read);

    /// <summary>Visits with all that was decided in them, in the order stored.</summary>
    internal IReadOnlyList<TouchingVisit> Of(IReadOnlyCollection<int> numbers)
    {
        var list = JsonSerializer.Serialize(numbers);
        var chosen = $"visit.visit IN {_database.Numbers("$1")}";
        var outcomes = Outcomes(chosen, list).ToLookup(o => o.Visit.Visit, o => o.Outcome);
        return [.. Visits(chosen, list).Select(v => new TouchingVisit(v, [.. outcomes[v.Visit]]))];
    }

    internal bool EndsAreIn(DocumentStatus document) => _ends.AreIn(document);

    /// <summary>What later visits ended of what the documents of a visit say: these lines are not to be printed again.</summary>
    public IReadOnlyList<(LineEnd End, int ByVisit)> EndsOf(int visit) => _ends.Of(visit);

    /// <summary>Everything ever decided of an id, in the order stored.</summary>
    public IReadOnlyList<PastOutcome> OutcomesOf(string item) => Outcomes("outcome.item = $1", item);

    /// <summary>Everything ever decided of items with a serial number, whatever its capitals, in the order stored.</summary>
    public IReadOnlyList<PastOutcome> OutcomesOfSerial(string serial) => Outcomes("upper(item.serial) = upper($1)", serial);

    /// <summary>Everything ever decided.</summary>
    public IReadOnlyList<PastOutcome> Outcomes() => Outcomes("$1 = $1", "");

    /// <summary>What was decided in one visit, in the order stored.</summary>
    internal IReadOnlyList<RememberedOutcome> OutcomesOf(int visit) =>
        Connection.Rows(row => Outcome(row, 0), $"SELECT {OutcomeColumns} FROM outcome WHERE visit = $1 ORDER BY position", visit);

    internal static bool IsSame(IReadOnlyList<RememberedOutcome> stored, IReadOnlyList<RememberedOutcome> now) =>
        stored
            .Select(o => LogEntryJson.Outcome(o).ToString())
            .SequenceEqual(now.Select(o => LogEntryJson.Outcome(o).ToString()), StringComparer.Ordinal);

    internal string HashOf(int visit) =>
        Connection.Rows(row => row.GetString(0), "SELECT sha256 FROM visit WHERE visit = $1", visit).Single();

    private List<RememberedVisit> Visits(string condition, object? value) =>
        Connection.Rows(row => Visit(row), $"SELECT {VisitColumns} FROM visit WHERE {condition} ORDER BY visit.visit", value);

    private const string OutcomeColumns =
        "outcome.item, outcome.outcome, outcome.codes, outcome.examined_on, outcome.until, outcome.next_by, outcome.parts, "
        + "outcome.never_releasable";

    private const int OutcomeColumnCount = 8;

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
            LEFT JOIN item ON item.visit = outcome.visit AND item.position = (SELECT min(i.position) FROM item i WHERE i.visit = outcome.visit AND i.id = outcome.item)
            WHERE {condition} ORDER BY outcome.visit, outcome.position
            """,
            value
        );
    }

    private static RememberedOutcome Outcome(DbDataReader row, int at) =>
        new(row.Text(at), row.GetString(at + 1), Words(row.GetString(at + 2)))
        {
            ExaminedOn = DocumentRows.Day(row.Text(at + 3)),
            Until = DocumentRows.Day(row.Text(at + 4)),
            NextBy = DocumentRows.Day(row.Text(at + 5)),
            Parts = Words(row.GetString(at + 6)),
            NeverReleasable = row.GetInt32(at + 7) == 1,
        };

    private static RememberedVisit Visit(DbDataReader row) =>
        new(
            row.GetInt32(0),
            row.GetString(1),
            row.Text(2),
            row.Text(3),
            row.Text(4),
            DocumentRows.Day(row.Text(5)),
            DocumentRows.Day(row.Text(6))
        )
        {
            Seen = row.IsDBNull(7) ? null : row.GetInt32(7),
            Version = row.Text(8),
            AsOf = DocumentRows.Day(row.Text(9)),
            Origin = row.Text(10),
        };

    private static string[] Words(string json) => JsonSerializer.Deserialize<string[]>(json) ?? [];
}

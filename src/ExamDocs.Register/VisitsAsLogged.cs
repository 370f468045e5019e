using System.Text.Json;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using ExamDocs.Register.Checking;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register;

/// <summary>
/// Gives the visits that a decision or a print uses, once what is stored of each was compared with its entry in the log and with
/// its own record. Only these visits and their entries are read, by indexes: what other rows hold is left to a check of the register.
/// </summary>
public sealed class VisitsAsLogged
{
    /// <summary>Rows of so many visits are held beside one another: a few statements for each lot, and little memory.</summary>
    private const int AtOnce = 200;

    private readonly RegisterRows _rows;
    private readonly RegisterDatabase _database;
    private readonly Func<int, byte[], ExaminationRecord?> _read;
    private readonly HashSet<int> _sound = [];
    private readonly EntriesInLog _log;
    private bool _isComplete;

    internal VisitsAsLogged(RegisterRows rows, Func<int, byte[], ExaminationRecord?> read) =>
        (_rows, _database, _read, _log) = (rows, rows.Database, read, rows.Log.InLog());

    /// <summary>As <see cref="VisitRegister.Touching"/> gives them.</summary>
    /// <exception cref="RegisterAlteredException">One of them is not as the log has it, or a visit is gone.</exception>
    public IReadOnlyList<TouchingVisit> Touching(ExaminationRecord record, int? upTo = null, string? origin = null)
    {
        ArgumentNullException.ThrowIfNull(record);
        var keys = ItemKeys.Of(record);
        var connected = new ConnectedVisits(_database, upTo, origin);
        var found = connected.To(keys.Select(k => k.Key));
        Require([.. found.Concat(Named(keys.Select(k => k.Item).Concat(connected.Items), record.Items.Select(i => i.Serial)))]);
        return _rows.Visits.Of(found);
    }

    /// <summary>Compares visits with the log and with their records.</summary>
    /// <exception cref="RegisterAlteredException">One of them is not as the log has it, or a visit is gone.</exception>
    public void Require(IReadOnlyCollection<int> visits)
    {
        RequireAll();
        var asked = visits.Where(v => !_sound.Contains(v)).Distinct().Order().ToList();
        foreach (var some in asked.Chunk(AtOnce))
        {
            var stored = new StoredVisits(_database, some);
            if (stored.FirstFault(_read) is (var visit, { } fault))
                throw new RegisterAlteredException(stored.Name(visit), fault);
            _log.Require(stored.Positions);
            _sound.UnionWith(some);
        }
    }

    /// <summary>Whether visits are stored with these records and outcomes, once they were compared with the log.</summary>
    /// <param name="decided">Number of each, and what was decided.</param>
    /// <exception cref="RegisterAlteredException">One of them is not as the log has it, or a visit is gone.</exception>
    public bool AreAs(IReadOnlyList<(int Visit, VisitToRemember Decided)> decided)
    {
        ArgumentNullException.ThrowIfNull(decided);
        Require([.. decided.Select(d => d.Visit)]);
        var stored = _rows.Visits.Of([.. decided.Select(d => d.Visit)]).ToDictionary(v => v.Visit.Visit);
        return decided.All(d =>
            stored.TryGetValue(d.Visit, out var visit)
            && string.Equals(visit.Visit.Sha256, Sha256Hex.Of(d.Decided.Json), StringComparison.Ordinal)
            && LoggedOutcome.AreSame(visit.Outcomes, d.Decided.Outcomes)
        );
    }

    /// <summary>
    /// Requires that a document listed as current shows all that later visits ended of it. Call <see cref="Require"/> for those
    /// visits before.
    /// </summary>
    /// <exception cref="RegisterAlteredException">It does not.</exception>
    public void RequireEnds(DocumentStatus document)
    {
        ArgumentNullException.ThrowIfNull(document);
        if (!_rows.LineEnds.AreIn(document))
            throw new RegisterAlteredException(document.Number, "A later visit ended what it says, and it is listed as if none had.");
    }

    /// <summary>A visit whose keys were altered is still found by an id or a serial number that is typed alike in its other rows.</summary>
    private List<int> Named(IEnumerable<string> ids, IEnumerable<string?> serials)
    {
        var (id, serial) = (_database.AmongTexts("$1"), _database.AmongTexts("$2"));
        return _database.Connection.Rows(
            row => row.GetInt32(0),
            $"""
            SELECT visit FROM outcome WHERE item {id} UNION SELECT visit FROM item WHERE id {id}
            UNION SELECT visit FROM examination WHERE item {id} UNION SELECT visit FROM item WHERE serial {serial}
            """,
            Listed(ids),
            Listed(serials.OfType<string>())
        );
    }

    private static string Listed(IEnumerable<string> texts) =>
        JsonSerializer.Serialize(texts.Where(t => t.Length > 0).Select(StorableText.Of).Distinct(StringComparer.Ordinal));

    /// <summary>
    /// No visit up to the last one in the log may be gone: nobody knows what it said. The log is asked first, because other runs
    /// may store visits meanwhile.
    /// </summary>
    private void RequireAll()
    {
        if (_isComplete)
            return;
        var entry = _database.VisitOfEntry;
        var logged = _database
            .Connection.Rows(row => row.GetInt32(0), $"SELECT {entry} FROM log WHERE {entry} > 0 ORDER BY {entry} DESC LIMIT 1")
            .FirstOrDefault();
        var last = Math.Max(logged, _rows.Visits.Latest);
        if (_database.Connection.Number("SELECT count(*) FROM visit WHERE visit BETWEEN 1 AND $1", last) < last)
        {
            var there = _database.Connection.Rows(row => row.GetInt32(0), "SELECT visit FROM visit").ToHashSet();
            var gone = new StoredVisits(_database, [.. Enumerable.Range(1, last).Where(v => !there.Contains(v))]);
            throw gone.FirstInLog is { } visit
                ? new RegisterAlteredException(gone.Name(visit), "It is in the log, and its row is gone.")
                : new RegisterAlteredException(
                    gone.Name(Enumerable.Range(1, last).First(v => !there.Contains(v))),
                    "There are later ones, and its row is gone."
                );
        }
        _isComplete = true;
    }
}

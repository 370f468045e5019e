using System.Data;
using System.Data.Common;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Checking;

/// <summary>
/// Whether a register is sound. It goes through the log once, then through the documents and the visits a few at a time, and keeps none
/// of them in memory. What cannot be read is something wrong, and stops nothing else from being looked at.
/// </summary>
internal sealed class RegisterCheck(RegisterRows rows, RegisterCheckRequest request)
{
    private readonly RegisterDatabase _database = rows.Database;
    private readonly List<string> _faults = [];
    private readonly List<string> _notes = [];

    public RegisterCheckResult Run()
    {
        using var entries = new LoggedEntries();
        var log = new CheckedLog(rows.Log, request, entries);
        var again = new DecidedAgain(rows.Visits, request, IsSince ? log.Remembered : null);
        var documents = new DocumentsCheck(_database, rows.Documents, rows.Contents, entries)
        {
            ComparesOutcomes = request.Read is not null,
        };
        var visits = new VisitsCheck(_database, request.Read, entries);
        using (_database.BeginReading())
        {
            // Every page of it is read for that.
            if (!IsSince)
                Look("the database", _database.Damage);
            Look("the guards", Guarded);
            Look("the log", () => log.Faults().Concat(Own(log)));
            Look("the sequences", Gaps);
            Look("the documents", () => documents.Faults(IsSince));
            Look("the places", () => Places(log));
            Look("the visits", () => visits.Faults(IsSince));
            if (IsSince)
                Look("the tables", () => Counted(log));
        }
        Look("the documents", documents.Missing);
        // What is decided again is never changed, so that nobody has to wait for it.
        Look("the outcomes", again.Faults);
        return new(_faults, [.. _notes, .. again.Notes])
        {
            DecidedByOthers = again.ByOthers,
            DecidedOtherwise = again.Notes.Count,
            OfVisits = again.OfVisits,
            OfDocuments = documents.OfDocuments,
            Log =
                _faults.Count == 0 && rows.Log.Latest() is { } latest ? new Checkpoint(latest.Origin, log.Log.Size, log.Log.Root()) : null,
        };
    }

    private bool IsSince => request.Since is not null;

    /// <summary>What is not in the log at all is found by no entry: the log and the tables must have as many.</summary>
    private IEnumerable<string> Counted(CheckedLog log)
    {
        foreach (
            var (what, stored, logged) in new[]
            {
                ("documents issued or void", "document WHERE state <> 'pending'", log.Documents),
                ("visits", "visit", log.Visits),
                ("visits numbered one after the other", $"visit WHERE visit BETWEEN 1 AND {log.Visits}", log.Visits),
            }
        )
        {
            if (_database.Connection.Number($"SELECT count(*) FROM {stored}") is var count && count != logged)
                yield return FormattableString.Invariant(
                    $"There are {count} {what}, and {logged} in the log: check all of the register, without --since."
                );
        }
    }

    /// <summary>Each part by itself: what breaks one is a fault like any other, and the rest is still looked at.</summary>
    private void Look(string what, Func<IEnumerable<string>> look)
    {
        try
        {
            foreach (var fault in look())
                _faults.Add(fault);
        }
        catch (Exception broken)
            when (broken
                    is RegisterDamagedException
                        or DbException
                        or InvalidDataException
                        or ArgumentException
                        or InvalidOperationException
                && _database.Connection.State is ConnectionState.Open
            )
        {
            _faults.Add($"Not all of {what} can be read: {broken.Message.Split('\n')[0].TrimEnd()}");
        }
    }

    private IEnumerable<string> Own(CheckedLog log)
    {
        var (own, entries) = (log.Own, log.Log.Size);
        var stored = _database.Connection.Raw("SELECT single, id, layout, log_size, kept_since FROM register");
        return
            stored is [var row]
            && row[3].Value is { } counted
            && !string.Equals(counted, RawRows.Written(entries), StringComparison.Ordinal)
            ? [FormattableString.Invariant($"The log should have {counted.Trim('(', ')')} entries and has {entries}.")]
            : RawRows.Differences(
                "The register",
                "its own row",
                stored,
                [
                    [1, own?.Register, Layout.Version, entries, StoredDay.Of(own?.Day)],
                ],
                "the log"
            );
    }

    private IEnumerable<string> Places(CheckedLog log) =>
        RawRows.Differences(
            "Where documents are kept",
            "content_place",
            _database.Connection.Raw("SELECT position, word, place, day FROM content_place ORDER BY position"),
            log.Places,
            "the log"
        );

    /// <summary>A guard that was taken away is noted; a trigger that is not ours may do anything, and is a fault.</summary>
    private List<string> Guarded()
    {
        var triggers = _database.Triggers();
        var missing = Guards.All.Select(g => g.Name).Except(triggers.Select(t => t.Name), StringComparer.Ordinal).ToList();
        if (missing.Count > 0)
            _notes.Add(
                $"Guards against change were taken away: {string.Join(", ", missing.Take(5))}"
                    + $"{(missing.Count > 5 ? FormattableString.Invariant($" and {missing.Count - 5} more") : "")}."
            );
        return
        [
            .. triggers
                .Where(t => !t.IsOurs)
                .Select(t => $"The trigger {t.Name} of the database is not this program's, or was altered or switched off."),
            .. _database.ForeignTables().Select(t => $"The table or view {t} of the database is not this program's."),
        ];
    }

    private IEnumerable<string> Gaps()
    {
        var wrong = _database.Connection.Raw(
            """
            SELECT coalesce(counter.letter, document.letter) AS letter, coalesce(counter.year, document.year) AS year, counter.last,
            count(document.number) AS listed
            FROM counter FULL JOIN document ON document.letter = counter.letter AND document.year = counter.year
            GROUP BY coalesce(counter.letter, document.letter), coalesce(counter.year, document.year), counter.last
            HAVING counter.last IS NULL OR count(document.number) <> counter.last OR max(document.sequence) <> counter.last
            """
        );
        foreach (var row in wrong.Select(r => r.Select(c => c.Value?.Trim('(', ')')).ToList()))
            yield return $"Sequence {row[0]}-{row[1]} has a gap: the last number is {row[2] ?? "not known"}, {row[3]} are listed.";
    }
}

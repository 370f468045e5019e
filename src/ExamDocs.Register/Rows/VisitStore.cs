using ExamDocs.Core.Identity;
using ExamDocs.Core.Known;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;
using NodaTime;

namespace ExamDocs.Register.Rows;

/// <summary>Stores visits with their rows, their keys and their entries in the log; what is stored is never stored again.</summary>
internal sealed class VisitStore(RegisterDatabase database, LogRows log, RememberedVisits remembered, LineEnds ends, LocalDate today)
{
    /// <summary>
    /// Stores visits in one transaction, with what they end. A record that is the latest version of its visit already, with the same
    /// outcomes, is not stored again.
    /// </summary>
    /// <param name="visits">In the order in which they are to be numbered.</param>
    /// <param name="knownUpTo">The last visit that was known when they were decided; null where that is not asked.</param>
    /// <returns>Null, and nothing is stored, where another run stored visits since <paramref name="knownUpTo"/>.</returns>
    public IReadOnlyList<(int Visit, bool IsNew)>? Remember(IReadOnlyList<VisitToRemember> visits, int? knownUpTo)
    {
        using var transaction = database.BeginWriting();
        var latest = remembered.Latest;
        if (knownUpTo is { } known && known != latest)
            return null;
        var numbers = Numbered(visits, latest);
        var seen = numbers.Select(n => n.Visit).Append(latest).Max();
        if (numbers.Exists(n => n.IsNew))
            log.Require();
        for (var n = 0; n < visits.Count; n++)
        {
            if (numbers[n].IsNew)
                Insert(numbers[n].Visit, visits[n], seen);
        }
        for (var n = 0; n < visits.Count; n++)
            ends.Store(numbers[n].Visit, visits[n].Ends);
        transaction.Commit();
        return numbers;
    }

    /// <summary>Stores a visit that came from another register, under the next number here; part of the caller's transaction.</summary>
    /// <param name="origin">Identity of the register that it came from.</param>
    /// <param name="originNumber">Its number there.</param>
    /// <param name="visit">As it was decided there.</param>
    /// <param name="seen">The last visit that it could know, in the numbers of that register; null where that was not kept.</param>
    /// <param name="storedOn">The day on which it was stored there.</param>
    /// <returns>Its number here.</returns>
    public int TakeIn(string origin, int originNumber, VisitToRemember visit, int? seen, LocalDate? storedOn)
    {
        var number = remembered.Latest + 1;
        Insert(number, visit, seen, new LoggedVisit(number, "") { Origin = origin, OriginNumber = originNumber }, storedOn);
        AddOriginNumber(origin, originNumber, number);
        return number;
    }

    /// <summary>Keeps the number under which another register knows a visit; part of the caller's transaction.</summary>
    public void AddOriginNumber(string origin, int originNumber, int visit) =>
        database.Connection.Execute("INSERT INTO merged_visit (origin, number, visit) VALUES ($1, $2, $3)", origin, originNumber, visit);

    private void Insert(int number, VisitToRemember visit, int? seen, LoggedVisit? from = null, LocalDate? storedOn = null)
    {
        var (sha256, day) = (Sha256Hex.Of(visit.Json), storedOn ?? today);
        var asOf = from is null ? visit.AsOf ?? today : visit.AsOf;
        database.Connection.Execute(
            """
            INSERT INTO visit (visit, sha256, reference, regime, employer, premises, examined_on, stored_on, record, seen, version, as_of,
            origin)
            VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13)
            """,
            [
                number,
                sha256,
                .. VisitRows.Visit(visit.Record),
                StoredDay.Of(day),
                visit.Json,
                seen,
                visit.Version,
                StoredDay.Of(asOf),
                from?.Origin,
            ]
        );
        var rows = VisitRows.Of(number, visit.Record).Concat(VisitRows.Outcomes(number, visit.Outcomes));
        foreach (var table in rows.GroupBy(r => r.Table, StringComparer.Ordinal))
            database.Connection.Insert(table.Key, table.Select(r => r.Values));
        var logged = new LoggedVisit(number, sha256)
        {
            Seen = seen,
            Version = visit.Version is { } version ? StorableText.Of(version) : null,
            AsOf = asOf,
            Origin = from?.Origin,
            OriginNumber = from?.OriginNumber,
            Outcomes = visit.Outcomes,
        };
        log.Append(at => LogEntry.Remembered(at, logged, day));
    }

    /// <summary>An older version read again is the latest again; only what is the latest already, decided alike, is there.</summary>
    private List<(int Visit, bool IsNew)> Numbered(IReadOnlyList<VisitToRemember> visits, int latest)
    {
        var numbers = new List<(int Visit, bool IsNew)>();
        // What is stored by this call counts among the versions too.
        var added = new List<Version>();
        var places = visits
            .Index()
            .SelectMany(v => Folded.Keys(v.Item.Record.Visit.Reference).Select(key => (key, v.Index)))
            .ToLookup(v => v.key, v => v.Index, StringComparer.Ordinal);
        foreach (var (at, visit) in visits.Index())
        {
            var sha256 = Sha256Hex.Of(visit.Json);
            var reference = visit.Record.Visit.Reference;
            // Of several versions handed in together only the last one counts again; those before it may be there already.
            var isFollowed = Folded
                .Keys(reference)
                .SelectMany(key => places[key])
                .Any(later => later > at && KnownVisit.IsOneVisit(visits[later].Record, visit.Record));
            // Only what was stored since the same record was can be a later version than that.
            var like = remembered
                .SinceRecord(sha256)
                .Select(v => new Version(v.Visit, v.Sha256, v.Reference, v.Employer, null))
                .Concat(added)
                .LastOrDefault(v =>
                    reference is null || isFollowed
                        ? string.Equals(v.Reference, reference, StringComparison.Ordinal)
                            && string.Equals(v.Sha256, sha256, StringComparison.Ordinal)
                        : IsVersion(v.Reference, v.Employer, visit.Record.Visit)
                );
            if (
                like is not null
                && string.Equals(like.Sha256, sha256, StringComparison.Ordinal)
                && LoggedOutcome.AreSame(like.Outcomes ?? remembered.OutcomesOf(like.Visit), visit.Outcomes)
            )
            {
                numbers.Add((like.Visit, false));
                continue;
            }
            numbers.Add((++latest, true));
            added.Add(new(latest, sha256, reference, visit.Record.Visit.Employer?.Name, visit.Outcomes));
        }
        return numbers;
    }

    private static bool IsVersion(string? reference, string? employer, Core.Records.Visit visit) =>
        Folded.Same(reference, visit.Reference) && FirmName.MayBeSame(employer, visit.Employer?.Name);

    private sealed record Version(
        int Visit,
        string Sha256,
        string? Reference,
        string? Employer,
        IReadOnlyList<RememberedOutcome>? Outcomes
    );
}

using ExamDocs.Core.Identity;
using ExamDocs.Register.Log;
using NodaTime;

namespace ExamDocs.Register.Storage;

/// <summary>Stores visits with their rows, their keys and their entries in the log; what is stored is never stored again.</summary>
internal sealed class VisitStore(RegisterDatabase database, VisitRegister register, LogRows log, LineEnds ends, LocalDate today)
{
    /// <inheritdoc cref="VisitRegister.Remember(IReadOnlyList{VisitToRemember}, int?)"/>
    public IReadOnlyList<(int Visit, bool IsNew)>? Remember(IReadOnlyList<VisitToRemember> visits, int? knownUpTo)
    {
        using var transaction = database.BeginWriting();
        var latest = register.Latest;
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

    /// <summary>Stores a visit that came from another register, within a transaction of its own.</summary>
    public int TakeIn(string origin, int originNumber, VisitToRemember visit, int? seen, LocalDate? storedOn)
    {
        using var transaction = database.BeginWriting();
        var number = register.Latest + 1;
        Insert(number, visit, seen, new LoggedVisit(number, "") { Origin = origin, OriginNumber = originNumber }, storedOn);
        database.Connection.Execute("INSERT INTO merged_visit (origin, number, visit) VALUES ($1, $2, $3)", origin, originNumber, number);
        transaction.Commit();
        return number;
    }

    public void Insert(int number, VisitToRemember visit, int? seen, LoggedVisit? from = null, LocalDate? storedOn = null)
    {
        var (sha256, day) = (DurableFile.Hash(visit.Json), storedOn ?? today);
        var asOf = from is null ? visit.AsOf ?? today : visit.AsOf;
        database.Connection.Execute(
            """
            INSERT INTO visit (visit, sha256, reference, regime, employer, premises, examined_on, stored_on, record, seen, version, as_of, origin)
            VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13)
            """,
            [
                number,
                sha256,
                .. VisitRows.Visit(visit.Record),
                DocumentRows.Day(day),
                visit.Json,
                seen,
                visit.Version,
                DocumentRows.Day(asOf),
                from?.Origin,
            ]
        );
        foreach (var row in VisitRows.Of(number, visit.Record).Concat(VisitRows.Outcomes(number, visit.Outcomes)))
            database.Connection.Execute(
                $"INSERT INTO {row.Table} VALUES "
                    + $"({string.Join(", ", row.Values.Select((_, i) => FormattableString.Invariant($"${i + 1}")))})",
                row.Values
            );
        var logged = new LoggedVisit(number, sha256)
        {
            Seen = seen,
            Version = visit.Version is { } version ? Sql.Storable(version) : null,
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
        var versions = new Lazy<List<Version>>(() =>
            [.. register.All().Select(v => new Version(v.Visit, v.Sha256, v.Reference, v.Employer, null))]
        );
        foreach (var visit in visits)
        {
            var sha256 = DurableFile.Hash(visit.Json);
            var (reference, employer) = (visit.Record.Visit.Reference, visit.Record.Visit.Employer?.Name);
            var like = versions.Value.FindLast(v =>
                reference is null
                    ? v.Reference is null && string.Equals(v.Sha256, sha256, StringComparison.Ordinal)
                    : Folded.Same(v.Reference, reference) && FirmName.MayBeSame(v.Employer, employer)
            );
            if (
                like is not null
                && string.Equals(like.Sha256, sha256, StringComparison.Ordinal)
                && VisitRegister.IsSame(like.Outcomes ?? register.OutcomesOf(like.Visit), visit.Outcomes)
            )
            {
                numbers.Add((like.Visit, false));
                continue;
            }
            numbers.Add((++latest, true));
            versions.Value.Add(new(latest, sha256, reference, employer, visit.Outcomes));
        }
        return numbers;
    }

    private sealed record Version(
        int Visit,
        string Sha256,
        string? Reference,
        string? Employer,
        IReadOnlyList<RememberedOutcome>? Outcomes
    );
}

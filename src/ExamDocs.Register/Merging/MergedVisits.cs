using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using ExamDocs.Register.Log;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Merging;

/// <summary>
/// The visits of another register, taken in or found here. Each register's own numbers for the visits that it knows are kept
/// beside ours, because what a visit could see when it was decided is told in those.
/// </summary>
internal sealed class MergedVisits(
    RegisterDatabase database,
    DocumentRegister here,
    DocumentRegister other,
    Func<byte[], ExaminationRecord?> read
)
{
    private readonly Dictionary<int, int> _ours = [];
    private readonly List<int> _new = [];
    private readonly List<string> _refused = [];
    private readonly List<string> _remarks = [];
    private readonly Dictionary<(string Origin, int Number), int> _known = Merged(here)
        .ToDictionary(m => (m.Origin, m.Number), m => m.Visit);

    public IReadOnlyList<int> New => _new;

    public int Known { get; private set; }

    public IReadOnlyList<string> Refused => _refused;

    public IReadOnlyList<string> Remarks => _remarks;

    /// <summary>Our number of a visit of the other register; null where it could not come in.</summary>
    public int? Ours(int? theirs) => theirs is { } number && _ours.TryGetValue(number, out var ours) ? ours : null;

    public void TakeIn()
    {
        var names = Merged(other).ToLookup(m => m.Visit, m => (m.Origin, m.Number));
        foreach (var visit in other.Visits.All())
        {
            var name = visit.Origin is { } origin
                ? names[visit.Visit].FirstOrDefault(n => string.Equals(n.Origin, origin, StringComparison.Ordinal))
                : (Origin: other.Identity, Number: visit.Visit);
            if (Find(visit, name) is { } ours)
            {
                Known++;
                _ours[visit.Visit] = ours;
            }
            else
            {
                Add(visit, name);
            }
        }
        // Where all numbers are ours, as in a copy of this register, there is nothing to tell apart.
        if (!string.Equals(other.Identity, here.Identity, StringComparison.Ordinal) || _ours.Any(o => o.Key != o.Value))
        {
            foreach (var (theirs, ours) in _ours)
                Name(other.Identity, theirs, ours);
        }
        foreach (
            var (origin, number, theirs) in Merged(other)
                .Where(m => _ours.ContainsKey(m.Visit) && !string.Equals(m.Origin, here.Identity, StringComparison.Ordinal))
        )
            Name(origin, number, _ours[theirs]);
    }

    /// <summary>What visits of the other register ended there ends here too.</summary>
    public void TakeEnds()
    {
        foreach (var visit in other.Visits.All().Where(v => _ours.ContainsKey(v.Visit)))
        {
            foreach (var by in other.Visits.EndsOf(visit.Visit).Where(e => _ours.ContainsKey(e.ByVisit)).GroupBy(e => _ours[e.ByVisit]))
                here.Rows.Ends.Store(by.Key, [.. by.Select(e => e.End with { Visit = _ours[visit.Visit] })]);
        }
    }

    /// <summary>
    /// By the identity of its register and its number there; else the same record with the same outcomes, however it came here.
    /// </summary>
    private int? Find(RememberedVisit visit, (string Origin, int Number) name)
    {
        if (_known.TryGetValue(name, out var taken) && Is(taken, visit))
            return taken;
        if (string.Equals(name.Origin, here.Identity, StringComparison.Ordinal) && Is(name.Number, visit))
            return name.Number;
        return database
            .Connection.Rows(row => row.GetInt32(0), "SELECT visit FROM visit WHERE sha256 = $1 ORDER BY visit", visit.Sha256)
            .Where(v => !_ours.ContainsValue(v) && VisitRegister.IsSame(here.Visits.OutcomesOf(v), other.Visits.OutcomesOf(visit.Visit)))
            .Cast<int?>()
            .FirstOrDefault();
    }

    private bool Is(int ours, RememberedVisit visit) =>
        database.Connection.Number("SELECT count(*) FROM visit WHERE visit = $1 AND sha256 = $2", ours, visit.Sha256) == 1
        && VisitRegister.IsSame(here.Visits.OutcomesOf(ours), other.Visits.OutcomesOf(visit.Visit));

    private void Add(RememberedVisit visit, (string Origin, int Number) name)
    {
        var json = other.Visits.Record(visit.Visit);
        if (read(json) is not { } record)
        {
            _refused.Add(
                FormattableString.Invariant(
                    $"Visit {visit.Visit} ({visit.Reference}) of {other.Place} cannot be read by this version, and was not taken in."
                )
            );
            return;
        }
        if (
            visit.Reference is { } reference
            && here.Visits.All().Any(v => Folded.Same(v.Reference, reference) && FirmName.MayBeSame(v.Employer, visit.Employer))
        )
            _remarks.Add(
                $"{reference} is in both registers in different versions; the one taken in counts as the later. Look at it, "
                    + "and issue the right version again."
            );
        var number = here.Visits.Latest + 1;
        here.Visits.Store.Insert(
            number,
            new(record, json, other.Visits.OutcomesOf(visit.Visit)) { Version = visit.Version, AsOf = visit.AsOf },
            visit.Seen,
            new LoggedVisit(number, "") { Origin = name.Origin, OriginNumber = name.Number },
            visit.StoredOn
        );
        Store(name.Origin, name.Number, number);
        _ours[visit.Visit] = number;
        _new.Add(number);
    }

    private void Name(string origin, int number, int ours)
    {
        if (_known.ContainsKey((origin, number)))
            return;
        Store(origin, number, ours);
        here.Log.Append(at =>
            LogEntry.Known(at, new LoggedVisit(ours, here.Visits.HashOf(ours)) { Origin = origin, OriginNumber = number }, here.Rows.Now)
        );
    }

    private void Store(string origin, int number, int ours)
    {
        database.Connection.Execute("INSERT INTO merged_visit (origin, number, visit) VALUES ($1, $2, $3)", origin, number, ours);
        _known[(origin, number)] = ours;
    }

    private static List<(string Origin, int Number, int Visit)> Merged(DocumentRegister register) =>
        register.Database.Connection.Rows(
            row => (row.GetString(0), row.GetInt32(1), row.GetInt32(2)),
            "SELECT origin, number, visit FROM merged_visit ORDER BY origin, number"
        );
}

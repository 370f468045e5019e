using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Merging;

/// <summary>
/// The visits of another register, taken in or found here. Each register's own numbers for the visits that it knows are kept
/// beside ours, because the last visit that a decision could see is given in those.
/// </summary>
internal sealed class MergedVisits(RegisterRows here, RegisterRows other, Func<byte[], ExaminationRecord?> read)
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
        // Where all numbers are ours, as in a copy of this register, there is nothing to keep apart.
        if (!string.Equals(other.Identity, here.Identity, StringComparison.Ordinal) || _ours.Any(o => o.Key != o.Value))
        {
            foreach (var (theirs, ours) in _ours)
                AddOriginNumber(other.Identity, theirs, ours);
        }
        foreach (
            var (origin, number, theirs) in Merged(other)
                .Where(m => _ours.ContainsKey(m.Visit) && !string.Equals(m.Origin, here.Identity, StringComparison.Ordinal))
        )
            AddOriginNumber(origin, number, _ours[theirs]);
    }

    /// <summary>What visits of the other register ended there ends here too.</summary>
    public void TakeEnds()
    {
        foreach (var visit in other.Visits.All().Where(v => _ours.ContainsKey(v.Visit)))
        {
            foreach (
                var by in other.Documents.EndedLines.Of(visit.Visit).Where(e => _ours.ContainsKey(e.ByVisit)).GroupBy(e => _ours[e.ByVisit])
            )
                here.LineEnds.Store(by.Key, [.. by.Select(e => e.End with { Visit = _ours[visit.Visit] })]);
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
        return here
            .Database.Connection.Rows(row => row.GetInt32(0), "SELECT visit FROM visit WHERE sha256 = $1 ORDER BY visit", visit.Sha256)
            .Where(v => !_ours.ContainsValue(v) && LoggedOutcome.AreSame(here.Visits.OutcomesOf(v), other.Visits.OutcomesOf(visit.Visit)))
            .Cast<int?>()
            .FirstOrDefault();
    }

    private bool Is(int ours, RememberedVisit visit) =>
        here.Database.Connection.Number("SELECT count(*) FROM visit WHERE visit = $1 AND sha256 = $2", ours, visit.Sha256) == 1
        && LoggedOutcome.AreSame(here.Visits.OutcomesOf(ours), other.Visits.OutcomesOf(visit.Visit));

    private void Add(RememberedVisit visit, (string Origin, int Number) name)
    {
        var json = other.Visits.Record(visit.Visit);
        if (read(json) is not { } record)
        {
            var unread = FormattableString.Invariant($"Visit {visit.Visit} ({visit.Reference})");
            _refused.Add($"{unread} of {other.Database.Place} cannot be read by this version, and was not taken in.");
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
        var number = here.VisitStore.TakeIn(
            name.Origin,
            name.Number,
            new(record, json, other.Visits.OutcomesOf(visit.Visit)) { Version = visit.Version, AsOf = visit.AsOf },
            visit.Seen,
            visit.StoredOn
        );
        _known[name] = number;
        _ours[visit.Visit] = number;
        _new.Add(number);
    }

    private void AddOriginNumber(string origin, int number, int ours)
    {
        if (_known.ContainsKey((origin, number)))
            return;
        here.VisitStore.AddOriginNumber(origin, number, ours);
        _known[(origin, number)] = ours;
        here.Log.Append(at =>
            LogEntry.Known(at, new LoggedVisit(ours, here.Visits.HashOf(ours)) { Origin = origin, OriginNumber = number }, here.Today)
        );
    }

    private static List<(string Origin, int Number, int Visit)> Merged(RegisterRows register) =>
        register.Database.Connection.Rows(
            row => (row.GetString(0), row.GetInt32(1), row.GetInt32(2)),
            "SELECT origin, number, visit FROM merged_visit ORDER BY origin, number"
        );
}

using ExamDocs.Core.Cases;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// Makes, from a register, the record that prepares the next visit: the items that fall due by a day, each as recorded last, with what
/// is fitted to it and what it is fitted to.
/// </summary>
internal sealed class RegisterRecord
{
    private readonly DocumentRegister _register;
    private readonly RememberedRecords _records;

    private RegisterRecord(DocumentRegister register) => (_register, _records) = (register, new(register));

    /// <param name="place">The register.</param>
    /// <param name="dueBefore">Items due by this day are taken, inclusive; null for all.</param>
    /// <param name="employer">Whose kit; null where the register has kit of one employer only.</param>
    /// <param name="today">The present day.</param>
    /// <param name="refused">Why there is no record; null where there is one.</param>
    /// <exception cref="IOException">The register cannot be read.</exception>
    public static ExaminationRecord? Of(string place, LocalDate? dueBefore, string? employer, LocalDate today, out string? refused)
    {
        refused = null;
        if (!DocumentRegister.Exists(place))
        {
            refused = $"there is no register at {place}; name it with --register";
            return null;
        }
        using var register = DocumentRegister.Open(place, today);
        return new RegisterRecord(register).Of(dueBefore, employer, out refused);
    }

    private ExaminationRecord? Of(LocalDate? dueBefore, string? employer, out string? refused)
    {
        var latest = _register
            .Visits.Outcomes()
            .Where(o => o.Outcome.Item is not null)
            .GroupBy(o => (Employer: FirmName.Fold(o.Visit.Employer), o.Outcome.Item))
            .Select(g => g.OrderBy(o => o.Outcome.ExaminedOn ?? o.Visit.ExaminedOn).ThenBy(o => o.Visit.Visit).Last())
            .ToList();
        var due = latest.Where(o => IsDue(o, dueBefore) && (employer is null || FirmName.Same(o.Visit.Employer, employer))).ToList();
        var employers = due.Select(o => o.Visit.Employer).DistinctBy(FirmName.Fold, StringComparer.Ordinal).ToList();
        refused = employers.Count switch
        {
            0 => $"nothing in the register falls due{By(dueBefore)}{(employer is null ? "" : $" for {employer}")}",
            > 1 => $"kit of several employers falls due: {string.Join("; ", employers.Select(e => e ?? "not recorded"))}. Name "
                + "one with --employer",
            _ => null,
        };
        return refused is null ? Joined([.. WithAssemblies(due, latest)]) : null;
    }

    private static string By(LocalDate? day) => day is null ? "" : FormattableString.Invariant($" by {day:uuuu-MM-dd}");

    /// <summary>
    /// An undetermined item is due on any day. A withdrawn one is never due by itself: somebody must decide that it is examined again.
    /// </summary>
    private static bool IsDue(PastOutcome outcome, LocalDate? before) =>
        !outcome.IsWithdrawal() && (before is null || outcome.Outcome.NextBy is null || outcome.Outcome.FallsDue <= before);

    private IEnumerable<PastOutcome> WithAssemblies(List<PastOutcome> due, List<PastOutcome> latest)
    {
        var known = latest
            .Where(o => string.Equals(FirmName.Fold(o.Visit.Employer), FirmName.Fold(due[0].Visit.Employer), StringComparison.Ordinal))
            .ToDictionary(o => o.Outcome.Item!, StringComparer.Ordinal);
        var wanted = due.Select(o => o.Outcome.Item!).ToHashSet(StringComparer.Ordinal);
        for (var before = -1; before != wanted.Count; )
        {
            before = wanted.Count;
            foreach (var (id, outcome) in known)
            {
                // A part that was withdrawn since does not come along with its whole.
                if (
                    ItemOf(outcome)?.FittedTo is { } whole
                    && known.ContainsKey(whole)
                    && (wanted.Contains(id) || (wanted.Contains(whole) && !outcome.IsWithdrawal()))
                )
                    _ = wanted.Add(id) | wanted.Add(whole);
            }
        }
        return wanted.Where(known.ContainsKey).Select(id => known[id]);
    }

    private ExaminationRecord Joined(IReadOnlyList<PastOutcome> chosen)
    {
        var visits = chosen.Select(o => o.Visit).DistinctBy(v => v.Visit).OrderBy(v => v.ExaminedOn).ThenBy(v => v.Visit).ToList();
        _register.Visits.AsLogged(_records.Read).Require([.. visits.Select(v => v.Visit)]);
        var people = new PeopleOfVisits();
        var parts = visits.ConvertAll(v => people.Renamed(_records.Of(v.Visit), FormattableString.Invariant($"{v.Visit}")));
        var items = chosen.Select(o => o.Outcome.Item!).ToHashSet(StringComparer.Ordinal);
        bool Chosen(string? id) => id is not null && items.Contains(id);
        return new ExaminationRecord
        {
            Format = ExaminationRecord.FormatName,
            Visit = parts[^1].Visit,
            People = people.All,
            Items = [.. chosen.Select(ItemOf).OfType<Item>()],
            Limits = [.. parts.SelectMany(p => p.Limits).Distinct()],
            Examinations =
            [
                .. parts
                    .SelectMany(p => p.Examinations.Select(e => e with { ExaminedOn = e.DayAt(p.Visit) }))
                    .Where(e => Chosen(e.Item))
                    .DistinctBy(e => (e.Item, e.ExaminedOn, e.Conclusion)),
            ],
            Renewals =
            [
                .. parts
                    .SelectMany(p => p.Renewals)
                    .Where(r =>
                        Chosen(r.Item) && (r.RemovedPart is null || Chosen(r.RemovedPart)) && (r.FittedPart is null || Chosen(r.FittedPart))
                    )
                    .Distinct(),
            ],
            Remedies = [.. parts.SelectMany(p => p.Remedies).Where(r => Chosen(r.Item)).Distinct()],
            Releases = [.. parts.SelectMany(p => p.Releases).Where(r => Chosen(r.Item)).Distinct()],
            Disposals = [.. parts.SelectMany(p => p.Disposals).Where(d => Chosen(d.Item)).Distinct()],
        };
    }

    private Item? ItemOf(PastOutcome outcome) =>
        // As its own visit had it: the limits of several visits may state different things of one model.
        SharedValues
            .FilledIn(_records.Of(outcome.Visit.Visit))
            .Items.FirstOrDefault(i => string.Equals(i.Id, outcome.Outcome.Item, StringComparison.Ordinal));
}

/// <summary>The people of several visits in one record: where two have one id, the visit's number is added to it.</summary>
internal sealed class PeopleOfVisits
{
    private readonly List<Person> _people = [];

    public IReadOnlyList<Person> All => _people;

    /// <returns>The id that each person of the record has among all.</returns>
    public IReadOnlyDictionary<string, string> Add(IEnumerable<Person> people, string visit)
    {
        var names = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var person in people.Where(p => p.Id is not null))
        {
            var same = _people.Find(p => string.Equals(p.Id, person.Id, StringComparison.Ordinal));
            var id = same is null || string.Equals(same.Name, person.Name, StringComparison.Ordinal) ? person.Id! : $"{person.Id}-{visit}";
            names[person.Id!] = id;
            // The later visit has the newer address.
            _people.RemoveAll(p => string.Equals(p.Id, id, StringComparison.Ordinal));
            _people.Add(person with { Id = id });
        }
        return names;
    }

    /// <summary>The record, with new ids for people where that is needed.</summary>
    public ExaminationRecord Renamed(ExaminationRecord recorded, string visit)
    {
        var record = SharedValues.PerExamination(recorded);
        var names = Add(record.People, visit);
        string? Name(string? id) => id is not null && names.TryGetValue(id, out var renamed) ? renamed : id;
        return record with
        {
            Examinations =
            [
                .. record.Examinations.Select(e =>
                    e with
                    {
                        Examiner = Name(e.Examiner),
                        Author = Name(e.Author),
                        AuthenticatedBy = Name(e.AuthenticatedBy),
                    }
                ),
            ],
            Renewals = [.. record.Renewals.Select(r => r with { DoneBy = Name(r.DoneBy), SupervisedBy = Name(r.SupervisedBy) })],
            Remedies = [.. record.Remedies.Select(r => r with { DoneBy = Name(r.DoneBy) })],
            Releases = [.. record.Releases.Select(r => r with { By = Name(r.By) })],
            Disposals = [.. record.Disposals.Select(d => d with { By = Name(d.By) })],
        };
    }
}

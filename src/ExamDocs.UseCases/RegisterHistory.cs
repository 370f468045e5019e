using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Register;
using NodaTime;

namespace ExamDocs.UseCases;

/// <summary>
/// What a register knows of the items of a record from before. In doubt about identity an earlier withdrawal counts: an
/// item with the same id is taken for another only where it is another employer's and a particular differs.
/// </summary>
internal sealed class RegisterHistory(DocumentRegister register, Func<RememberedVisit, bool>? counts = null)
{
    /// <summary>Numbers of visits that are only checked: they come after all that the register holds.</summary>
    private const int FirstChecked = 1_000_000_000;

    private readonly RememberedRecords _records = new(register);
    private readonly List<PastOutcome> _checked = [];
    private int _visitsChecked;

    /// <summary>Counts a visit that is checked, and not stored, among what is known to those that follow.</summary>
    public void Add(DeterminedVisit visit)
    {
        var (remembered, number, typed) = (RememberVisit.Of(visit), FirstChecked + _visitsChecked++, visit.Record.Visit);
        var past = new RememberedVisit(number, FormattableString.Invariant($"{number}"), typed.Reference, typed.Regime, typed.Employer?.Name, typed.ExaminedOn, null);
        _records.Add(number, visit.Record);
        _checked.AddRange(remembered.Outcomes.Zip(visit.Everything.Select(e => e.Item), (outcome, item) =>
            new PastOutcome(past, outcome, item.Category, item.Maker, item.Model, item.Serial)));
    }

    public History Of(ExaminationRecord record)
    {
        var ids = record.Items.Select(i => i.Id).Concat(record.Examinations.Select(e => e.Item)).OfType<string>().Distinct(StringComparer.Ordinal).ToList();
        var known = ids.ConvertAll(id => (Id: id, Outcomes: OutcomesOf(id).Where(o => MayBe(o, record, id)).ToLookup(o => IsOfThisVisit(o, record))));
        return new History(
        [
            .. known.SelectMany(k => Withdrawals(k.Outcomes[false], k.Outcomes[true], record, k.Id)),
            .. record.Items.Where(i => i.Serial is not null).SelectMany(i => UnderAnotherId(i, record)).DistinctBy(w => (w.ItemId, w.On)),
        ])
        {
            Examinations = [.. known.SelectMany(k => Examinations(k.Outcomes[false], record, k.Id))],
        };
    }

    /// <summary>Withdrawals of what bears the same serial number under an id that the record does not have.</summary>
    private IEnumerable<PastWithdrawal> UnderAnotherId(Item item, ExaminationRecord record) => OutcomesOfSerial(item.Serial!)
        .Where(o => o.Outcome.Item is { } other && !record.Items.Any(i => string.Equals(i.Id, other, StringComparison.Ordinal)))
        .GroupBy(o => o.Outcome.Item!, StringComparer.Ordinal)
        .SelectMany(other => Withdrawals(other, [], record, other.Key));

    /// <param name="outcomes">Of other visits.</param>
    /// <param name="own">Of earlier readings of this visit's record: another visit's withdrawal may rest on one of these.</param>
    private IEnumerable<PastWithdrawal> Withdrawals(IEnumerable<PastOutcome> outcomes, IEnumerable<PastOutcome> own, ExaminationRecord record, string id)
    {
        var known = LatestVersions(outcomes).ToList();
        var open = known.Where(w => w.IsWithdrawal() && !known.Exists(o => Ends(o, w))).ToList();
        var grounds = open.Concat(own.Where(o => o.IsWithdrawal())).ToList();
        return open.Where(w => !RestsOnAnotherAlone(w, grounds)).Select(w =>
            new PastWithdrawal(id, DocumentOf(w, record, id), Day(w), [.. w.Outcome.Codes.Where(c => c[0] == 'W')], w.Outcome.NeverReleasable)
            {
                Parts = w.Outcome.Parts, IsOfAnotherVisit = IsOfAnotherVisit(w, record), Maker = w.Maker, Model = w.Model, Serial = w.Serial,
            });
    }

    /// <summary>
    /// What was found before, as it was recorded: of each day the version stored last. What came after this visit says nothing of
    /// it; the same record read again a year later must not come out otherwise for that.
    /// </summary>
    private IEnumerable<PastExamination> Examinations(IEnumerable<PastOutcome> outcomes, ExaminationRecord record, string id) =>
        from visit in outcomes.Select(o => o.Visit.Visit).Distinct()
        let earlier = _records.Of(visit)
        from examination in earlier.Examinations
        where string.Equals(examination.Item, id, StringComparison.Ordinal)
        let made = examination.DayAt(earlier.Visit)
        where made is not null && made < record.Visit.ExaminedOn
        group (Visit: visit, Earlier: earlier, Examination: examination) by made.Value into day
        let last = day.MaxBy(e => e.Visit)
        select new PastExamination(id, day.Key, register.About(id, last.Visit).FirstOrDefault(d => d is { Kind: "report", CopyOf: null })?.Number, last.Examination)
        {
            Remedies = [.. last.Earlier.Remedies.Where(r => string.Equals(r.Item, id, StringComparison.Ordinal))],
            Renewals = [.. last.Earlier.Renewals.Where(r => string.Equals(r.Item, id, StringComparison.Ordinal))],
        };

    /// <summary>Of the versions of one visit's record the latest that speaks of the item on that day.</summary>
    private static IEnumerable<PastOutcome> LatestVersions(IEnumerable<PastOutcome> outcomes) => outcomes
        .GroupBy(o => (Visit: o.Visit.Reference ?? $"#{o.Visit.Sha256}", Employer: Alike.Folded(o.Visit.Employer), o.Outcome.ExaminedOn))
        .Select(g => g.OrderBy(o => o.Visit.Visit).Last());

    /// <summary>Found fit later, by whoever knew of the withdrawal then: had it not been released, it would not have been.</summary>
    private static bool Ends(PastOutcome later, PastOutcome withdrawal) =>
        later.Passes() && Day(later) > Day(withdrawal) && later.Visit.Visit > withdrawal.Visit.Visit
        && MayBeOne(withdrawal, later.Visit.Employer, later.Category, later.Maker, later.Model, later.Serial);

    /// <summary>It was withdrawn because another withdrawal was open, which is told by itself.</summary>
    private static bool RestsOnAnotherAlone(PastOutcome withdrawal, IReadOnlyList<PastOutcome> others) =>
        withdrawal.Outcome.Codes.Where(c => c[0] == 'W').All(c => c is "W10")
        && others.Any(o => Day(o) <= Day(withdrawal) && o.Outcome.Codes.Any(c => c[0] == 'W' && c is not "W10"));

    private IEnumerable<PastOutcome> OutcomesOf(string item) =>
        register.Visits.OutcomesOf(item).Where(o => counts?.Invoke(o.Visit) is not false).Concat(_checked.Where(o => string.Equals(o.Outcome.Item, item, StringComparison.Ordinal)));

    private IEnumerable<PastOutcome> OutcomesOfSerial(string serial) =>
        register.Visits.OutcomesOfSerial(serial).Where(o => counts?.Invoke(o.Visit) is not false).Concat(_checked.Where(o => string.Equals(o.Serial, serial, StringComparison.OrdinalIgnoreCase)));

    private static LocalDate Day(PastOutcome outcome) => outcome.Outcome.ExaminedOn ?? outcome.Visit.ExaminedOn ?? outcome.Visit.StoredOn ?? LocalDate.MinIsoValue;

    private static bool IsOfThisVisit(PastOutcome outcome, ExaminationRecord record) =>
        outcome.Visit.Reference is { } reference && string.Equals(reference, record.Visit.Reference, StringComparison.Ordinal)
        && outcome.Visit.ExaminedOn == record.Visit.ExaminedOn && Alike.MayBe(outcome.Visit.Employer, record.Visit.Employer?.Name);

    /// <summary>Where a reference is missing it may be this visit's record read before.</summary>
    private static bool IsOfAnotherVisit(PastOutcome outcome, ExaminationRecord record) =>
        outcome.Visit.Reference is not null && record.Visit.Reference is not null && !IsOfThisVisit(outcome, record);

    private static bool MayBe(PastOutcome outcome, ExaminationRecord record, string id)
    {
        var (employer, items) = (record.Visit.Employer?.Name, record.Items.Where(i => string.Equals(i.Id, id, StringComparison.Ordinal)).ToList());
        return items.Count == 0 || items.Exists(i => MayBeOne(outcome, employer, i.Category, i.Maker, i.Model, i.Serial));
    }

    /// <summary>With the same employer the id decides; with another it is another item only where a particular known of both differs.</summary>
    private static bool MayBeOne(PastOutcome outcome, string? employer, string? category, string? maker, string? model, string? serial) =>
        Alike.MayBe(outcome.Visit.Employer, employer)
        || (Alike.MayBe(category, outcome.Category) && Alike.MayBe(maker, outcome.Maker) && Alike.MayBe(model, outcome.Model) && Alike.MayBe(serial, outcome.Serial));

    /// <summary>The document that a release names, where it is of this withdrawal; else the label that hangs on the item, else the notice, else the report.</summary>
    private string? DocumentOf(PastOutcome withdrawal, ExaminationRecord record, string id)
    {
        var visits = register.Visits.OutcomesOf(id).Select(o => o.Visit)
            .Where(v => v.Visit == withdrawal.Visit.Visit || (v.Reference is not null && string.Equals(v.Reference, withdrawal.Visit.Reference, StringComparison.Ordinal)))
            .Select(v => v.Visit).Distinct();
        var documents = visits.SelectMany(v => register.About(id, v)).Where(d => d.Kind is "quarantine-label" or "notice" or "report").ToList();
        var released = record.Releases.Where(r => string.Equals(r.Item, id, StringComparison.Ordinal)).Select(r => r.Document).ToHashSet(StringComparer.Ordinal);
        return (documents.FirstOrDefault(d => released.Contains(d.Number))
            ?? documents.OrderByDescending(d => d.IsCurrent).ThenBy(d => d.Kind switch { "quarantine-label" => 0, "notice" => 1, _ => 2 }).ThenByDescending(d => d.Number, StringComparer.Ordinal).FirstOrDefault())?.Number;
    }
}

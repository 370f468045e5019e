using ExamDocs.Core.Cases;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>The personal data of a visit in the register, and how long the law requires its reports to be kept.</summary>
/// <param name="Visit">The visit.</param>
/// <param name="People">Names as typed, of examiners and of everybody else who is named.</param>
/// <param name="Until">The last day on which everything has to be kept, inclusive; null where that depends on something still to come,
/// or is not known.</param>
/// <param name="Why">The rules that say so, each in one sentence with its source.</param>
public sealed record PersonalDataOfVisit(RememberedVisit Visit, IReadOnlyList<string> People, LocalDate? Until, IReadOnlyList<string> Why)
{
    /// <summary>Number of the visit in the register.</summary>
    public int Number => Visit.Visit;

    /// <summary>As typed; null where there is none.</summary>
    public string? Reference => Visit.Reference;

    /// <summary>Name as typed.</summary>
    public string? Employer => Visit.Employer;

    /// <summary>The day of its reports.</summary>
    public LocalDate? ReportedOn { get; init; }

    /// <summary>The rules that are known, each once.</summary>
    public IReadOnlyList<KeepUntil> Rules { get; init; } = [];
}

/// <summary>Finds what personal data is stored and how long it has to be kept. It deletes nothing.</summary>
public static class PersonalData
{
    /// <param name="place">The register.</param>
    /// <param name="today">The present day.</param>
    /// <param name="rules">The regimes that visits can name.</param>
    /// <exception cref="FileNotFoundException">There is no register at that place.</exception>
    /// <exception cref="InvalidDataException">A record differs from what was stored.</exception>
    public static IReadOnlyList<PersonalDataOfVisit> In(string place, LocalDate today, KnownRules rules)
    {
        using var register = DocumentRegister.OpenExisting(place, today);
        return In(register, rules);
    }

    /// <param name="register">Opened.</param>
    /// <param name="rules">The regimes that visits can name.</param>
    /// <exception cref="InvalidDataException">A record differs from what was stored.</exception>
    internal static IReadOnlyList<PersonalDataOfVisit> In(DocumentRegister register, KnownRules rules)
    {
        var remembered = new RememberedRecords(register);
        var records = register.Visits.All().Select(v => (Visit: v, Record: SharedValues.FilledIn(remembered.Of(v.Visit)))).ToList();
        return [.. records.Select(r => Of(r.Visit, r.Record, [.. records.Select(o => o.Record)], rules))];
    }

    private static PersonalDataOfVisit Of(
        RememberedVisit visit,
        ExaminationRecord record,
        IReadOnlyList<ExaminationRecord> all,
        KnownRules rules
    )
    {
        var kept = record
            .Examinations.Where(e => e.DayAt(record.Visit) == record.Visit.ExaminedOn)
            .Select(e => Keep(e, record, all, rules))
            .ToList();
        var known = kept.Count > 0 && kept.TrueForAll(k => k is { IsKnown: true, Until: not null });
        return new PersonalDataOfVisit(
            visit,
            [.. Names(record).OfType<string>().Distinct(StringComparer.Ordinal)],
            known ? kept.Max(k => k!.Until) : null,
            [
                .. kept.Select(k => k is null ? "No rule is known for it: keep it." : $"{k.Words} ({k.Source})")
                    .Distinct(StringComparer.Ordinal),
            ]
        )
        {
            ReportedOn = record.Visit.ReportedOn,
            Rules = [.. kept.OfType<KeepUntil>().DistinctBy(k => (k.Words, k.Source))],
        };
    }

    /// <summary>How long a document has to be kept; null where the regime is not known or does not say.</summary>
    private static KeepUntil? Keep(
        Examination examination,
        ExaminationRecord record,
        IReadOnlyList<ExaminationRecord> all,
        KnownRules rules
    )
    {
        var day = examination.DayAt(record.Visit);
        if (rules.FindRegime(examination.Regime ?? record.Visit.Regime) is null || record.Visit.ReportedOn is not { } made)
            return null;
        var next = all.Where(o =>
                o.Visit.ReportedOn > made
                && o.Examinations.Any(e => string.Equals(e.Item, examination.Item, StringComparison.Ordinal) && e.DayAt(o.Visit) > day)
            )
            .Select(o => o.Visit.ReportedOn)
            .Min();
        var kept = RulesFor(examination, record, rules, next);
        return kept.Find(k => k is not { IsKnown: true, Until: not null }) ?? (kept.Contains(null) ? null : kept.MaxBy(k => k!.Until));
    }

    /// <summary>What each regime in force says of keeping the report of an examination; null where one does not say.</summary>
    /// <param name="next">Day of the next report about the item; null where there is none yet.</param>
    internal static List<KeepUntil?> RulesFor(Examination examination, ExaminationRecord record, KnownRules rules, LocalDate? next)
    {
        var item = record.Items.FirstOrDefault(i => string.Equals(i.Id, examination.Item, StringComparison.Ordinal));
        var (own, ofVisit) = (rules.FindRegime(examination.Regime), rules.FindRegime(record.Visit.Regime));
        return
        [
            .. RegimesInForce
                .Of(own, ofVisit, item?.Purpose, item?.Category, examination.DayAt(record.Visit))
                .Select(r => r.Keep(Kept.As(examination.Basis, item?.Purpose), record.Visit.ReportedOn, next)),
        ];
    }

    private static IEnumerable<string?> Names(ExaminationRecord record) =>
        record
            .People.Select(p => p.Name)
            .Concat(record.Disposals.Select(d => d.By))
            .Concat(record.Remedies.Select(r => r.DoneBy))
            .Concat(record.Examinations.SelectMany(e => e.Defects).Select(d => d.Notified?.Whom))
            .Where(n => n is not null && !record.People.Any(p => string.Equals(p.Id, n, StringComparison.Ordinal)));
}

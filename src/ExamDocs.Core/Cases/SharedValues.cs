using ExamDocs.Core.Records;
using ExamDocs.Core.Service;

namespace ExamDocs.Core.Cases;

/// <summary>
/// Fills in what is typed once for many rows: the visit's examiner and basis for each of its examinations, and what every item of a
/// model shares. A value of the item's or the examination's own always comes first, so that nothing typed is lost.
/// </summary>
public static class SharedValues
{
    /// <returns>The record with these values in every row that they are for; lists keep their order and length.</returns>
    public static ExaminationRecord FilledIn(ExaminationRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        var shared = record.Limits.Where(Shares).ToList();
        var models = new LimitsIndex(shared);
        return record with
        {
            Items = shared.Count > 0 ? [.. record.Items.Select(item => WithModels(item, models.Of(item)))] : record.Items,
            Examinations = Examinations(record),
        };
    }

    /// <summary>The record with examiner and basis in each examination and none at the visit, so that records can be joined.</summary>
    public static ExaminationRecord PerExamination(ExaminationRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return record.Visit is { Examiner: null, Basis: null } || Conflicts(record).Any()
            ? record
            : record with
            {
                Visit = record.Visit with { Examiner = null, Basis = null },
                Examinations = Examinations(record),
            };
    }

    /// <summary>
    /// Examinations of the visit that name another examiner or basis than the visit names for all. Then nobody can say which
    /// examinations the visit's value is for, and it fills in nothing.
    /// </summary>
    public static IEnumerable<(int Index, string Member)> Conflicts(ExaminationRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        foreach (var (index, examination) in record.Examinations.Index())
        {
            if (IsBefore(examination, record.Visit))
                continue;
            if (record.Visit.Examiner is { } examiner && examination.Examiner is { } own && !Same(own, examiner))
                yield return (index, "examiner");
            if (record.Visit.Basis is { } basis && examination.Basis is { } ownBasis && ownBasis != basis)
                yield return (index, "basis");
        }
    }

    private static IReadOnlyList<Examination> Examinations(ExaminationRecord record)
    {
        var visit = record.Visit;
        if (visit is { Examiner: null, Basis: null })
            return record.Examinations;
        var conflicts = Conflicts(record).Select(c => c.Member).ToHashSet(StringComparer.Ordinal);
        var examiner = conflicts.Contains("examiner") ? null : visit.Examiner;
        var basis = conflicts.Contains("basis") ? null : visit.Basis;
        return
        [
            .. record.Examinations.Select(e =>
                IsBefore(e, visit) ? e : e with { Examiner = e.Examiner ?? examiner, Basis = e.Basis ?? basis }
            ),
        ];
    }

    /// <summary>True for history: it has its own examiner and basis or none, and this visit's would be an invention there.</summary>
    private static bool IsBefore(Examination examination, Visit visit) => examination.DayAt(visit) < visit.ExaminedOn;

    private static Item WithModels(Item item, List<MakersLimits> entries)
    {
        entries.RemoveAll(e => e.PartNumber is not null && !IsPart(e, item));
        return item with
        {
            Description = item.Description ?? Agreed(entries, item, e => e.Description),
            SafeWorkingLoad = item.SafeWorkingLoad ?? Agreed(entries, item, e => e.SafeWorkingLoad),
            MarkedStrength = item.MarkedStrength ?? Agreed(entries, item, e => e.MarkedStrength),
            Standards = item.Standards.Count > 0 ? item.Standards : Standards(entries, item),
        };
    }

    /// <summary>
    /// The value on which all entries for the item's own part number agree, else all those for the model; null where they do not agree.
    /// </summary>
    private static T? Agreed<T>(List<MakersLimits> entries, Item item, Func<MakersLimits, T?> value)
        where T : class
    {
        var given = entries.Where(e => value(e) is not null).ToList();
        var own = given.FindAll(e => IsPart(e, item));
        var values = (own.Count > 0 ? own : given).Select(e => value(e)!).Distinct().ToList();
        return values.Count == 1 ? values[0] : null;
    }

    private static IReadOnlyList<string> Standards(List<MakersLimits> entries, Item item) =>
        Agreed(entries, item, e => e.Standards.Count > 0 ? string.Join('\n', e.Standards) : null)?.Split('\n') ?? [];

    private static bool IsPart(MakersLimits entry, Item item) =>
        entry.PartNumber is { } part && item.PartNumber is { } own && LimitsSpelling.AreSame(part, own);

    private static bool Shares(MakersLimits entry) =>
        entry.Description is not null || entry.SafeWorkingLoad is not null || entry.MarkedStrength is not null || entry.Standards.Count > 0;

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.Ordinal);
}

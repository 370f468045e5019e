using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Known;

/// <summary>One item as one version of one visit records it.</summary>
internal sealed class KnownEntry
{
    private KnownEntry(KnownVisit visit, Item item, bool isCurrent, IReadOnlyList<KnownOutcome> outcomes, LocalDate? lastExamined)
    {
        (Visit, Item, IsCurrent) = (visit, item, isCurrent);
        var typed = visit.Record.Visit;
        Particulars = new Particulars(item, typed.HiredFrom?.Name ?? typed.Employer?.Name);
        Outcomes = outcomes;
        Day = Outcomes.Max(o => o.ExaminedOn) ?? lastExamined ?? typed.ExaminedOn ?? LocalDate.MinIsoValue;
    }

    public KnownVisit Visit { get; }

    public Item Item { get; }

    /// <summary>True where it belongs to the record under check.</summary>
    public bool IsCurrent { get; }

    public Particulars Particulars { get; }

    /// <summary>
    /// True where its record names the id but has no row for it. Such an entry may be the same as others; it never proves that two
    /// others are the same item.
    /// </summary>
    public bool IsNameAlone { get; private init; }

    /// <summary>One, unless its record has the id twice.</summary>
    public IReadOnlyList<KnownOutcome> Outcomes { get; }

    /// <summary>The day examined; where it was not examined, the day of the visit.</summary>
    public LocalDate Day { get; }

    public IEnumerable<KnownDocument> Documents => Outcomes.SelectMany(o => o.Documents);

    /// <summary>The day on which it was recorded as destroyed; null where it was not.</summary>
    public LocalDate? DestroyedOn =>
        Visit
            .Record.Disposals.Where(d => IsMine(d.Item) && d.Action is DisposalAction.Destroyed)
            .Select(d => d.On ?? Day)
            .Concat(Item.Status is ItemStatus.Destroyed ? [Day] : [])
            .Cast<LocalDate?>()
            .Min();

    /// <summary>The criteria by which an examination of a day found a defect, or left a doubt.</summary>
    public HashSet<string> FoundOn(LocalDate day) =>
        Visit
            .Record.Examinations.Where(e => IsMine(e.Item) && e.DayAt(Visit.Record.Visit) == day)
            .SelectMany(e => e.Observations.Where(o => o.State is ObservedState.Defect or ObservedState.Doubt).Select(o => o.Criterion))
            .OfType<string>()
            .ToHashSet(StringComparer.Ordinal);

    public bool IsMine(string? id) => id is not null && string.Equals(id, Item.Id, StringComparison.Ordinal);

    /// <summary>True where this one is of a later day or, on one day, of a later version. The record under check comes last.</summary>
    public bool IsAfter(KnownEntry other) =>
        IsCurrent || (!other.IsCurrent && (Day, Visit.Number).CompareTo((other.Day, other.Visit.Number)) > 0);

    /// <summary>True where both are in the same version of the same record.</summary>
    public bool IsBeside(KnownEntry other) => ReferenceEquals(Visit, other.Visit);

    /// <summary>Every item of a visit, and every id that its rows name but that has no row of its own.</summary>
    public static IEnumerable<KnownEntry> Of(KnownVisit visit, bool isCurrent)
    {
        var record = visit.Record;
        var known = record.Items.Select(i => i.Id).OfType<string>().ToHashSet(StringComparer.Ordinal);
        var named = record
            .Examinations.Select(e => e.Item)
            .Concat(record.Disposals.Select(d => d.Item))
            .Concat(visit.Outcomes.Select(o => o.Item))
            .Concat(record.Items.Select(i => i.FittedTo))
            .Concat(record.Renewals.SelectMany(r => new[] { r.Item, r.RemovedPart, r.FittedPart }))
            .OfType<string>()
            .Where(id => !known.Contains(id))
            .Distinct(StringComparer.Ordinal);
        var outcomes = visit.Outcomes.ToLookup(o => o.Item, StringComparer.Ordinal);
        var days = record.Examinations.ToLookup(e => e.Item, e => e.DayAt(record.Visit), StringComparer.Ordinal);
        return record
            .Items.Where(i => i.Id is not null)
            .Select(i => Entry(i, isNameAlone: false))
            .Concat(named.Select(id => Entry(new Item { Id = id }, isNameAlone: true)));

        KnownEntry Entry(Item item, bool isNameAlone) =>
            new(visit, item, isCurrent, [.. outcomes[item.Id]], days[item.Id].Max()) { IsNameAlone = isNameAlone };
    }

    /// <summary>
    /// Outcome of the last examination of an item: the last version of a visit counts, and of several visits on one day the worst
    /// outcome. Null where it was never examined.
    /// </summary>
    /// <param name="entries">All entries of the item.</param>
    /// <param name="areWithdrawalsEnded">True where all its withdrawals have ended: then any other outcome of the same day counts
    /// before a withdrawal.</param>
    public static (KnownEntry? Entry, KnownOutcome? Outcome) LatestOf(
        IReadOnlyCollection<KnownEntry> entries,
        bool areWithdrawalsEnded = false
    ) =>
        entries
            .Where(e =>
                !entries.Any(later =>
                    later.Visit.Number > e.Visit.Number
                    && KnownVisit.IsOneVisit(later.Visit.Record, e.Visit.Record)
                    && later.Outcomes.Any(o => o.ExaminedOn is not null)
                )
            )
            .SelectMany(e => e.Outcomes.Where(o => o.ExaminedOn is not null).Select(o => ((KnownEntry?)e, (KnownOutcome?)o)))
            .OrderBy(o => o.Item2!.ExaminedOn)
            .ThenBy(o => areWithdrawalsEnded && o.Item2!.Outcome is Outcome.Withdraw ? null : (Outcome?)o.Item2!.Outcome)
            .ThenBy(o => o.Item1!.Visit.Number)
            .LastOrDefault();
}

using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Known;

/// <summary>That a part was put on a whole or taken off it.</summary>
/// <param name="Part">The part, as the telling record has it.</param>
/// <param name="Whole">The whole likewise.</param>
/// <param name="On">The day.</param>
/// <param name="Kind">Of one day a row's word comes first, then what was taken off, then what was fitted by a renewal.</param>
internal sealed record FittingFact(KnownEntry Part, KnownEntry Whole, LocalDate On, FittingKind Kind);

internal enum FittingKind
{
    RowSays,
    TakenOff,
    Fitted,
}

/// <summary>What is fitted to what, by the latest word of any record.</summary>
internal sealed class KnownFittings
{
    private readonly KnownItems _items;
    private readonly KnownWithdrawals _withdrawals;
    private readonly ILookup<KnownEntry, FittingFact> _ofPart;
    private readonly ILookup<KnownEntry, FittingFact> _ofWhole;

    public KnownFittings(KnownItems items, KnownWithdrawals withdrawals)
    {
        (_items, _withdrawals) = (items, withdrawals);
        var facts = items
            .Past.Concat(items.Current)
            .GroupBy(e => e.Visit, ReferenceEqualityComparer.Instance)
            .SelectMany(visit => FactsOf([.. visit]))
            .ToList();
        _ofPart = facts.ToLookup(f => f.Part);
        _ofWhole = facts.ToLookup(f => f.Whole);
    }

    /// <summary>
    /// Every fact about a part, oldest first; the entries are all of the part's. A whole that no record has says nothing.
    /// </summary>
    public IReadOnlyList<FittingFact> Of(IEnumerable<KnownEntry> part) =>
        [
            .. part.SelectMany(e => _ofPart[e])
                .Where(f => !f.Whole.IsNameAlone || _items.SameAs(f.Whole).Any(w => !w.IsNameAlone) || _items.IsOfCurrent(f.Whole))
                .OrderBy(f => f.On)
                .ThenBy(f => f.Kind)
                .ThenBy(f => f.Part.IsCurrent)
                .ThenBy(f => f.Part.Visit.Number),
        ];

    /// <summary>Entries of parts that were ever on a whole; the entries are all of the whole's.</summary>
    public IEnumerable<KnownEntry> EverOn(IEnumerable<KnownEntry> whole) =>
        whole.SelectMany(e => _ofWhole[e]).Select(f => f.Part).Distinct();

    /// <summary>
    /// The wholes that a part is on: of the latest word and of the word that held on the day that is looked at, and where it is
    /// withdrawn also of the word that held when it was, until a renewal takes it off.
    /// </summary>
    /// <param name="part">All entries of the part.</param>
    /// <param name="isWhole">Tells of entries whether they are the whole that is asked about; null where none is.</param>
    /// <param name="upTo">The day that is looked at: the last on which it counts that the part was taken off, inclusive; null for
    /// any.</param>
    public IReadOnlyList<KnownEntry> WholesOf(
        IReadOnlyList<KnownEntry> part,
        Func<KnownEntry, bool>? isWhole = null,
        LocalDate? upTo = null
    )
    {
        var facts = Of(part).Where(f => f.Kind is not FittingKind.TakenOff || !(f.On > upTo)).ToList();
        var on = new List<FittingFact>();
        on.AddRange(LatestOf(facts.Where(f => f.Kind is not FittingKind.TakenOff)));
        on.AddRange(LatestOf(facts.Where(f => f.Kind is not FittingKind.TakenOff && f.On <= upTo)));
        if (Open(part).Select(w => w.On).DefaultIfEmpty(LocalDate.MaxIsoValue).Min() is var withdrawn && withdrawn < LocalDate.MaxIsoValue)
        {
            on.AddRange(facts.Where(f => f.Kind is not FittingKind.TakenOff && f.On > withdrawn));
            on.AddRange(LatestOf(facts.Where(f => f.Kind is not FittingKind.TakenOff && f.On <= withdrawn)));
        }
        return
        [
            .. on.Distinct().Where(f => !IsOff(f, facts, isWhole)).Select(f => f.Whole).Where(w => isWhole?.Invoke(w) ?? true).Distinct(),
        ];
    }

    /// <summary>The last word; two records of one day may each have one.</summary>
    private static IEnumerable<FittingFact> LatestOf(IEnumerable<FittingFact> facts) =>
        facts.GroupBy(f => f.Part.Visit, ReferenceEqualityComparer.Instance).Select(visit => visit.Last()).ToList() is { Count: > 0 } words
            ? words.Where(f => f.On == words.Max(w => w.On))
            : [];

    /// <summary>Withdrawals of a part that are still open.</summary>
    public IReadOnlyList<PastWithdrawal> Open(IReadOnlyList<KnownEntry> entries, LocalDate? upTo = null) =>
        _withdrawals.Open(entries, upTo);

    /// <summary>Taken off the same whole since, by a renewal.</summary>
    private bool IsOff(FittingFact fitted, List<FittingFact> facts, Func<KnownEntry, bool>? isWhole) =>
        facts
            .Skip(facts.IndexOf(fitted) + 1)
            .Any(f => f.Kind is FittingKind.TakenOff && (isWhole?.Invoke(f.Whole) ?? IsSurelyOne(f.Whole, fitted.Whole)));

    /// <summary>An id that was only named may be any of several items: it is this one where it can be no other.</summary>
    private bool IsSurelyOne(KnownEntry removed, KnownEntry fitted) =>
        IsOne(removed, fitted)
        && (
            !fitted.IsNameAlone
            || _items
                .SameAs(fitted)
                .Concat(_items.Current.Where(c => _items.SameAs(c).Contains(fitted)))
                .Where(e => !e.IsNameAlone)
                .All(e => IsOne(e, removed))
        );

    /// <summary>Whether two entries are one item.</summary>
    public bool IsOne(KnownEntry one, KnownEntry two) =>
        ReferenceEquals(one, two)
        || _items.SameAs(one).Contains(two)
        || _items.SameAs(two).Contains(one)
        || (one.IsBeside(two) && one.Particulars.SharesId(two.Particulars));

    private static IEnumerable<FittingFact> FactsOf(List<KnownEntry> visit)
    {
        var record = visit[0].Visit.Record;
        var byId = visit.ToLookup(e => e.Item.Id!, StringComparer.Ordinal);
        foreach (var part in visit.Where(e => e.Item.FittedTo is not null))
        {
            foreach (var whole in byId[part.Item.FittedTo!])
                yield return new FittingFact(part, whole, record.Visit.ExaminedOn ?? part.Day, FittingKind.RowSays);
        }
        foreach (var renewal in record.Renewals.Where(r => r.Item is not null))
        {
            foreach (var (id, kind) in new[] { (renewal.RemovedPart, FittingKind.TakenOff), (renewal.FittedPart, FittingKind.Fitted) })
            {
                foreach (
                    var fact in byId[id ?? ""]
                        .SelectMany(part =>
                            byId[renewal.Item!].Select(whole => new FittingFact(part, whole, renewal.DoneOn ?? part.Day, kind))
                        )
                )
                    yield return fact;
            }
        }
    }
}

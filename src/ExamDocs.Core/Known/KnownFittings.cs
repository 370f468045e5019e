using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Known;

/// <summary>What is fitted to what, by the latest word of any record.</summary>
internal sealed class KnownFittings
{
    private readonly KnownItems _items;
    private readonly KnownWithdrawals _withdrawals;
    private readonly FittingFacts _facts;

    public KnownFittings(KnownItems items, KnownWithdrawals withdrawals, FittingFacts facts) =>
        (_items, _withdrawals, _facts) = (items, withdrawals, facts);

    /// <summary>
    /// Every fact about a part, oldest first; the entries are all of the part's. A whole that no record has says nothing.
    /// </summary>
    public IReadOnlyList<FittingFact> Of(IEnumerable<KnownEntry> part) =>
        [
            .. part.SelectMany(_facts.OfPart)
                .Where(f => !f.Whole.IsNameAlone || _items.SameAs(f.Whole).Any(w => !w.IsNameAlone) || _items.IsOfCurrent(f.Whole))
                .OrderBy(f => f.On)
                .ThenBy(f => f.Kind)
                .ThenBy(f => f.Part.IsCurrent)
                .ThenBy(f => f.Part.Visit.Number),
        ];

    /// <inheritdoc cref="FittingFacts.EverOn"/>
    public IEnumerable<KnownEntry> EverOn(IEnumerable<KnownEntry> whole) => _facts.EverOn(whole);

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
        var open = Open(part);
        if (open.Count > 0)
        {
            var withdrawn = open.Min(w => w.On);
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

    /// <summary>
    /// Taken off the same whole since, by a renewal. It is still there where the record that took something off has another part
    /// under its id.
    /// </summary>
    private bool IsOff(FittingFact fitted, List<FittingFact> facts, Func<KnownEntry, bool>? isWhole) =>
        facts
            .Skip(facts.IndexOf(fitted) + 1)
            .Any(f =>
                f.Kind is FittingKind.TakenOff
                && (isWhole?.Invoke(f.Whole) ?? IsSurelyOne(f.Whole, fitted.Whole))
                && (f.Part.IsNameAlone || fitted.Part.IsNameAlone || _items.CountsFor(f.Part, fitted.Part))
            );

    /// <summary>
    /// An id that was only named may be any of several items, and so may one that a record has twice: it is this one where it can
    /// be no other.
    /// </summary>
    private bool IsSurelyOne(KnownEntry removed, KnownEntry fitted) =>
        IsOneByRecord(removed, fitted)
        && (
            !fitted.IsNameAlone
            || _items
                .SameAs(fitted)
                .Concat(_items.Current.Where(c => _items.SameAs(c).Contains(fitted)))
                .Where(e => !e.IsNameAlone)
                .All(e => IsOneByRecord(e, removed))
        );

    /// <summary>Whether two entries are one item, or two of one record under one id.</summary>
    public bool IsOne(KnownEntry one, KnownEntry two) =>
        IsOneByRecord(one, two) || (one.IsBeside(two) && one.Particulars.SharesId(two.Particulars));

    private bool IsOneByRecord(KnownEntry one, KnownEntry two) =>
        ReferenceEquals(one, two) || _items.SameAs(one).Contains(two) || _items.SameAs(two).Contains(one);
}

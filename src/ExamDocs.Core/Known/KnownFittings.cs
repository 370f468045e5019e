using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Known;

/// <summary>What is fitted to what: the latest record that says something of a part holds.</summary>
internal sealed class KnownFittings
{
    private readonly KnownItems _items;
    private readonly KnownWithdrawals _withdrawals;
    private readonly FittingFacts _facts;

    public KnownFittings(KnownItems items, KnownWithdrawals withdrawals, FittingFacts facts) =>
        (_items, _withdrawals, _facts) = (items, withdrawals, facts);

    /// <summary>
    /// Every fact about a part, oldest first. Left out are facts about a whole that no record has a row for.
    /// </summary>
    /// <param name="part">All entries of the part.</param>
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
    /// The wholes that a part is on until a renewal takes it off: by the latest record, and by the record that held on the day
    /// under check. A withdrawn part is also on the whole that it was on when it was withdrawn, and on every whole since.
    /// </summary>
    /// <remarks>
    /// A row that says another whole moves a sound part, but not a withdrawn one. Else typing a new <c>fittedTo</c> would free the
    /// harness that still hangs on the withdrawn bridge.
    /// </remarks>
    /// <param name="part">All entries of the part.</param>
    /// <param name="isWhole">Says whether an entry is the whole in question; null where none is in question.</param>
    /// <param name="upTo">The day under check: the last day on which a removal of the part counts, inclusive; null for any
    /// day.</param>
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

    /// <summary>The last fact of each record on the latest day: two records of one day may disagree, and then both count.</summary>
    private static IEnumerable<FittingFact> LatestOf(IEnumerable<FittingFact> facts) =>
        facts.GroupBy(f => f.Part.Visit, ReferenceEqualityComparer.Instance).Select(visit => visit.Last()).ToList() is { Count: > 0 } words
            ? words.Where(f => f.On == words.Max(w => w.On))
            : [];

    /// <summary>Withdrawals of a part that are still open.</summary>
    public IReadOnlyList<PastWithdrawal> Open(IReadOnlyList<KnownEntry> entries, LocalDate? upTo = null) =>
        _withdrawals.Open(entries, upTo);

    /// <summary>
    /// True where a renewal has taken the part off the same whole since. Where the record of the renewal has another part under
    /// that id (another serial number, say), that one came off and this one is still there.
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
    /// True where both are one whole and can be no two. An id that was only named, or that a record has twice, may mean any of
    /// several items; a removal from one of them must not take the part off another.
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

    /// <summary>True where two entries are one item, or two rows of one record under one id.</summary>
    public bool IsOne(KnownEntry one, KnownEntry two) =>
        IsOneByRecord(one, two) || (one.IsBeside(two) && one.Particulars.SharesId(two.Particulars));

    private bool IsOneByRecord(KnownEntry one, KnownEntry two) =>
        ReferenceEquals(one, two) || _items.SameAs(one).Contains(two) || _items.SameAs(two).Contains(one);
}

using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Known;

/// <summary>The entries of all records, and which of them are the same item.</summary>
internal sealed class KnownItems
{
    private readonly EntryIndex _all;
    private readonly EntryIndex _past;
    private readonly Dictionary<KnownEntry, IReadOnlyList<KnownEntry>> _same = [];
    private readonly Dictionary<KnownEntry, HashSet<KnownEntry>> _things = [];
    private readonly ILookup<string, KnownEntry> _batches;
    private ILookup<KnownEntry, KnownEntry>? _rows;

    public KnownItems(KnownVisit current, IEnumerable<KnownVisit> others)
    {
        Current = [.. KnownEntry.Of(current, isCurrent: true)];
        Past = [.. others.SelectMany(v => v.Entries)];
        var all = Current.Concat(Past).ToList();
        (_all, _past) = (new EntryIndex(all), new EntryIndex(Past));
        _batches = all.GroupBy(e => e.Visit, ReferenceEqualityComparer.Instance)
            // What the program lists for a recall, nobody had before them; and what a later version corrected was never a batch number.
            .Where(visit => RecallVisit.Read(visit.First().Visit.Record.Visit.Reference) is null)
            .SelectMany(visit => BatchesOf([.. BatchesOf([.. visit]).Select(b => b.Entry).Distinct().Where(e => !IsReplaced(e))]))
            .ToLookup(b => b.Key, b => b.Entry, StringComparer.Ordinal);
        Answers = new AnsweredItems(this, all);
    }

    /// <summary>The entries of the record under check.</summary>
    public IReadOnlyList<KnownEntry> Current { get; }

    public IReadOnlyList<KnownEntry> Past { get; }

    public AnsweredItems Answers { get; }

    /// <summary>
    /// Entries of other records that are the same item, directly or by way of others, in the order of their days; the entry itself
    /// left out.
    /// </summary>
    public IReadOnlyList<KnownEntry> SameAs(KnownEntry entry)
    {
        if (!_same.TryGetValue(entry, out var same))
            _same[entry] = same = [.. Reached(entry).Where(e => !e.IsCurrent).OrderBy(e => e.Day).ThenBy(e => e.Visit.Number)];
        return same;
    }

    /// <summary>The rows of the record under check that are the same item as an entry of another record.</summary>
    public IEnumerable<KnownEntry> RowsOf(KnownEntry entry) =>
        (
            _rows ??= Current
                .Where(c => !c.IsNameAlone)
                .SelectMany(c => SameAs(c).Select(same => (Same: same, Row: c)))
                .ToLookup(s => s.Same, s => s.Row)
        )[entry];

    /// <summary>True where the record under check has a row for it.</summary>
    public bool IsOfCurrent(KnownEntry entry) => entry is { IsCurrent: true, IsNameAlone: false } || RowsOf(entry).Any();

    /// <summary>Entries with this id, folded.</summary>
    public IEnumerable<KnownEntry> WithId(IReadOnlyList<string> idKeys) => _all.WithId(idKeys);

    /// <summary>Every entry that could be the same item, or that a question could be about.</summary>
    public IEnumerable<KnownEntry> Near(KnownEntry entry) => _all.Near(entry);

    /// <summary>The same, from other records only: this record may have thousands of items under one serial number.</summary>
    public IEnumerable<KnownEntry> NearBefore(KnownEntry entry) => _past.Near(entry);

    /// <summary>True where the particulars agree, or where one of the two says <c>formerly</c>; answers are not looked at.</summary>
    public static bool IsSaidToBe(KnownEntry later, KnownEntry earlier) =>
        SameItem.IsSame(later, earlier) || SameItem.IsFormerly(later, earlier) || SameItem.IsFormerly(earlier, later);

    /// <summary>
    /// True where both are one item by their particulars. <c>formerly</c> counts only where no particular contradicts it.
    /// </summary>
    public bool AreOneThing(KnownEntry one, KnownEntry other) => ThingOf(one).Contains(other);

    /// <summary>
    /// True where a repair, removal or release in the entry's record also counts for the other entry: both are one item by their
    /// particulars, or the entry says that it was formerly the other. Not every entry that <see cref="SameAs"/> gives: two things
    /// may meet under one new id, and what was done to one of them was not done to the other.
    /// </summary>
    public bool CountsFor(KnownEntry entry, KnownEntry other) =>
        ReferenceEquals(entry, other) || AreOneThing(entry, other) || SameItem.IsFormerly(entry, other);

    /// <summary>True where two ids of one visit share serial number and maker: it is a batch number and identifies nothing.</summary>
    public bool IsBatch(KnownEntry entry) =>
        entry.Particulars.Serial.SelectMany(key => _batches[key]).Any(e => Particulars.Agree(e.Particulars.Maker, entry.Particulars.Maker));

    /// <summary>
    /// True where a later version of its visit has a row for it, under its id or a new one. Then what ended something there, or told two
    /// things apart, counts no more unless the later version says it too; what was found against an item still does.
    /// </summary>
    /// <param name="entry">The entry.</param>
    /// <param name="notBefore">The first day of a version that counts, inclusive; null for any.</param>
    public bool IsReplaced(KnownEntry entry, LocalDate? notBefore = null) =>
        _all.Called(entry.Particulars.Id).Any(later => !later.IsNameAlone && !(later.Day < notBefore) && later.Visit.Replaces(entry.Visit));

    /// <summary>The same for an id that a visit only names, for example in a renewal.</summary>
    public bool IsReplaced(KnownVisit visit, string? id) => id is not null && visit.Entries.Any(e => e.IsMine(id) && IsReplaced(e));

    private HashSet<KnownEntry> ThingOf(KnownEntry one)
    {
        if (_things.TryGetValue(one, out var thing))
            return thing;
        thing = [one];
        var (same, open) = (SameAs(one), new Queue<KnownEntry>([one]));
        while (open.TryDequeue(out var at))
        {
            foreach (
                var next in same.Where(n =>
                    !thing.Contains(n) && IsLinked(at, n) && (IsSameEitherWay(at, n) || !at.Particulars.Contradicts(n.Particulars))
                )
            )
            {
                thing.Add(next);
                if (!next.IsNameAlone)
                    open.Enqueue(next);
            }
        }
        // Without answers every entry of the set has the same set: with a long history it is worked out once.
        foreach (var entry in Answers.IsEmpty ? thing.Where(e => !e.IsNameAlone) : [])
            _things[entry] = thing;
        return _things[one] = thing;
    }

    private IEnumerable<KnownEntry> Reached(KnownEntry start)
    {
        // The search never goes on from an id that was only named: it may mean several items, and would join them into one.
        HashSet<KnownEntry> seen = [start];
        var open = new Queue<KnownEntry>(seen);
        while (open.TryDequeue(out var at))
        {
            foreach (var next in NearBefore(at).Where(n => !seen.Contains(n) && IsLinked(at, n)).ToList())
            {
                seen.Add(next);
                if (!next.IsNameAlone)
                    open.Enqueue(next);
            }
        }
        seen.Remove(start);
        return seen;
    }

    private bool IsLinked(KnownEntry one, KnownEntry two)
    {
        var (later, earlier) = one.IsAfter(two) ? (one, two) : (two, one);
        return IsSaidToBe(later, earlier) && !Answers.IsAnother(later, earlier) && !Answers.IsAnother(earlier, later);
    }

    private static bool IsSameEitherWay(KnownEntry one, KnownEntry two) => SameItem.IsSame(one, two) || SameItem.IsSame(two, one);

    private static IEnumerable<(string Key, KnownEntry Entry)> BatchesOf(List<KnownEntry> visit) =>
        visit
            .SelectMany(e => e.Particulars.Serial.Select(key => (Key: key, Entry: e)))
            .GroupBy(e => e.Key, StringComparer.Ordinal)
            .SelectMany(g =>
                g.Where(a =>
                    g.Any(b =>
                        !a.Entry.Particulars.SharesId(b.Entry.Particulars)
                        && Particulars.Agree(a.Entry.Particulars.Maker, b.Entry.Particulars.Maker)
                    )
                )
            );
}

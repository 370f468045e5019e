namespace ExamDocs.Core.Known;

/// <summary>Which item is which: entries of all records, and which of them are the same item.</summary>
internal sealed class KnownItems
{
    private readonly EntryIndex _all;
    private readonly EntryIndex _past;
    private readonly Dictionary<KnownEntry, IReadOnlyList<KnownEntry>> _same = [];
    private readonly Dictionary<KnownEntry, HashSet<KnownEntry>> _things = [];
    private readonly ILookup<string, KnownEntry> _batches;

    public KnownItems(KnownVisit current, IEnumerable<KnownVisit> others)
    {
        Current = [.. KnownEntry.Of(current, isCurrent: true)];
        Past = [.. others.SelectMany(v => v.Entries)];
        var all = Current.Concat(Past).ToList();
        (_all, _past) = (new EntryIndex(all), new EntryIndex(Past));
        _batches = all.GroupBy(e => e.Visit, ReferenceEqualityComparer.Instance)
            .SelectMany(visit => BatchesOf([.. visit]))
            .ToLookup(b => b.Key, b => b.Entry, StringComparer.Ordinal);
        Answers = new AnsweredItems(this, all);
    }

    /// <summary>The items of the record that is looked at.</summary>
    public IReadOnlyList<KnownEntry> Current { get; }

    public IReadOnlyList<KnownEntry> Past { get; }

    public AnsweredItems Answers { get; }

    /// <summary>
    /// Entries of other records that are the same item, directly or over others, itself left out; in the order of their days.
    /// </summary>
    public IReadOnlyList<KnownEntry> SameAs(KnownEntry entry)
    {
        if (!_same.TryGetValue(entry, out var same))
            _same[entry] = same = [.. Reached(entry).Where(e => !e.IsCurrent).OrderBy(e => e.Day).ThenBy(e => e.Visit.Number)];
        return same;
    }

    /// <summary>The record that is looked at has it as an item, under an id that is spelt alike.</summary>
    public bool IsOfCurrent(KnownEntry entry) =>
        Current.Any(c => !c.IsNameAlone && (ReferenceEquals(c, entry) || SameAs(c).Contains(entry)));

    /// <summary>Entries that bear the id, folded.</summary>
    public IEnumerable<KnownEntry> WithId(IReadOnlyList<string> idKeys) => _all.WithId(idKeys);

    /// <summary>Everything that the entry could be the same as or be asked about.</summary>
    public IEnumerable<KnownEntry> Near(KnownEntry entry) => _all.Near(entry);

    /// <summary>The same of other records alone: a record may have thousands of items under one serial.</summary>
    public IEnumerable<KnownEntry> NearBefore(KnownEntry entry) => _past.Near(entry);

    /// <summary>By its particulars or by its own word, answers aside.</summary>
    public static bool IsSaidToBe(KnownEntry later, KnownEntry earlier) =>
        SameItem.IsSame(later, earlier) || SameItem.IsFormerly(later, earlier) || SameItem.IsFormerly(earlier, later);

    /// <summary>
    /// One item by what is written on both; that one is said to be the other formerly, although something contradicts, does not count.
    /// </summary>
    public bool AreOneThing(KnownEntry one, KnownEntry other) => ThingOf(one).Contains(other);

    /// <summary>
    /// What the entry's record says of its item is said of the other entry too: by what is written on both, or by its own word.
    /// </summary>
    public bool CountsFor(KnownEntry entry, KnownEntry other) =>
        ReferenceEquals(entry, other) || AreOneThing(entry, other) || SameItem.IsFormerly(entry, other);

    /// <summary>Two ids of one visit bear the serial, of one maker: it is a batch number and identifies nothing.</summary>
    public bool IsBatch(KnownEntry entry) =>
        entry.Particulars.Serial.SelectMany(key => _batches[key]).Any(e => Particulars.Agree(e.Particulars.Maker, entry.Particulars.Maker));

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
        // Without answers it looks the same from each of them, and with a long history is found out once.
        foreach (var entry in Answers.IsEmpty ? thing.Where(e => !e.IsNameAlone) : [])
            _things[entry] = thing;
        return _things[one] = thing;
    }

    private IEnumerable<KnownEntry> Reached(KnownEntry start)
    {
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

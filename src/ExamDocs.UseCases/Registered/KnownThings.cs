using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// The things that entries are about, and how they hang together. Which entries are one thing, and what is fitted to it, is asked of
/// the rules that decide every visit; what shares its serial number under another tag is looked for besides.
/// </summary>
internal sealed class KnownThings
{
    private readonly DocumentsOnRecord _documents;
    private readonly Func<Item, ExaminationRecord, KnownToday> _asked;
    private readonly LocalDate _today;
    private readonly IReadOnlyList<ItemEntry> _known;
    private readonly Dictionary<(int Visit, string Id), ItemEntry> _entries;
    private readonly ILookup<string, ItemEntry> _byId;
    private readonly ILookup<string, ItemEntry> _byFormerId;
    private readonly ILookup<string, ItemEntry> _bySerial;
    private readonly HashSet<string> _batches;
    private readonly ThingList _things = new();

    /// <param name="documents">The documents of the register.</param>
    /// <param name="asked">Asks what is known of an item.</param>
    /// <param name="known">Everything that is known of them.</param>
    /// <param name="today">The day on which it is looked at.</param>
    public KnownThings(
        DocumentsOnRecord documents,
        Func<Item, ExaminationRecord, KnownToday> asked,
        IEnumerable<ItemEntry> known,
        LocalDate today
    )
    {
        (_documents, _asked, _today) = (documents, asked, today);
        _known = [.. known.DistinctBy(e => (e.Visit.Visit, e.Item.Id))];
        _entries = _known.ToDictionary(e => (e.Visit.Visit, e.Item.Id!));
        _byId = Index(_known, e => Folded.Keys(e.Item.Id));
        _byFormerId = Index(_known, e => Folded.Keys(e.Item.Formerly));
        _bySerial = Index(_known, e => SerialKeys.Of(e.Item.Serial));
        _batches = [.. _bySerial.Where(s => IsBatch(s) && IsBatch(s.Where(e => !IsCorrected(e)))).Select(s => s.Key)];
    }

    /// <summary>The things that these entries are about, the one recorded last first.</summary>
    public IReadOnlyList<StandingToday> Of(IEnumerable<ItemEntry> entries)
    {
        var found = new List<StandingToday>();
        // An id that a visit only names may mean several things: those with a row come first, and it belongs to each of them.
        foreach (
            var entry in entries
                .Select(e => Corrected(_entries.GetValueOrDefault((e.Visit.Visit, e.Item.Id!), e)))
                .Distinct()
                .OrderByDescending(e => e.HasRow)
                .ThenByDescending(e => e.Day)
                .ThenByDescending(e => e.Visit.Visit)
        )
        {
            if (!_things.About(entry).Any())
                Add(entry);
            found.AddRange(_things.About(entry));
        }
        return [.. found.Distinct()];
    }

    /// <summary>
    /// Entries under one id and owner count as one thing, of which the worst shows, unless a marking tells two things apart: a tag may
    /// have gone from one thing to another.
    /// </summary>
    private void Add(ItemEntry entry)
    {
        var thing = ThingOf(entry);
        if (_things.UnderOneTag(entry) is { } like)
            _things.Replace(like, new StandingToday(_documents, _things[like].Thing.And(thing), _today));
        else
            _things.Add(new StandingToday(_documents, thing, _today));
    }

    /// <summary>
    /// What a later version of the visit has under the same id, so that a mistyped serial number is no second thing; the entry itself where
    /// there is none, or where it was withdrawn.
    /// </summary>
    private ItemEntry Corrected(ItemEntry entry) =>
        entry.IsOf(Outcome.Withdraw)
            ? entry
            : Folded
                .Keys(entry.Item.Id)
                .SelectMany(key => _byId[key])
                .Where(e => e.HasRow && ThingOnRecord.IsReplacedBy(entry, e))
                .MaxBy(e => e.Visit.Visit)
                ?? entry;

    /// <summary>What can be the same thing under another tag.</summary>
    public IReadOnlyList<StandingToday> Alike(StandingToday thing) =>
        [
            .. Of(thing.Thing.Known.MayBe.SelectMany(id => Folded.Keys(id)).SelectMany(key => _byId[key]))
                .Concat(
                    Of(
                            thing
                                .Thing.Rows.SelectMany(e => SerialKeys.Of(e.Item.Serial))
                                .Where(key => !_batches.Contains(key))
                                .SelectMany(key => _bySerial[key])
                        )
                        .Where(t => thing.Thing.MayBe(t.Thing))
                )
                .Where(t => t != thing)
                .Distinct(),
        ];

    /// <summary>Each no better than what is fitted to it, over any number of steps, and than what it may be under another tag.</summary>
    public IReadOnlyList<FoundItem> Shown(IEnumerable<StandingToday> things) => [.. things.Select(t => Shown(t, []))];

    private FoundItem Shown(StandingToday thing, HashSet<StandingToday> above)
    {
        above.Add(thing);
        var parts = Of(thing.Thing.Known.Parts.SelectMany(p => Folded.Keys(p.Id)).SelectMany(key => _byId[key]))
            .Where(p => !above.Contains(p) && FirmName.MayBeSame(p.Thing.Owner, thing.Thing.Owner));
        return thing.With([.. parts.Select(p => Shown(p, [.. above]))], Alike(thing).Select(t => t.Alone));
    }

    private ThingOnRecord ThingOf(ItemEntry entry)
    {
        var known = _asked(entry.Item, entry.Record);
        var thing = new ThingOnRecord([.. EntriesOf(entry, known)], known);
        var (rows, row) = (thing.Rows, entry.Item);
        // A marking that the latest row leaves out is still on the item.
        foreach (var (at, older) in rows.Index())
            row = at == 0 ? older.Item : Filled(row, older.Item, thing.AnswersOf(older));
        if (row != entry.Item)
        {
            var latest = _asked(row, rows[0].Record);
            known = latest.Same.Contains((entry.Visit.Visit, entry.Item.Id!)) ? latest : latest.And(known);
        }
        return new ThingOnRecord([.. EntriesOf(entry, known)], known);
    }

    private IEnumerable<ItemEntry> EntriesOf(ItemEntry entry, KnownToday known) =>
        known.Same.Select(same => _entries.GetValueOrDefault(same)).OfType<ItemEntry>().Append(entry).Distinct();

    private static Item Filled(Item row, Item older, IReadOnlyList<DifferentItem> answers)
    {
        var filled = row with
        {
            Category = row.Category ?? older.Category,
            Maker = row.Maker ?? older.Maker,
            Model = row.Model ?? older.Model,
            PartNumber = row.PartNumber ?? older.PartNumber,
            Serial = row.Serial ?? older.Serial,
            OwnersMark = row.OwnersMark ?? older.OwnersMark,
            Manufactured = row.Manufactured ?? older.Manufactured,
        };
        return answers.Except(row.NotTheSameAs).ToList() is { Count: > 0 } told
            ? filled with
            {
                NotTheSameAs = [.. row.NotTheSameAs, .. told],
            }
            : filled;
    }

    private bool IsCorrected(ItemEntry entry) =>
        ThingOnRecord.IsCorrected(entry, Folded.Keys(entry.Item.Id).SelectMany(key => _byId[key].Concat(_byFormerId[key])));

    /// <summary>Two ids of one visit with this serial number and one maker: it identifies nothing.</summary>
    private static bool IsBatch(IEnumerable<ItemEntry> serial) =>
        serial
            .Where(e => RecallVisit.Read(e.Visit.Reference) is null)
            .GroupBy(e => e.Visit.Visit)
            .Any(visit =>
                visit.Any(a => visit.Any(b => Folded.Differ(a.Item.Id, b.Item.Id) && ThingOnRecord.IsOneMaker(a.Item.Maker, b.Item.Maker)))
            );

    private static ILookup<string, ItemEntry> Index(IEnumerable<ItemEntry> entries, Func<ItemEntry, IReadOnlyList<string>> of) =>
        entries.SelectMany(e => of(e).Select(key => (Key: key, Entry: e))).ToLookup(e => e.Key, e => e.Entry, StringComparer.Ordinal);
}

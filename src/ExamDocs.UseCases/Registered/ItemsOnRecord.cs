using ExamDocs.Core.Cases;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Known;
using ExamDocs.Core.Records;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// The items of a register's visits, found by what they bear.
/// </summary>
/// <param name="register">The register.</param>
/// <param name="today">The day on which it is looked at.</param>
/// <param name="marks">The owner's marks in it, where they were looked for already; null to look for them when they are needed.</param>
/// <param name="then">What of the register counts; null for all of it.</param>
internal sealed partial class ItemsOnRecord(
    DocumentRegister register,
    LocalDate today,
    OwnersMarks? marks = null,
    RegisterThen? then = null
)
{
    private readonly RegisterThen _then = then ?? new(register, null);
    private readonly Dictionary<int, IReadOnlyList<ItemEntry>> _entries = [];
    private readonly Dictionary<int, ExaminationRecord> _filledIn = [];

    /// <summary>True where nobody will ask what was observed and measured, so that it is not kept.</summary>
    public bool WithoutObservations { get; init; }

    private DocumentsOnRecord Documents => field ??= new DocumentsOnRecord(register, _then);

    private RememberedRecords Records => field ??= new RememberedRecords(register) { WithoutObservations = WithoutObservations };

    private RegisterKnowledge Knowledge => field ??= new RegisterKnowledge(register) { Documents = Documents, Records = Records };

    private OwnersMarks Marks => field ??= marks ?? new OwnersMarks(register);

    private VisitsAsLogged Logged => field ??= register.Visits.AsLogged(Records.Read);

    /// <summary>Items that bear this marking, and those that share a serial number with one of them.</summary>
    public IReadOnlyList<FoundItem> Bearing(string marking)
    {
        // One item's mark may be another's id or serial number: whoever reads it off the item cannot tell which it is.
        var marked = Marks
            .VisitsOf(marking)
            .SelectMany(v => Records.Of(v).Items.Where(i => Folded.Same(i.OwnersMark, marking)))
            .DistinctBy(i => (i.Id, i.Serial))
            .SelectMany(i => Touching(i.Id, i.Serial));
        var touching = Touching(marking, marking).Concat(marked).DistinctBy(v => v.Visit.Visit).OrderBy(v => v.Visit.Visit).ToList();
        var bearing = Entries(touching)
            .FindAll(e =>
                Folded.Same(e.Item.Id, marking) || Folded.Same(e.Item.Serial, marking) || Folded.Same(e.Item.OwnersMark, marking)
            );
        // These visits have all that can be the same as one of them, or be on it, over any number of items between.
        var visits = touching.Select(Knowledge.Known).ToList();
        var things = new KnownThings(Documents, new AskedToday(_ => visits, today).Of, Entries(touching), today);
        return things.Shown([.. things.Of(bearing).SelectMany(t => things.Alike(t).Prepend(t)).Distinct()]);
    }

    /// <summary>Items of which each of these words stands in one of their texts.</summary>
    /// <param name="words">The words.</param>
    /// <param name="most">The most to show: those with the worst outcomes.</param>
    /// <returns>The items, and how many tags there are in all.</returns>
    public (IReadOnlyList<FoundItem> Items, int InAll) WithWords(IReadOnlyList<string> words, int most)
    {
        var (known, ids) = (All, new FoldedIds());
        var tags = known
            .Where(e => words.All(w => e.Texts.Any(t => t?.Contains(w, StringComparison.OrdinalIgnoreCase) is true)))
            .GroupBy(e => (ids.Of(e.Item.Id!), FirmName.Fold(e.Owner)))
            .OrderByDescending(tag => tag.Max(e => e.Badness))
            .ToList();
        var things = Things(known);
        return (things.Shown(things.Of(tags.Take(most).SelectMany(tag => tag))), tags.Count);
    }

    /// <summary>Everything that any visit recorded, item by item.</summary>
    public IReadOnlyList<SweptThing> Everything()
    {
        var things = Sweep();
        var byId = All.SelectMany(e => Folded.Keys(e.Item.Id).Select(key => (key, e)))
            .ToLookup(e => e.key, e => e.e, StringComparer.Ordinal);
        return
        [
            .. things
                .Of(All)
                .Select(t => new SweptThing(
                    t.Thing,
                    things.Shown([t])[0],
                    [.. things.Alike(t).Select(a => a.Thing)],
                    [.. t.Thing.Entries.Concat(Replaced(t.Thing, byId)).SelectMany(RowsOf)]
                )),
        ];
    }

    /// <summary>Entries of earlier versions of its visits, under its ids: what was typed first may have been right.</summary>
    private static IEnumerable<ItemEntry> Replaced(ThingOnRecord thing, ILookup<string, ItemEntry> byId) =>
        thing.Entries.SelectMany(later =>
            Folded.Keys(later.Item.Id).SelectMany(key => byId[key]).Where(e => ThingOnRecord.IsReplacedBy(e, later)).Distinct()
        );

    /// <summary>Its rows: two where a record has its id twice.</summary>
    private static IEnumerable<Item> RowsOf(ItemEntry entry) =>
        entry.Record.Items.Where(i => string.Equals(i.Id, entry.Item.Id, StringComparison.Ordinal)).DefaultIfEmpty(entry.Item);

    /// <summary>
    /// What records name and no visit decided about: rows without an id, and ids without a row, as of a part in a renewal.
    /// </summary>
    public IReadOnlyList<UndecidedItem> Undecided()
    {
        // Somebody else's item may have the same id.
        var decided = All.SelectMany(e => Folded.Keys(e.Item.Id).Select(key => (key, e.Owner)))
            .ToLookup(d => d.key, d => d.Owner, StringComparer.Ordinal);
        return
        [
            .. Visits
                .SelectMany(v => UndecidedItem.In(FilledIn(v.Visit.Visit)))
                .Where(u => !Folded.Keys(u.Item.Id).Any(key => decided[key].Any(owner => FirmName.MayBeSame(owner, u.Owner)))),
        ];
    }

    /// <summary>Every item that the register knows.</summary>
    public IReadOnlyList<FoundItem> Every()
    {
        var things = Sweep();
        return things.Shown(things.Of(All));
    }

    /// <summary>
    /// For whoever goes through all items. The answers are those of <see cref="Things"/>; documents are read at once, and of the visits
    /// that name an item only the rows that have to do with it are looked at.
    /// </summary>
    private KnownThings Sweep()
    {
        Documents.ReadAll();
        var groups = new KnownGroups([.. Visits.Select(Knowledge.Known)]);
        return new(Documents, new AskedToday(groups.Touching, today).Of, All, today);
    }

    private KnownThings Things(IReadOnlyList<ItemEntry> known) =>
        new(
            Documents,
            new AskedToday(record => [.. Logged.Touching(record).Where(v => _then.Knew(v.Visit.Visit)).Select(Knowledge.Known)], today).Of,
            known,
            today
        );

    /// <summary>What every visit recorded of every item, with all that was decided.</summary>
    public IReadOnlyList<ItemEntry> All => field ??= Entries(Visits);

    /// <summary>Every visit, compared with the log.</summary>
    private IReadOnlyList<TouchingVisit> Visits => field ??= ReadAll();

    private List<TouchingVisit> ReadAll()
    {
        var visits = _then.Visits();
        Logged.Require([.. visits.Select(v => v.Visit)]);
        var outcomes = register.Visits.Outcomes().ToLookup(o => o.Visit.Visit, o => o.Outcome);
        return [.. visits.Select(v => new TouchingVisit(v, [.. outcomes[v.Visit]]))];
    }

    private IReadOnlyList<TouchingVisit> Touching(string? id, string? serial) => Touching([new Item { Id = id, Serial = serial }]);

    private IReadOnlyList<TouchingVisit> Touching(IReadOnlyList<Item> items) =>
        [.. Logged.Touching(new ExaminationRecord { Items = items }).Where(v => _then.Knew(v.Visit.Visit))];

    private ExaminationRecord FilledIn(int visit)
    {
        if (!_filledIn.TryGetValue(visit, out var record))
            _filledIn[visit] = record = SharedValues.FilledIn(Records.Of(visit));
        return record;
    }

    private List<ItemEntry> Entries(IEnumerable<TouchingVisit> visits) => [.. visits.SelectMany(EntriesOf)];

    /// <summary>
    /// One for each id that a visit decided about, also for one that has no row of its own: what its last examination found, and of several
    /// on that day the worst. An earlier withdrawal in the same record is known as any other is.
    /// </summary>
    private IReadOnlyList<ItemEntry> EntriesOf(TouchingVisit visit)
    {
        if (_entries.TryGetValue(visit.Visit.Visit, out var entries))
            return entries;
        var record = FilledIn(visit.Visit.Visit);
        return _entries[visit.Visit.Visit] = [
            .. from decided in visit.Outcomes.Where(o => o.Item is not null).GroupBy(o => o.Item!, StringComparer.Ordinal)
            let row = record.Items.FirstOrDefault(i => string.Equals(i.Id, decided.Key, StringComparison.Ordinal))
            let last = decided.Max(o => o.ExaminedOn)
            let outcome = decided
                .Where(o => o.ExaminedOn is null || o.ExaminedOn == last)
                .MaxBy(o => OutcomeWords.Find(o.Outcome) ?? Outcome.Withdraw)!
            select new ItemEntry(visit.Visit, outcome, row ?? new Item { Id = decided.Key }, record) { HasRow = row is not null },
        ];
    }
}

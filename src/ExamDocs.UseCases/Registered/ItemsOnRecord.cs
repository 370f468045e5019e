using ExamDocs.Core.Cases;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// The items of a register's visits, put together by owner and id as people spell them. Where two entries can be one thing they count
/// as one: the worse of them then shows.
/// </summary>
internal sealed class ItemsOnRecord(DocumentRegister register, LocalDate today)
{
    private readonly RememberedRecords _records = new(register);
    private readonly FoldedIds _ids = new();

    private VisitsAsLogged Logged => field ??= register.Visits.AsLogged(_records.Read);

    /// <summary>Items that bear this marking, and those that share a serial number with one of them.</summary>
    public IReadOnlyList<FoundItem> Bearing(string marking)
    {
        var known = Entries(Touching(marking, marking));
        var bearing = known.FindAll(e =>
            Folded.Same(e.Item.Id, marking) || Folded.Same(e.Item.Serial, marking) || Folded.Same(e.Item.OwnersMark, marking)
        );
        foreach (var serial in bearing.Select(e => e.Item.Serial).OfType<string>().Distinct(StringComparer.Ordinal).ToList())
        {
            var sharing = Entries(Touching(null, serial));
            known.AddRange(sharing);
            bearing.AddRange(sharing.Where(e => bearing.Exists(b => IsOneThing(b, e))));
        }
        return Items(bearing, known);
    }

    /// <summary>Items of which each of these words stands in one of their texts.</summary>
    public IReadOnlyList<FoundItem> WithWords(IReadOnlyList<string> words)
    {
        var visits = register.Visits.All();
        Logged.Require([.. visits.Select(v => v.Visit)]);
        var outcomes = register.Visits.Outcomes().ToLookup(o => o.Visit.Visit, o => o.Outcome);
        var known = Entries(visits.Select(v => new TouchingVisit(v, [.. outcomes[v.Visit]])));
        return Items(known.FindAll(e => words.All(w => e.Texts.Any(t => t?.Contains(w, StringComparison.OrdinalIgnoreCase) is true))), known);
    }

    private IEnumerable<TouchingVisit> Touching(string? id, string? serial) =>
        Logged.Touching(new ExaminationRecord { Items = [new Item { Id = id, Serial = serial }] });

    private List<ItemEntry> Entries(IEnumerable<TouchingVisit> visits) =>
        [
            .. from visit in visits
            let record = SharedValues.FilledIn(_records.Of(visit.Visit.Visit))
            from item in record.Items
            where item.Id is not null
            let outcome = visit.Outcomes.FirstOrDefault(o => string.Equals(o.Item, item.Id, StringComparison.Ordinal))
            where outcome is not null
            select new ItemEntry(visit.Visit, outcome, item, record),
        ];

    /// <summary>Two ids of one visit that bear a serial number share a batch number, which identifies nothing.</summary>
    private static bool IsOneThing(ItemEntry one, ItemEntry other) =>
        Folded.Same(one.Item.Serial, other.Item.Serial)
        && !(one.Visit.Visit == other.Visit.Visit && !Folded.Same(one.Item.Id, other.Item.Id))
        && !Folded.Differ(one.Item.Maker, other.Item.Maker);

    private IReadOnlyList<FoundItem> Items(IEnumerable<ItemEntry> found, IEnumerable<ItemEntry> known)
    {
        var things = known.DistinctBy(e => (e.Visit.Visit, e.Item.Id)).ToLookup(e => _ids.Of(e.Item.Id!), StringComparer.Ordinal);
        var standings = things.SelectMany(OfOwners).ToList();
        var wanted = found.Select(e => (_ids.Of(e.Item.Id!), FirmName.Fold(e.Owner))).ToHashSet();
        return
        [
            .. standings
                .Where(s => wanted.Contains((_ids.Of(s.Id), FirmName.Fold(s.Owner))))
                .Select(s => s.With(standings.Where(p => p.IsPartOf(s)))),
        ];
    }

    /// <summary>What names no owner can belong to any of them.</summary>
    private IEnumerable<StandingToday> OfOwners(IEnumerable<ItemEntry> entries)
    {
        var owners = entries.ToLookup(e => FirmName.Fold(e.Owner), StringComparer.Ordinal);
        return owners
            .Where(o => o.Key.Length > 0 || owners.Count == 1)
            .Select(o => new StandingToday(register, [.. o.Key.Length > 0 ? o.Concat(owners[""]) : o], today));
    }
}

/// <summary>What one visit recorded and decided of an item.</summary>
internal sealed record ItemEntry(RememberedVisit Visit, RememberedOutcome Outcome, Item Item, ExaminationRecord Record)
{
    /// <summary>Whom it is hired from, else the employer.</summary>
    public string? Owner => Record.Visit.HiredFrom?.Name ?? Record.Visit.Employer?.Name;

    public LocalDate Day => Outcome.ExaminedOn ?? Visit.ExaminedOn ?? LocalDate.MinIsoValue;

    public IEnumerable<string?> Texts =>
        [Item.Id, Item.Serial, Item.OwnersMark, Item.Maker, Item.Model, Item.Description, Item.Category, Owner];

    public bool IsOf(Outcome outcome) => string.Equals(Outcome.Outcome, outcome.Word(), StringComparison.Ordinal);
}

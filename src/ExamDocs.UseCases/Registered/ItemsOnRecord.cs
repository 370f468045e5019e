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
        var bearing = known.FindAll(e => Folded.Same(e.Item.Id, marking) || Folded.Same(e.Item.Serial, marking));
        if (bearing.Count == 0)
        {
            // A register finds ids and serial numbers at once; owner's marks only by reading every record.
            known = All();
            bearing = known.FindAll(e => Folded.Same(e.Item.OwnersMark, marking));
        }
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
        var known = All();
        return Items(
            known.FindAll(e => words.All(w => e.Texts.Any(t => t?.Contains(w, StringComparison.OrdinalIgnoreCase) is true))),
            known
        );
    }

    private List<ItemEntry> All()
    {
        var visits = register.Visits.All();
        Logged.Require([.. visits.Select(v => v.Visit)]);
        var outcomes = register.Visits.Outcomes().ToLookup(o => o.Visit.Visit, o => o.Outcome);
        return Entries(visits.Select(v => new TouchingVisit(v, [.. outcomes[v.Visit]])));
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

    private IReadOnlyList<FoundItem> Items(IEnumerable<ItemEntry> found, IReadOnlyList<ItemEntry> known)
    {
        var standings = known
            .DistinctBy(e => (e.Visit.Visit, e.Item.Id))
            .ToLookup(e => _ids.Of(e.Item.Id!), StringComparer.Ordinal)
            .SelectMany(OfOwners)
            .ToList();
        var bySerial = standings
            .SelectMany(s => s.SerialKeys.Select(key => (key, s)))
            .ToLookup(s => s.key, s => s.s, StringComparer.Ordinal);
        var renewals = Renewals(known);
        var parts = standings.ToLookup(s => s.Whole(renewals[_ids.Of(s.Id)]) is { } whole ? _ids.Of(whole) : "", StringComparer.Ordinal);
        var wanted = found.Select(e => (_ids.Of(e.Item.Id!), FirmName.Fold(e.Owner))).ToHashSet();
        return
        [
            .. standings
                .Where(s => wanted.Contains((_ids.Of(s.Id), FirmName.Fold(s.Owner))))
                .Select(s =>
                    s.With(
                        parts[_ids.Of(s.Id)].Where(p => FirmName.MayBeSame(p.Owner, s.Owner)),
                        s.SerialKeys.SelectMany(key => bySerial[key]).Distinct().Where(s.MayBe)
                    )
                ),
        ];
    }

    /// <summary>Every renewal by the parts that it names, with its day.</summary>
    private ILookup<string, (Renewal, LocalDate)> Renewals(IReadOnlyList<ItemEntry> known) =>
        known
            .DistinctBy(e => e.Visit.Visit)
            .SelectMany(e => e.Record.Renewals.Select(r => (Renewal: r, Day: r.DoneOn ?? e.Visit.ExaminedOn ?? LocalDate.MinIsoValue)))
            .SelectMany(r =>
                new[] { r.Renewal.FittedPart, r.Renewal.RemovedPart }.OfType<string>().Select(part => (Part: _ids.Of(part), r))
            )
            .ToLookup(r => r.Part, r => r.r, StringComparer.Ordinal);

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

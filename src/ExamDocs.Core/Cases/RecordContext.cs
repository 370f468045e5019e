using System.Globalization;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Core.Service;
using NodaTime;

namespace ExamDocs.Core.Cases;

/// <summary>
/// A record made ready for the rules: every reference looked up once, the examinations of an item in order, the maker's limits
/// matched. It knows no clock and no store: <see cref="AsOf"/> and <see cref="History"/> are passed in.
/// </summary>
public sealed class RecordContext
{
    private readonly ILookup<string, ItemCase> _byId;
    private readonly ILookup<string, RowCase<Person>> _people;
    private readonly ILookup<string, ExaminationCase> _examinations;
    private readonly ILookup<string, PastExamination> _pastExaminations;
    private readonly ILookup<string, PartElsewhere> _partsElsewhere;
    private ILookup<string, ItemCase>? _bySpelling;
    private readonly ILookup<string, WholeElsewhere> _wholesElsewhere;
    private readonly ILookup<string, PastWithdrawal> _pastWithdrawals;

    public RecordContext(ExaminationRecord record, History history, LocalDate asOf, KnownRules? rules = null)
    {
        (Recorded, History, AsOf, Rules) = (record, history, asOf, rules ?? KnownRules.BuiltIn);
        Record = record = SharedValues.FilledIn(record);
        _pastExaminations = history.Examinations.ToLookup(e => e.ItemId, StringComparer.Ordinal);
        _partsElsewhere = history.Parts.ToLookup(p => p.Whole, StringComparer.Ordinal);
        _wholesElsewhere = history.Wholes.ToLookup(w => w.Part, StringComparer.Ordinal);
        _pastWithdrawals = history.Withdrawals.ToLookup(w => w.ItemId, StringComparer.Ordinal);
        Visit = new VisitCase(this);
        People = Rows(record.People, "people", _ => null);
        _people = People.Where(p => p.Row.Id is not null).ToLookup(p => p.Row.Id!, StringComparer.Ordinal);
        Limits = Rows(record.Limits, "limits", _ => null);
        LimitsIndex = new LimitsIndex(record.Limits);
        Examinations = [.. record.Examinations.Select((e, i) => new ExaminationCase(this, e, At("examinations", i)))];
        _examinations = Examinations.Where(e => e.ItemId is not null).ToLookup(e => e.ItemId!, StringComparer.Ordinal);
        Items = [.. record.Items.Select((item, i) => new ItemCase(this, item, At("items", i)))];
        WithoutId = Items.FirstOrDefault(i => i.Item.Id is null);
        _byId = Items.Where(i => i.Item.Id is not null).ToLookup(i => i.Item.Id!, StringComparer.Ordinal);
        Unlisted = [.. FindUnlisted().Select(own => ItemCase.Unlisted(this, own))];
        Renewals = new(Rows(record.Renewals, "renewals", r => r.Item));
        Remedies = new(Rows(record.Remedies, "remedies", r => r.Item));
        Releases = new(Rows(record.Releases, "releases", r => r.Item));
        Disposals = new(Rows(record.Disposals, "disposals", r => r.Item));
        foreach (var item in Items)
            item.Assemble();
        foreach (var part in Items)
        {
            foreach (var whole in part.Wholes)
                whole.Connect(part);
        }
    }

    /// <summary>With what holds for a whole visit or model put where it holds.</summary>
    public ExaminationRecord Record { get; }

    /// <summary>As typed.</summary>
    public ExaminationRecord Recorded { get; }

    public History History { get; }

    /// <summary>The day on which the record is determined.</summary>
    public LocalDate AsOf { get; }

    /// <summary>The categories and regimes that the record can name.</summary>
    public KnownRules Rules { get; }

    public VisitCase Visit { get; }

    /// <summary>The first item without an id; null where every item has one.</summary>
    internal ItemCase? WithoutId { get; }

    public IReadOnlyList<RowCase<Person>> People { get; }

    public IReadOnlyList<RowCase<MakersLimits>> Limits { get; }

    internal LimitsIndex LimitsIndex { get; }

    /// <summary>Limits that items without limits may have missed by their spelling.</summary>
    internal MissedLimits MissedLimits => field ??= new MissedLimits(this);

    /// <summary>Maker and model of every item that has both.</summary>
    internal IReadOnlySet<(string Maker, string Model)> Models =>
        field ??= Items
            .Where(i => i.Item is { Maker: not null, Model: not null })
            .Select(i => LimitsIndex.Key(i.Item.Maker!, i.Item.Model!))
            .ToHashSet();

    /// <summary>Maker and model of the items that have no limits, each once.</summary>
    internal IReadOnlyList<(LimitsName? Maker, LimitsName? Model)> WithoutLimits =>
        field ??= [
            .. Items
                .Where(i => i.Limits.All.Count == 0)
                .Select(i => (i.Item.Maker, i.Item.Model))
                .Distinct()
                .Select(n => (LimitsName.Of(n.Maker), LimitsName.Of(n.Model))),
        ];

    public IReadOnlyList<ItemCase> Items { get; }

    /// <summary>Examinations of no item of the record, in the order of the record.</summary>
    internal IReadOnlyList<ExaminationCase> OfNoItem => field ??= [.. Examinations.Where(e => !KnowsItem(e.ItemId))];

    /// <summary>Things examined under an id that no item of the record has: a misspelt id must not hide a danger.</summary>
    public IReadOnlyList<ItemCase> Unlisted { get; }

    public IReadOnlyList<ExaminationCase> Examinations { get; }

    public ItemRows<Renewal> Renewals { get; }

    public ItemRows<Remedy> Remedies { get; }

    public ItemRows<Release> Releases { get; }

    public ItemRows<Disposal> Disposals { get; }

    /// <summary>Compares the ids of this record in any spelling.</summary>
    public FoldedIds Ids { get; } = new();

    /// <summary>Every item with this id in any spelling. If the record has none, the items that had this id earlier.</summary>
    public IEnumerable<ItemCase> ItemsSpeltLike(string? id)
    {
        if (id is null)
            return [];
        _bySpelling ??= Items.Where(i => i.Item.Id is not null).ToLookup(i => Ids.Of(i.Item.Id!), StringComparer.Ordinal);
        var spelt = _bySpelling[Ids.Of(id)];
        return spelt.Any()
            ? spelt
            : History.OtherNames.Where(n => string.Equals(n.Name, id, StringComparison.Ordinal)).SelectMany(n => _byId[n.Id]).Distinct();
    }

    /// <summary>Every item with this id: more than one where the record has the id twice.</summary>
    public IEnumerable<ItemCase> ItemsWithId(string? id) => id is null ? [] : _byId[id];

    public IEnumerable<ExaminationCase> ExaminationsOf(string? id) => id is null ? [] : _examinations[id];

    /// <summary>Examinations of an item that a store has, of any day and in any order.</summary>
    public IEnumerable<PastExamination> PastExaminationsOf(string? id) => id is null ? [] : _pastExaminations[id];

    /// <summary>Withdrawals of an item that other records made, in any order.</summary>
    public IEnumerable<PastWithdrawal> PastWithdrawalsOf(string? id) => id is null ? [] : _pastWithdrawals[id];

    /// <summary>Parts on an item that only other records have.</summary>
    public IEnumerable<PartElsewhere> PartsElsewhereOn(string? id) => id is null ? [] : _partsElsewhere[id];

    /// <summary>Items of other records that an item is fitted to.</summary>
    public IEnumerable<WholeElsewhere> WholesElsewhereOf(string? id) => id is null ? [] : _wholesElsewhere[id];

    public bool KnowsItem(string? id) => id is not null && _byId.Contains(id);

    public bool KnowsPerson(string? id) => id is not null && _people.Contains(id);

    /// <summary>The first person with this id; null where there is none.</summary>
    public Person? PersonWithId(string? id) => id is null ? null : _people[id].FirstOrDefault()?.Row;

    public IEnumerable<string> ItemIds => _byId.Select(g => g.Key);

    /// <summary>The persons with this id: more than one where the record has the id twice.</summary>
    public IEnumerable<RowCase<Person>> PeopleWithId(string? id) => id is null ? [] : _people[id];

    /// <summary>All ids of persons.</summary>
    public IEnumerable<string> PersonIds => _people.Select(g => g.Key);

    private IEnumerable<IReadOnlyList<ExaminationCase>> FindUnlisted() =>
        OfNoItem
            .Where(e => e.ItemId is null)
            .Select(e => (IReadOnlyList<ExaminationCase>)[e])
            .Concat(
                OfNoItem
                    .Where(e => e.ItemId is not null)
                    .GroupBy(e => e.ItemId, StringComparer.Ordinal)
                    .Select(g => (IReadOnlyList<ExaminationCase>)[.. g])
            );

    private RowCase<T>[] Rows<T>(IReadOnlyList<T> rows, string member, Func<T, string?> item) =>
        [.. rows.Select((row, i) => new RowCase<T>(this, row, At(member, i), item(row)))];

    private static string At(string member, int index) => string.Create(CultureInfo.InvariantCulture, $"/{member}/{index}");
}

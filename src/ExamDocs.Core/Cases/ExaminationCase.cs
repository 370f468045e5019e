using System.Globalization;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Core.Service;
using NodaTime;

namespace ExamDocs.Core.Cases;

/// <summary>One examination with the item, the people and the regimes that it refers to.</summary>
public sealed class ExaminationCase : ICase
{
    private readonly Lazy<ItemCase?> _item;
    private readonly Lazy<bool> _decides;

    public ExaminationCase(RecordContext context, Examination examination, string path)
    {
        (Context, Examination, Path) = (context, examination, path);
        On = examination.DayAt(context.Record.Visit);
        _item = new Lazy<ItemCase?>(FindItem);
        _decides = new Lazy<bool>(() => Context.ItemsWithId(Examination.Item).Any(i => i.Deciding.Contains(this)));
    }

    public RecordContext Context { get; }

    public Examination Examination { get; }

    public string Path { get; }

    public string? ItemId => Examination.Item;

    /// <summary>
    /// The item examined; null where the record has none with that id. Of several with one id, the one whose category has all the
    /// criteria answered, whatever the order of the rows.
    /// </summary>
    public ItemCase? Item => _item.Value;

    public Category? Category => Item?.Category;

    /// <summary>E, the day examined: the examination's own, else the visit's.</summary>
    public LocalDate? On { get; }

    /// <summary>True where it is dated before the visit: history, which counts only for what is still open.</summary>
    public bool IsBeforeVisit => On < Context.Record.Visit.ExaminedOn;

    /// <summary>The event that called for it; null where none did, or where no day is known.</summary>
    public EventInService? EventInService => EventInService.Of(Examination, On);

    public string? RegimeId => Examination.Regime ?? Context.Record.Visit.Regime;

    /// <summary>Null where the regime named is not known.</summary>
    public Regime? Regime => Context.Rules.FindRegime(RegimeId);

    /// <summary>
    /// The regimes that bind it; the first is the one whose particulars are printed. Its own and the visit's both bind; its own
    /// alone where the visit's leaves such kit to it. Empty where the regime named is not known.
    /// </summary>
    public IReadOnlyList<Regime> Regimes =>
        field ??= Regime is null
            ? []
            : RegimesInForce.Of(
                Context.Rules.FindRegime(Examination.Regime),
                Context.Rules.FindRegime(Context.Record.Visit.Regime),
                Item?.Item.Purpose,
                Item?.Item.Category,
                On
            );

    /// <summary>The interval counted from a day: of all its regimes the one that ends first; null where no regime is known.</summary>
    public ExaminationInterval? IntervalFrom(LocalDate day) =>
        Regimes.Select(r => r.IntervalFor(Examination, Item?.Item.Purpose, On, day)).MinBy(i => i.LastDay(day));

    /// <summary>
    /// The day by which it was due, inclusive. Where only a month or a year is recorded for the last examination, its last day counts:
    /// what is said to be overdue certainly was. Null where no earlier examination or no interval is known.
    /// </summary>
    public LocalDate? DueBy => Item?.LastExamined is { } last ? IntervalFrom(last.Latest)?.LastDay(last.Latest) : null;

    public string? AuthorId => Examination.Author ?? Examination.Examiner;

    public string? AuthenticatedById => Examination.AuthenticatedBy ?? Examination.Examiner;

    /// <summary>True where it decides on its item, alone or with others of the same last day.</summary>
    public bool Decides => _decides.Value;

    /// <summary>The observations with their criteria; looked up once, because many rules need them.</summary>
    public IReadOnlyList<(Observation Observation, Criterion? Criterion, string Path)> Observations =>
        field ??= Examination.Observations.Select((o, i) => (o, Category?.Find(o.Criterion), At("observations", i))).ToArray();

    /// <summary>
    /// The answers with the criteria of this item's category: two items of one id may have different categories.
    /// </summary>
    public IReadOnlyList<(Observation Observation, Criterion? Criterion, string Path)> ObservedOn(ItemCase item) =>
        string.Equals(item.Category?.Id, Category?.Id, StringComparison.Ordinal)
            ? Observations
            : [.. Observations.Select(o => (o.Observation, item.Category?.Find(o.Observation.Criterion), o.Path))];

    public IReadOnlyList<(Defect Defect, string Path)> Defects =>
        field ??= Examination.Defects.Select((d, i) => (d, At("defects", i))).ToArray();

    public IReadOnlyList<(DiameterStation Station, string Path)> Stations =>
        field ??= Examination.Diameters.Select((s, i) => (s, At("diameters", i))).ToArray();

    /// <summary>True where it says something against the item, or has an answer that cannot be read and may.</summary>
    public bool IsAdverse =>
        Examination.Conclusion is Conclusion.Withdraw
        || Examination.Defects.Count > 0
        || Examination.Observations.Any(o => o.State is ObservedState.Defect or ObservedState.Doubt or null);

    /// <summary>True where the item's category has every criterion that the examination names.</summary>
    public bool CouldBeOf(ItemCase item) =>
        item.Category is null
        || Examination
            .Observations.Select(o => o.Criterion)
            .Concat(Examination.Defects.Select(d => d.Criterion))
            .All(c => c is null || item.Category.Find(c) is not null);

    /// <summary>True where a mean diameter measured here would lie outside the limits of the item.</summary>
    public bool MeasuresTooMuchOrLittleFor(ItemCase item) =>
        item
            .Limits.All.Select(l => DiameterBand.Of(l))
            .OfType<DiameterBand>()
            .Any(band => Examination.Diameters.Select(StationMean.Of).OfType<StationMean>().Any(mean => !band.Holds(mean)));

    private ItemCase? FindItem()
    {
        var named = Context.ItemsWithId(Examination.Item).ToList();
        return named.Count < 2
            ? named.FirstOrDefault()
            : named
                .OrderBy(i => i.Category is null)
                .ThenBy(i => !CouldBeOf(i))
                .ThenBy(i => i.Item.ToString(), StringComparer.Ordinal)
                .First();
    }

    private string At(string member, int index) => string.Create(CultureInfo.InvariantCulture, $"{Path}/{member}/{index}");
}

using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Core.Service;
using NodaTime;

namespace ExamDocs.Core.Cases;

/// <summary>One item with everything in the record that is about it.</summary>
public sealed class ItemCase : ICase
{
    private readonly List<ItemCase> _parts = [];
    private readonly Lazy<MeasurementAnalysis?> _measured;
    private readonly Lazy<LocalDate?> _nextBy;

    internal ItemCase(RecordContext context, Item item, string path)
        : this(context, item, path, [.. context.ExaminationsOf(item.Id)]) { }

    private ItemCase(RecordContext context, Item item, string path, IReadOnlyList<ExaminationCase> own)
    {
        (Context, Item, Path) = (context, item, path);
        Category = context.Rules.FindCategory(item.Category);
        Limits = LimitsMatch.For(item, context.LimitsIndex);
        Life = ServiceLife.Of(item, Limits.All, [.. own.Select(e => e.EventInService).OfType<EventInService>()]);
        var last = own.Where(e => !e.IsBeforeVisit).Max(e => e.On);
        Deciding = own.Where(e => !e.IsBeforeVisit && (e.On is null || e.On == last)).ToArray();
        Earlier = own.Except(Deciding).OrderBy(e => e.On).ToArray();
        Examination = Deciding.MaxBy(e => e.Examination.Defects.Count);
        ExaminedOn = Deciding.Count > 0 && Deciding.All(e => e.On is not null) ? Deciding[0].On : null;
        _measured = new Lazy<MeasurementAnalysis?>(() => MeasurementAnalysis.Of(this));
        _nextBy = new Lazy<LocalDate?>(() => NextExamination.LatestFor(this));
    }

    /// <summary>Something examined under an id that no item of the record has: only the examination is known.</summary>
    internal static ItemCase Unlisted(RecordContext context, IReadOnlyList<ExaminationCase> examinations) =>
        new(context, new Item { Id = examinations[0].ItemId }, examinations[0].Path, examinations);

    public RecordContext Context { get; }

    public Item Item { get; }

    public string Path { get; }

    public string? ItemId => Item.Id;

    /// <summary>The regime whose particulars are printed.</summary>
    public string? RegimeId =>
        Examination is { Regime: not null, Regimes: [var first, ..] } ? first.Id : Examination?.RegimeId ?? Context.Record.Visit.Regime;

    /// <summary>Null where the regime named is not known.</summary>
    public Regime? Regime => Context.Rules.FindRegime(RegimeId);

    /// <summary>Every regime that it was examined under; the first is the one whose particulars are printed.</summary>
    public IReadOnlyList<Regime> Regimes => Examination?.Regimes ?? (Regime is { } regime ? [regime] : []);

    public Category? Category { get; }

    public LimitsMatch Limits { get; }

    public ServiceLife Life { get; }

    /// <summary>
    /// The examinations of the last day of this visit, and any whose date cannot be read. A sound record has one; of several, all
    /// count and the worst holds.
    /// </summary>
    public IReadOnlyList<ExaminationCase> Deciding { get; }

    /// <summary>The record's own earlier examinations of it, oldest first.</summary>
    public IReadOnlyList<ExaminationCase> Earlier { get; }

    /// <summary>
    /// The earlier examinations of the record and of the store together, oldest first: what was found, not what was decided. What was
    /// decided on those of the store is in <see cref="Records.History.Withdrawals"/> and is not judged again.
    /// </summary>
    public IReadOnlyList<EarlierExamination> Before => field ??= EarlierExamination.Of(this);

    /// <summary>The deciding examination; of several, the one with the most defects; null where there is none.</summary>
    public ExaminationCase? Examination { get; }

    /// <summary>What was calculated from its diameters; null where the deciding examination has none.</summary>
    public MeasurementAnalysis? Measured => _measured.Value;

    /// <summary>E; null where it was not examined at this visit or the date cannot be read.</summary>
    public LocalDate? ExaminedOn { get; }

    /// <summary>Latest date for its next examination, inclusive; null where it was not examined or its regime is not known.</summary>
    internal LocalDate? NextBy => _nextBy.Value;

    /// <summary>What it is fitted to now.</summary>
    public IReadOnlyList<ItemCase> Wholes { get; private set; } = [];

    /// <summary>The items of this record that are fitted to it now.</summary>
    public IReadOnlyList<ItemCase> Parts => _parts;

    /// <summary>Parts that are fitted to it now and are not in this record, each with what other records know of it.</summary>
    public IReadOnlyList<PartElsewhere> PartsElsewhere => field ??= [.. Context.PartsElsewhereOn(Item.Id)];

    public IEnumerable<RowCase<Release>> Releases => Context.Releases.Of(Item.Id);

    public IEnumerable<RowCase<Renewal>> Renewals => Context.Renewals.Of(Item.Id);

    public IEnumerable<RowCase<Remedy>> Remedies => Context.Remedies.Of(Item.Id);

    public IEnumerable<RowCase<Disposal>> Disposals => Context.Disposals.Of(Item.Id);

    /// <summary>
    /// The date of the last examination before this one: as typed, else the latest earlier one of the record, if somebody looked at it.
    /// </summary>
    public PartialDate? LastExamined
    {
        get
        {
            var latest = Earlier.Where(e => e.Examination.WasLookedAt).Max(e => e.On) is { } day ? PartialDate.Of(day) : null;
            return (Item.LastExamined, latest) switch
            {
                (null, _) => latest,
                (_, null) => Item.LastExamined,
                var (typed, earlier) => typed.Latest >= earlier.Latest ? typed : earlier,
            };
        }
    }

    /// <summary>
    /// True where the record does not say how long it may serve. The item has no obsolescence date; and it has no limits, or one of
    /// their entries gives no duration, does not say that there is none, and gives no last day of use for instructions that cannot
    /// be had.
    /// </summary>
    public bool LacksTimeLimit =>
        Item.ObsoleteOn is null
        && (
            Limits.All.Count == 0
            || Limits.All.Any(l =>
                l
                    is not (
                        { MaxUseYears: not null }
                        or { MaxStorageYears: not null }
                        or { MaxAgeYears: not null }
                        or { NoLimit: true }
                        or { Unobtainable.UseUntil: not null }
                    )
            )
        );

    internal void Assemble() => Wholes = [.. Assembly.WholesOf(this)];

    internal void Connect(ItemCase part) => _parts.Add(part);
}

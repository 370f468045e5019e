using ExamDocs.Core.Cases;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Determination.CaseForService;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Core.Sentences;
using NodaTime;

namespace ExamDocs.Core.Determination;

/// <summary>
/// An item with its outcome. Only <see cref="Determine"/> makes one; documents can be composed from nothing else, so
/// that what was not determined cannot reach a page.
/// </summary>
public sealed class DeterminedItem
{
    private readonly Lazy<IReadOnlyList<LedgerEntry>> _caseForService;

    internal DeterminedItem(ItemFacts facts)
    {
        Item = facts.Item;
        Category = facts.Category;
        Examination = facts.Examination;
        ExaminedOn = facts.ExaminedOn;
        LastExamined = facts.LastExamined;
        Limits = facts.Limits;
        LimitsSources = facts.LimitsSources;
        DiameterLimits = facts.DiameterLimits;
        RegimeId = facts.RegimeId;
        Regime = facts.Regime;
        Regimes = facts.Regimes;
        Interval = facts.Interval;
        Outcome = facts.Outcome;
        Until = facts.Until;
        NextExaminationBy = facts.NextExaminationBy;
        EndOfService = facts.EndOfService;
        ServiceLife = facts.ServiceLife;
        _caseForService = new Lazy<IReadOnlyList<LedgerEntry>>(facts.CaseForService);
        Reasons = facts.Reasons;
        Findings = facts.Findings;
        Parts = facts.Parts;
        NeverReleasable = facts.NeverReleasable;
        NeverReleasableByItself = facts.NeverReleasableByItself;
        WithdrawnBefore = facts.WithdrawnBefore;
        Profile = facts.Measured?.Profile;
        Trend = facts.Measured?.Trend;
        MeasurementSentences = facts.Measured?.Sentences ?? [];
    }

    public Item Item { get; }

    /// <summary>Null where the record names a category that is not in the catalogue.</summary>
    public Category? Category { get; }

    /// <summary>The examination that decided; null where there is none at this visit.</summary>
    public Examination? Examination { get; }

    /// <summary>Date of the deciding examination; null where there is none or it cannot be read.</summary>
    public LocalDate? ExaminedOn { get; }

    /// <summary>Date of the examination before this one, typed or found in the record; null where not known.</summary>
    public PartialDate? LastExamined { get; }

    /// <summary>
    /// The maker's limits that apply; null where none are recorded. Where the part number does not say which entry is for the
    /// item, the strictest of each limit; such limits have no source of their own.
    /// </summary>
    public MakersLimits? Limits { get; }

    /// <summary>Every document that the limits are taken from, each once.</summary>
    public IReadOnlyList<LimitsSource> LimitsSources { get; }

    /// <summary>The entry whose nominal diameter and tolerance hold, with its source; null where there is none.</summary>
    public MakersLimits? DiameterLimits { get; }

    /// <summary>Identifier of the regime whose particulars are printed: the deciding examination's own, or the visit's.</summary>
    public string? RegimeId { get; }

    /// <summary>Its data; null where there is no such regime.</summary>
    public Regime? Regime { get; }

    /// <summary>
    /// Every regime it was examined under, that one first; more than one where the examination names another than the visit.
    /// </summary>
    public IReadOnlyList<Regime> Regimes { get; }

    /// <summary>The regime's interval that holds for it; null where it was not examined or the regime is not known.</summary>
    public ExaminationInterval? Interval { get; }

    public Outcome Outcome { get; }

    /// <summary>Last day on which it may be used, inclusive; null unless the outcome is fit-until.</summary>
    public LocalDate? Until { get; }

    /// <summary>Latest date for the next thorough examination, inclusive; null for withdraw and undetermined.</summary>
    public LocalDate? NextExaminationBy { get; }

    /// <summary>Last day of service by the limits recorded, inclusive; null where none can be counted.</summary>
    public LocalDate? EndOfService { get; }

    /// <summary>Which limit ends its service, in one sentence with dates and sources; no full stop.</summary>
    public string ServiceLife { get; }

    /// <summary>Every reason that holds, in the order of the rules: D1 to D3 only where the outcome is fit-until.</summary>
    public IReadOnlyList<Reason> Reasons { get; }

    /// <summary>The evidence for and against keeping it in service, in the order an examiner argues.</summary>
    public IReadOnlyList<LedgerEntry> CaseForService => _caseForService.Value;

    /// <summary>Findings that reach this item.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Ids of the parts fitted to it now.</summary>
    public IReadOnlyList<string> Parts { get; }

    /// <summary>
    /// It is withdrawn on something that no release undoes unless it was recorded in error: saw contact, severe loading, an expired life,
    /// destroyed.
    /// </summary>
    public bool NeverReleasable { get; }

    /// <summary>The same, for what this examination found alone.</summary>
    public bool NeverReleasableByItself { get; }

    /// <summary>Withdrawals by earlier examinations that the record itself holds, released since or not, oldest first.</summary>
    public IReadOnlyList<PastWithdrawal> WithdrawnBefore { get; }

    /// <summary>What the diameters of the deciding examination tell; null where none were measured.</summary>
    public MeasuredProfile? Profile { get; }

    /// <summary>Where the diameters are heading; null with fewer than three earlier days on which they were measured.</summary>
    public DiameterTrend? Trend { get; }

    /// <summary>What profile and trend say, in the order in which an examiner argues; empty where nothing was measured.</summary>
    public IReadOnlyList<MeasurementSentence> MeasurementSentences { get; }

    /// <summary>True where it was examined and no finding of severity error reaches it: its particulars may stand in a report.</summary>
    public bool MayBeReported =>
        Examination is not null && Outcome is not Outcome.Undetermined && Findings.All(f => f.Severity != Severity.Error);
}

/// <summary>A whole record with an outcome for every item, in input order.</summary>
public sealed class DeterminedVisit
{
    internal DeterminedVisit(
        RecordContext context,
        IReadOnlyList<DeterminedItem> items,
        IReadOnlyList<DeterminedItem> unlisted,
        IReadOnlyList<Finding> findings,
        IReadOnlyList<Finding> reading
    )
    {
        (Record, Rules, AsOf, History) = (context.Record, context.Rules, context.AsOf, context.History);
        (Items, Unlisted, Findings, Reading) = (items, unlisted, findings, reading);
    }

    public ExaminationRecord Record { get; }

    /// <summary>What reading the record found wrong with it, as it was handed in.</summary>
    public IReadOnlyList<Finding> Reading { get; }

    /// <summary>The categories and regimes it was determined by.</summary>
    public KnownRules Rules { get; }

    /// <summary>The day on which it was determined.</summary>
    public LocalDate AsOf { get; }

    /// <summary>What was known of the items from before.</summary>
    public History History { get; }

    public IReadOnlyList<DeterminedItem> Items { get; }

    /// <summary>
    /// What was examined under an id that no item of the record has, and has a reason to withdraw: it is told and
    /// labelled under the id as typed, so that a slip of the pen buries no danger.
    /// </summary>
    public IReadOnlyList<DeterminedItem> Unlisted { get; }

    /// <summary>Items and unlisted.</summary>
    public IEnumerable<DeterminedItem> Everything => Items.Concat(Unlisted);

    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The person with this id; null where the record has none.</summary>
    public Person? Person(string? id) =>
        id is null ? null : Record.People.FirstOrDefault(p => string.Equals(p.Id, id, StringComparison.Ordinal));
}

/// <summary>Everything <see cref="Determine"/> found out about one item.</summary>
internal sealed record ItemFacts
{
    public required Item Item { get; init; }

    public Category? Category { get; init; }

    public Examination? Examination { get; init; }

    public LocalDate? ExaminedOn { get; init; }

    public PartialDate? LastExamined { get; init; }

    public MakersLimits? Limits { get; init; }

    public IReadOnlyList<LimitsSource> LimitsSources { get; init; } = [];

    public MakersLimits? DiameterLimits { get; init; }

    public string? RegimeId { get; init; }

    public Regime? Regime { get; init; }

    public IReadOnlyList<Regime> Regimes { get; init; } = [];

    public ExaminationInterval? Interval { get; init; }

    public Outcome Outcome { get; init; }

    public LocalDate? Until { get; init; }

    public LocalDate? NextExaminationBy { get; init; }

    public LocalDate? EndOfService { get; init; }

    public required string ServiceLife { get; init; }

    public IReadOnlyList<Reason> Reasons { get; init; } = [];

    /// <summary>Set out only when it is asked for.</summary>
    public Func<IReadOnlyList<LedgerEntry>> CaseForService { get; init; } = () => [];

    public IReadOnlyList<Finding> Findings { get; init; } = [];

    public IReadOnlyList<string> Parts { get; init; } = [];

    public bool NeverReleasable { get; init; }

    public bool NeverReleasableByItself { get; init; }

    public IReadOnlyList<PastWithdrawal> WithdrawnBefore { get; init; } = [];

    public MeasurementAnalysis? Measured { get; init; }
}

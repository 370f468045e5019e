using ExamDocs.Core.Cases;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Determination.CaseForService;
using ExamDocs.Core.Determination.Withdraw;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Core.Sentences;
using NodaTime;

namespace ExamDocs.Core.Determination;

/// <summary>
/// An item with its outcome. Only <see cref="Determine"/> makes one, and documents can be composed from nothing else: so nothing
/// that was not determined can reach a page.
/// </summary>
public sealed class DeterminedItem
{
    private readonly Lazy<IReadOnlyList<LedgerEntry>> _caseForService;

    internal DeterminedItem(ItemCase item, Verdict verdict)
    {
        Item = item.Item;
        Category = item.Category;
        Examination = item.Examination?.Examination;
        ExaminedOn = item.ExaminedOn;
        LastExamined = item.LastExamined;
        Limits = item.Limits.Applying;
        LimitsSources = [.. item.Limits.All.Select(l => l.Source).OfType<LimitsSource>().Distinct()];
        DiameterLimits = item.Limits.OfDiameter;
        RegimeId = item.RegimeId;
        Regime = item.Regime;
        Regimes = item.Regimes;
        Interval = item is { Examination: { } examination, ExaminedOn: { } on } ? examination.IntervalFrom(on) : null;
        WasDueBy = item.Examination is { DueBy: { } due } late && late.On > due ? due : null;
        Outcome = verdict.Outcome;
        Until = verdict.LastDay;
        NextExaminationBy = Outcome is Outcome.Fit or Outcome.FitUntil ? NextExamination.LatestForAssembly(item) : null;
        EndOfService = item.Life.End;
        ServiceLife = item.Life.Sentence;
        Reasons = [.. verdict.InOrder().Select(r => r with { Source = SourceUnderRegime.Of(r.Source, r.Code, Regimes) })];
        Findings = [.. verdict.Findings];
        Parts = [.. item.Parts.Select(p => p.Item.Id).OfType<string>()];
        NeverReleasable = verdict.NeverReleasable || Reasons.Any(r => r.Code is "W11");
        NeverReleasableByItself = verdict.NeverReleasableByItself;
        WithdrawnBefore = [.. EarlierWithdrawals.Of(item).Where(w => w.IsInRecord).Select(w => w.Past)];
        Profile = item.Measured?.Profile;
        Trend = item.Measured?.Trend;
        MeasurementSentences = item.Measured?.Sentences ?? [];
        // It takes long, and few documents need it.
        _caseForService = new Lazy<IReadOnlyList<LedgerEntry>>(() =>
            [.. Ledger.Of(item, Reasons, verdict.Findings).Select(e => e with { Source = SourceUnderRegime.Of(e.Source, e.Code, Regimes) })]
        );
    }

    public Item Item { get; }

    /// <summary>Null where the record names a category that is not in the catalogue.</summary>
    public Category? Category { get; }

    /// <summary>The deciding examination; null where there is none at this visit.</summary>
    public Examination? Examination { get; }

    /// <summary>Date of the deciding examination; null where there is none or it cannot be read.</summary>
    public LocalDate? ExaminedOn { get; }

    /// <summary>Date of the examination before this one, typed or found in the record; null where not known.</summary>
    public PartialDate? LastExamined { get; }

    /// <summary>
    /// The maker's limits that apply; null where none are recorded. Where several entries apply, each limit is the strictest among
    /// them, and the whole has no single source.
    /// </summary>
    public MakersLimits? Limits { get; }

    /// <summary>Every document that the limits come from, each once.</summary>
    public IReadOnlyList<LimitsSource> LimitsSources { get; }

    /// <summary>The entry whose nominal diameter and tolerance apply, with its source; null where there is none.</summary>
    public MakersLimits? DiameterLimits { get; }

    /// <summary>Identifier of the regime whose particulars are printed: the deciding examination's own, or the visit's.</summary>
    public string? RegimeId { get; }

    /// <summary>The data of that regime; null where there is no such regime.</summary>
    public Regime? Regime { get; }

    /// <summary>
    /// Every regime that it was examined under, with that one first; more than one where the examination names another than the
    /// visit does.
    /// </summary>
    public IReadOnlyList<Regime> Regimes { get; }

    /// <summary>The regime's interval that applies; null where it was not examined or the regime is not known.</summary>
    public ExaminationInterval? Interval { get; }

    /// <summary>The day by which it was to be examined, where it was examined later; null where it was in time or none is known.</summary>
    public LocalDate? WasDueBy { get; }

    public Outcome Outcome { get; }

    /// <summary>Last day on which it may be used, inclusive; null unless the outcome is fit-until.</summary>
    public LocalDate? Until { get; }

    /// <summary>Latest date for the next thorough examination, inclusive; null for withdraw and undetermined.</summary>
    public LocalDate? NextExaminationBy { get; }

    /// <summary>Last day of service by the limits recorded, inclusive; null where none can be counted.</summary>
    public LocalDate? EndOfService { get; }

    /// <summary>Which limit ends its service, in one sentence with dates and sources; no full stop.</summary>
    public Sentence ServiceLife { get; }

    /// <summary>Every reason for the outcome, in the order of the rules: D1 to D3 only where it is fit-until.</summary>
    public IReadOnlyList<Reason> Reasons { get; }

    /// <summary>The evidence for and against keeping it in service, in the order an examiner argues.</summary>
    public IReadOnlyList<LedgerEntry> CaseForService => _caseForService.Value;

    /// <summary>Findings that reach this item.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Ids of the parts fitted to it now.</summary>
    public IReadOnlyList<string> Parts { get; }

    /// <summary>
    /// True where it is withdrawn for something that only a release of a record in error undoes: saw contact, severe loading, an
    /// expired life, destroyed.
    /// </summary>
    public bool NeverReleasable { get; }

    /// <summary>The same, for only what this examination found.</summary>
    public bool NeverReleasableByItself { get; }

    /// <summary>Withdrawals by earlier examinations in the record itself, whether released since or not, oldest first.</summary>
    public IReadOnlyList<PastWithdrawal> WithdrawnBefore { get; }

    /// <summary>What was calculated from the diameters of the deciding examination; null where none were measured.</summary>
    public MeasuredProfile? Profile { get; }

    /// <summary>Where the diameters are heading; null with fewer than three earlier days on which they were measured.</summary>
    public DiameterTrend? Trend { get; }

    /// <summary>What profile and trend say, in the order in which an examiner argues; empty where nothing was measured.</summary>
    public IReadOnlyList<MeasurementSentence> MeasurementSentences { get; }

    /// <summary>
    /// True where it was examined, is not undetermined, and no finding of severity error reaches it: then a report may have it.
    /// </summary>
    public bool MayBeReported =>
        Examination is not null && Outcome is not Outcome.Undetermined && Findings.All(f => f.Severity != Severity.Error);
}

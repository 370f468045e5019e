using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates.Notice.Wording;
using ExamDocs.Templates.Shared;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Regimes;

namespace ExamDocs.Templates.Notice;

/// <summary>A notice of what makes one item a danger. It is printed whatever the record lacks.</summary>
public sealed class NoticeModel
{
    private static NoticePhrases Words => NoticePhrases.Current;

    /// <param name="identity">Of kind notice.</param>
    /// <param name="visit">The visit the item belongs to.</param>
    /// <param name="item">An item that is withdrawn, or has a defect.</param>
    /// <param name="photos">The photo of an observation, where there is one that can be printed; left out, none are.</param>
    /// <exception cref="ArgumentException">There is nothing to give notice of.</exception>
    public NoticeModel(DocumentIdentity identity, DeterminedVisit visit, DeterminedItem item, Func<Observation, PhotoPrint?>? photos = null)
    {
        Defects = DefectEntry.Of(item);
        if (Defects.Count == 0 && item.Outcome is not Outcome.Withdraw)
            throw new ArgumentException($"{item.Item.Id} has no defect to give notice of", nameof(item));
        (Identity, Determined, Item) = (identity, visit, item);
        Regime = Phrases.Regime(item.Regime);
        Photos = [.. ItemPhoto.Of(item, photos).Where(p => p.IsOfDefect)];
        Examiner = visit.Person(item.Examination?.Examiner);
    }

    public DocumentIdentity Identity { get; }

    public DeterminedVisit Determined { get; }

    public DeterminedItem Item { get; }

    public Visit Visit => Determined.Record.Visit;

    public RegimeWording Regime { get; }

    public IReadOnlyList<DefectEntry> Defects { get; }

    /// <summary>Photos of what is a danger, and of nothing else.</summary>
    public IReadOnlyList<ItemPhoto> Photos { get; }

    /// <summary>Null where the record names nobody, or a person whom it does not list.</summary>
    public Person? Examiner { get; }

    public bool ImminentRisk => Defects.Any(d => d.ImminentRisk);

    /// <summary>True where the item is not to be used from now on; otherwise it has a last day of use.</summary>
    public bool IsNow => Item.Outcome is not (Outcome.Fit or Outcome.FitUntil) || Defects.Any(d => d.IsNow);

    /// <summary>Reference of the maker's notice that took it out of use; null where it was examined.</summary>
    public string? TakenOutBy => TakenOutUnseen.NoticeOf(Determined, Item);

    /// <summary>The law of such a notice; for an item that nobody looked at, what took it out of use.</summary>
    public string Lead => TakenOutBy is { } notice ? Words.TakenOut(Visit.ExaminedOn, notice) : Regime.Lead(Regime.NoticeLead);

    /// <summary>Of an item that nobody looked at, only what withdraws it: that nothing was examined is said once.</summary>
    public IReadOnlyList<Reason> Reasons =>
        TakenOutBy is null || Item.Outcome is not Outcome.Withdraw ? Item.Reasons : [.. Item.Reasons.Where(r => r.Code.StartsWith('W'))];

    public string Headline => IsNow ? Words.DoNotUse : Words.DoNotUseAfter(Item.Until);

    /// <summary>The employer's duties that apply, each with its law.</summary>
    public IReadOnlyList<string> EmployersDuties
    {
        get
        {
            var duties = new List<string>();
            if (IsNow)
                duties.AddRange([Regime.DutyNow, Words.KeepApart]);
            else
                duties.AddRange([Regime.DutyLater, Words.LastDay(Item.Until)]);
            return duties;
        }
    }

    /// <summary>The authority the law names for a copy of the report; null where no risk is imminent, or the law names none.</summary>
    public string? Authority => ImminentRisk && AuthorityDuty.Of(Determined, Item) is { } duty ? AuthorityDuty.Words(duty, Regime) : null;

    /// <summary>What the record leaves open about the authority; the notice is given all the same.</summary>
    public IReadOnlyList<string> AuthorityGaps =>
        !ImminentRisk ? []
        : Item.Regime is null ? [Words.LawNotKnown]
        : Authority is not null && !Item.MayBeReported ? [Words.ReportHeldBack]
        : [];
}

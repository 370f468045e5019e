using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates.Report.Wording;
using ExamDocs.Templates.Shared;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Items;
using ExamDocs.Templates.Shared.Wording.Regimes;

namespace ExamDocs.Templates.Report;

/// <summary>One item of the report, ready to be printed.</summary>
public sealed class ReportItem
{
    private static ReportPhrases Words => ReportPhrases.Current;

    private static ItemPhrases ItemWords => ItemPhrases.Current;

    private readonly DeterminedVisit _visit;

    internal ReportItem(DeterminedVisit visit, DeterminedItem determined, int position, Func<Observation, PhotoPrint?>? photos = null)
    {
        (_visit, Determined, Position) = (visit, determined, position);
        Examination = determined.Examination
            ?? throw new ArgumentException($"{determined.Item.Id} has no examination to report on", nameof(determined));
        Regime = Phrases.Regime(determined.Regime);
        Defects = DefectEntry.Of(determined);
        Case = CaseSection.Of(determined);
        Diameters = DiameterProfile.Of(determined);
        Photos = ItemPhoto.Of(determined, photos);
    }

    public DeterminedItem Determined { get; }

    /// <summary>Counted from 1.</summary>
    public int Position { get; }

    public Examination Examination { get; }

    public RegimeWording Regime { get; }

    public IReadOnlyList<DefectEntry> Defects { get; }

    /// <summary>The case for service, step by step.</summary>
    public IReadOnlyList<CaseSection> Case { get; }

    public DiameterProfile? Diameters { get; }

    public IReadOnlyList<ItemPhoto> Photos { get; }

    public Item Item => Determined.Item;

    public string Id => Printed.Text(Item.Id);

    /// <summary>True for a first examination, which has its own paragraph of the schedule.</summary>
    public bool IsFirst => Examination.Basis is Core.Records.Basis.FirstUse or Core.Records.Basis.Installation;

    public bool MayStay => Determined.Outcome is Outcome.Fit or Outcome.FitUntil;

    /// <summary>Only the law on lifting asks for a load; elsewhere the report leaves out a load that is not recorded.</summary>
    public bool ShowsLoad => Regime.HasKeys || Item.SafeWorkingLoad is not null;

    public string FirstUsed => Item.NeverUsed is true ? ItemWords.NeverUsed : Printed.Day(Item.FirstUsed);

    public string Basis => Printed.Join("; ", BasisWords, SchemeWords, EventWords);

    public string SafeToOperate =>
        (Determined.Outcome, Examination.Basis) switch
        {
            (Outcome.Fit, Core.Records.Basis.Installation) => Words.SafeInstalled,
            (Outcome.Fit, _) => Words.SafeFit,
            (Outcome.FitUntil, _) => Words.SafeUntil(Determined.Until),
            _ => Words.SafeNo,
        };

    public string Next => MayStay ? Printed.Day(Determined.NextExaminationBy) : ItemWords.NoNext;

    public string NotAfter =>
        Determined switch
        {
            { Outcome: Outcome.FitUntil } => Printed.Day(Determined.Until),
            { Outcome: Outcome.Fit } => ItemWords.NoNotAfter,
            _ => ItemWords.NotAfterAnyDay,
        };

    public string MakersDocument => MakersDocuments.Of(Determined);

    public string Exposure =>
        Examination.Exposure is { } e
            ? Printed.Join(", ", e.Use, e.Hardware, e.Ground, e.UserMassKg is { } m ? $"{Printed.Number(m)} kg" : null)
            : "";

    public IReadOnlyList<string> Renewals => [.. _visit.Record.Renewals.Where(Concerns).Select(r => RenewalLine.Of(r, _visit))];

    private bool Concerns(Renewal renewal) =>
        Item.Id is { } id
        && (
            string.Equals(renewal.Item, id, StringComparison.Ordinal)
            || string.Equals(renewal.FittedPart, id, StringComparison.Ordinal)
            || string.Equals(renewal.RemovedPart, id, StringComparison.Ordinal)
        );

    /// <summary>What was made late is not printed as made within its interval.</summary>
    private string BasisWords =>
        IsFirst
            ? Regime.Bases[Examination.Basis!.Value]
            : Regime.BasisOf(Examination.Basis, Determined.WasDueBy, Determined.LastExamined is not null);

    private string? SchemeWords => Examination.Scheme is { } s ? Words.Scheme(s.Reference, s.Author, s.Months) : null;

    private string? EventWords => Examination.Event is { } e ? Words.Event(e.What, e.On) : null;
}

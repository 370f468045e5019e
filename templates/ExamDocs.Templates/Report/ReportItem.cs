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

    internal ReportItem(DeterminedVisit visit, DeterminedItem determined, Func<Observation, PhotoPrint?>? photos = null)
    {
        (_visit, Determined) = (visit, determined);
        Examination = determined.Examination
            ?? throw new ArgumentException($"{determined.Item.Id} has no examination to report on", nameof(determined));
        Regime = Phrases.Regime(determined.Regime);
        Defects = DefectEntry.Of(determined);
        Diameters = DiameterProfile.Of(determined);
        Photos = ItemPhoto.Of(determined, photos);
        Notes = ItemNotes.Of(visit, this);
        Group = new GroupHeading(this);
    }

    public DeterminedItem Determined { get; }

    /// <summary>Counted from 1, in the order printed.</summary>
    public int Position { get; internal set; }

    public Examination Examination { get; }

    public RegimeWording Regime { get; }

    public IReadOnlyList<DefectEntry> Defects { get; }

    public DiameterProfile? Diameters { get; }

    public IReadOnlyList<ItemPhoto> Photos { get; }

    /// <summary>What else there is to say of it, a sentence each: its <c>noted</c> answers first.</summary>
    public IReadOnlyList<string> Notes { get; }

    /// <summary>What it shares with the others of its group.</summary>
    public GroupHeading Group { get; }

    public Item Item => Determined.Item;

    public string Id => Printed.Text(Item.Id);

    public string Description => Printed.Text(Item.Description);

    public string Category => Printed.Text(Phrases.Category(Determined.Category, Item.Category));

    /// <summary>Serial and the owner's mark, as far as there are any.</summary>
    public string Marking =>
        Item switch
        {
            { Serial: { } serial, OwnersMark: { } mark } => serial + Words.Semicolon + Words.Mark(mark),
            { Serial: { } serial } => serial,
            { OwnersMark: { } mark } => Words.Mark(mark),
            _ => Phrases.Common.NotRecorded,
        };

    public string Made => Item.Manufactured is { } made ? Printed.ShortDay(made) : Words.NotKnown;

    /// <summary>The examination before this one; a first one has none.</summary>
    public string LastExamined =>
        Determined.LastExamined is { } last ? Printed.ShortDay(last)
        : IsFirst ? Words.First
        : Words.NotKnown;

    /// <summary>True for a first examination, which has its own paragraph of the schedule.</summary>
    public bool IsFirst => Examination.Basis is Core.Records.Basis.FirstUse or Core.Records.Basis.Installation;

    public bool MayStay => Determined.Outcome is Outcome.Fit or Outcome.FitUntil;

    /// <summary>Only the law on lifting asks for a load; elsewhere the report leaves out a load that is not recorded.</summary>
    public bool ShowsLoad => Regime.HasKeys || Item.SafeWorkingLoad is not null;

    /// <summary>What the laws it was examined under ask for beyond what every report has.</summary>
    public bool Asks(LawAsks what) => Determined.Regimes.Any(r => ParagraphPlaces.Asks(r).HasFlag(what));

    public string FirstUsed => Item.NeverUsed is true ? ItemWords.NeverUsed : Printed.ShortDay(Item.FirstUsed);

    public string Basis => Printed.Join(Words.Semicolon, BasisWords, SchemeWords, EventWords);

    public string SafeToOperate =>
        (Determined.Outcome, Examination.Basis) switch
        {
            (Outcome.Fit, Core.Records.Basis.Installation) => Words.SafeInstalled,
            (Outcome.Fit, _) => Words.SafeFit,
            (Outcome.FitUntil, _) => Words.SafeUntil(Determined.Until),
            _ => Words.SafeNo,
        };

    public string Next => MayStay ? Printed.ShortDay(Determined.NextExaminationBy) : ItemWords.NoNext;

    /// <summary>Empty unless it may be used until a day.</summary>
    public string NotAfter => Determined.Outcome is Outcome.FitUntil ? Printed.ShortDay(Determined.Until) : "";

    /// <summary>The last day of its service by the limits recorded; a dash where they set none.</summary>
    public string UseUntil => Determined.EndOfService is { } end ? Printed.ShortDay(end) : "–";

    public string MakersDocument => MakersDocuments.Of(Determined);

    public string Declaration => Item.Declaration is { } d ? Words.Declaration(d.Reference, d.On) : Phrases.Common.NotRecorded;

    /// <summary>The criteria that were examined; empty where its law does not ask for them.</summary>
    public string Scope =>
        Asks(LawAsks.Scope)
            ? string.Join(
                ", ",
                Examination.Observations.Where(o => o.State is not ObservedState.NotExamined).Select(o => Printed.Criterion(o.Criterion))
            )
            : "";

    /// <summary>Its laws, where it was examined under more than the report's.</summary>
    public string Laws =>
        Determined.Regimes.Count > 1 ? string.Join(Words.Semicolon, Determined.Regimes.Select(r => Phrases.Regime(r).ShortLaw)) : "";

    /// <summary>Name of the examiner, where the report is made by another.</summary>
    public string ExaminedBy =>
        Examination.Author is { } author && !string.Equals(author, Examination.Examiner, StringComparison.Ordinal)
            ? RenewalLine.Name(Examination.Examiner, _visit)
            : "";

    /// <summary>What was tested, and what came of it; empty where no test is recorded.</summary>
    public string Tests =>
        string.Join(Words.Semicolon, Examination.Tests.Select(t => Printed.Text(t.Description) + Words.Colon + Printed.Text(t.Result)));

    /// <summary>What was made late is not printed as made within its interval.</summary>
    private string BasisWords =>
        IsFirst
            ? Regime.Bases[Examination.Basis!.Value]
            : Regime.BasisOf(Examination.Basis, Determined.WasDueBy, Determined.LastExamined is not null);

    private string? SchemeWords => Examination.Scheme is { } s ? Words.Scheme(s.Reference, s.Author, s.Months) : null;

    private string? EventWords => Examination.Event is { } e ? Words.Event(e.What, e.On) : null;
}

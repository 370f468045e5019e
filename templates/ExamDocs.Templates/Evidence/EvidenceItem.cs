using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates.Evidence.Wording;
using ExamDocs.Templates.Shared;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Items;

namespace ExamDocs.Templates.Evidence;

/// <summary>One item of the evidence file, whatever its outcome.</summary>
public sealed class EvidenceItem
{
    private static EvidencePhrases Words => EvidencePhrases.Current;

    private static ItemPhrases ItemWords => ItemPhrases.Current;

    private readonly DeterminedVisit _visit;

    internal EvidenceItem(DeterminedVisit visit, DeterminedItem determined, int position, Func<Observation, PhotoPrint?>? photos)
    {
        (_visit, Determined, Position) = (visit, determined, position);
        Case = CaseStep.Of(determined);
        Diameters = DiameterProfile.Of(determined);
        Photos = ItemPhoto.Of(determined, photos);
    }

    public DeterminedItem Determined { get; }

    /// <summary>Counted from 1.</summary>
    public int Position { get; }

    public IReadOnlyList<CaseStep> Case { get; }

    public DiameterProfile? Diameters { get; }

    public IReadOnlyList<ItemPhoto> Photos { get; }

    public Item Item => Determined.Item;

    public string Id => Printed.Text(Item.Id);

    /// <summary>All that is recorded of the item and bears on its outcome, besides the answers; what is empty and never asked for is left
    /// out.</summary>
    public IReadOnlyList<(string Label, string Value)> Particulars =>
        [
            (ItemWords.Category, Printed.Text(Phrases.Category(Determined.Category, Item.Category))),
            (ItemWords.Maker, Printed.Text(Item.Maker)),
            (ItemWords.Model, Printed.Text(Item.Model)),
            (ItemWords.PartNumber, Printed.Text(Item.PartNumber)),
            (ItemWords.Serial, Printed.Text(Item.Serial)),
            (ItemWords.OwnersMark, Printed.Text(Item.OwnersMark)),
            (ItemWords.Manufactured, Printed.Day(Item.Manufactured)),
            (Words.Purchased, Printed.Day(Item.Purchased)),
            (ItemWords.FirstUsed, Item.NeverUsed is true ? ItemWords.NeverUsed : Printed.Day(Item.FirstUsed)),
            (Words.LastExamined, Printed.Day(Determined.LastExamined)),
            (ItemWords.SafeWorkingLoad, Printed.Load(Item.SafeWorkingLoad)),
            (ItemWords.MarkedStrength, Printed.Load(Item.MarkedStrength)),
            (ItemWords.Purpose, Phrases.Common.Purpose(Item.Purpose)),
            .. Where(ItemWords.Standards, string.Join(", ", Item.Standards)),
            .. Where(ItemWords.FittedTo, Item.FittedTo),
            .. Where(ItemWords.Parts, string.Join(", ", Determined.Parts)),
            .. Where(Words.Exposure, Exposure),
            .. Examined(),
            (ItemWords.MakersLimits, MakersDocuments.Of(Determined)),
            (ItemWords.EndOfService, Printed.Day(Determined.EndOfService)),
        ];

    private IEnumerable<(string Label, string Value)> Examined() =>
        Determined.Examination is not { } examination
            ? []
            :
            [
                (ItemWords.ExaminedOn, Printed.Day(Determined.ExaminedOn)),
                (Words.Examiner, Printed.Text(_visit.Person(examination.Examiner)?.Name ?? examination.Examiner)),
                (
                    Words.Law,
                    string.Join(", ", Determined.Regimes.Select(r => Phrases.Regime(r).ShortLaw).DefaultIfEmpty(Phrases.Common.NotRecorded))
                ),
            ];

    private static IEnumerable<(string Label, string Value)> Where(string label, string? value) =>
        string.IsNullOrWhiteSpace(value) ? [] : [(label, value)];

    private string Exposure =>
        Determined.Examination?.Exposure is { } e
            ? Printed.Join(", ", e.Use, e.Hardware, e.Ground, e.UserMassKg is { } m ? $"{Printed.Number(m)}\u00A0kg" : null)
            : "";
}

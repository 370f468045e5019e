using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Templates.EquipmentRecord.Wording;
using ExamDocs.Templates.Shared;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Items;
using ExamDocs.Templates.Shared.Wording.Regimes;

namespace ExamDocs.Templates.EquipmentRecord;

/// <summary>
/// Everything on record about one item, for its keeper. It states the outcome and certifies nothing, so it is printed in
/// spite of gaps and errors: a gap is printed as not recorded, errors are named at the top.
/// </summary>
public sealed class EquipmentRecordModel
{
    private static EquipmentRecordPhrases Words => EquipmentRecordPhrases.Current;

    private static ItemPhrases ItemWords => ItemPhrases.Current;

    private readonly IReadOnlyList<RecordedExamination> _examinations;

    /// <param name="identity">Of kind record.</param>
    /// <param name="visit">The visit that the item belongs to.</param>
    /// <param name="item">Any item of it, whatever its outcome.</param>
    public EquipmentRecordModel(DocumentIdentity identity, DeterminedVisit visit, DeterminedItem item)
    {
        (Identity, Determined, Item) = (identity, visit, item);
        Code = ItemCode.Of(CodeText.Of(identity, visit, item, Words.Title, Phrases.Common.Outcome(item.Outcome, item.Until)));
        Regime = Phrases.Regime(item.Regime);
        Assembly = RecordedAssembly.Of(visit, item);
        _examinations = [.. visit.Record.Examinations.Where(e => IsThis(e.Item)).Select(e => new RecordedExamination(visit, item, e))];
    }

    public DocumentIdentity Identity { get; }

    public DeterminedVisit Determined { get; }

    public DeterminedItem Item { get; }

    public ItemCode Code { get; }

    public RegimeWording Regime { get; }

    public Visit Visit => Determined.Record.Visit;

    public bool MayBeUsed => Item.Outcome is Outcome.Fit or Outcome.FitUntil;

    public IReadOnlyList<AssembledItem> Assembly { get; }

    /// <summary>Oldest first; those of an unknown day last.</summary>
    public IReadOnlyList<RecordedExamination> Examinations => [.. _examinations.OrderBy(e => e.On is null).ThenBy(e => e.On)];

    /// <summary>Codes of the errors in the record that concern the item.</summary>
    public IReadOnlyList<string> Errors =>
        [.. Item.Findings.Where(f => f.Severity is Severity.Error).Select(f => f.Code).Distinct(StringComparer.Ordinal)];

    public string Next => MayBeUsed ? Printed.Day(Item.NextExaminationBy) : ItemWords.NoNext;

    public string NotAfter =>
        Item.Outcome switch
        {
            Outcome.FitUntil => Printed.Day(Item.Until),
            Outcome.Fit => ItemWords.NoNotAfter,
            _ => ItemWords.NotAfterAnyDay,
        };

    public string FirstUsed => Item.Item.NeverUsed is true ? ItemWords.NeverUsed : Printed.Day(Item.Item.FirstUsed);

    public string Declaration =>
        Item.Item.Declaration is { } declared ? Words.DeclarationLine(declared.Reference, declared.On) : Phrases.Common.NotRecorded;

    public string LimitsDocument => MakersDocuments.Of(Item);

    /// <summary>Empty where no maker's limits are recorded.</summary>
    public IReadOnlyList<(string Label, string Value)> Limits => Item.Limits is { } limits ? RecordedLimits.Of(limits) : [];

    /// <summary>Each kind of event with its sentences, oldest first.</summary>
    public IReadOnlyList<(string Heading, IReadOnlyList<string> Lines)> Events
    {
        get
        {
            var record = Determined.Record;
            return
            [
                (
                    Words.Renewals,
                    [
                        .. record
                            .Renewals.Where(r => IsThis(r.Item) || IsThis(r.FittedPart) || IsThis(r.RemovedPart))
                            .OrderBy(r => r.DoneOn)
                            .Select(r => RenewalLine.Of(r, Determined)),
                    ]
                ),
                (
                    Words.Remedies,
                    [
                        .. record
                            .Remedies.Where(r => IsThis(r.Item))
                            .OrderBy(r => r.DoneOn)
                            .Select(r => Words.Remedy(r.DoneOn, r.What, RenewalLine.Name(r.DoneBy, Determined), r.Evidence)),
                    ]
                ),
                (
                    Words.Releases,
                    [
                        .. Releases()
                            .OrderBy(r => r.Release.On)
                            .Select(r =>
                                Words.Release(
                                    r.Release.On,
                                    r.By,
                                    r.Release.Document,
                                    r.Release.WithdrawnOn,
                                    r.Release.Because is ReleaseReason.RecordedInError,
                                    r.Release.Grounds
                                )
                            )
                            .Distinct(StringComparer.Ordinal),
                    ]
                ),
                (
                    Words.Disposals,
                    [
                        .. record
                            .Disposals.Where(d => IsThis(d.Item))
                            .OrderBy(d => d.On)
                            .Select(d => Words.Disposal(d.On, Phrases.Common.Disposal(d.Action), RenewalLine.Name(d.By, Determined))),
                    ]
                ),
            ];
        }
    }

    /// <summary>Of this record and of all others: what was once released stays on the item's record.</summary>
    private IEnumerable<(Release Release, string By)> Releases() =>
        Determined
            .Record.Releases.Where(r => IsThis(r.Item))
            .Select(r => (r, RenewalLine.Name(r.By, Determined)))
            .Concat(Determined.History.Releases.Where(r => IsThis(r.ItemId)).Select(r => (r.Release, r.By ?? Phrases.Common.NotRecorded)));

    private bool IsThis(string? id) => id is not null && string.Equals(id, Item.Item.Id, StringComparison.Ordinal);
}

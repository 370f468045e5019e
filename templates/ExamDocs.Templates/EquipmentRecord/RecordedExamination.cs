using ExamDocs.Core.Determination;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared;
using ExamDocs.Templates.Wording;
using NodaTime;

namespace ExamDocs.Templates.EquipmentRecord;

/// <summary>One examination of the item's history, as it is printed.</summary>
public sealed class RecordedExamination
{
    private readonly DeterminedVisit _visit;
    private readonly DeterminedItem _item;
    private readonly Examination _examination;

    internal RecordedExamination(DeterminedVisit visit, DeterminedItem item, Examination examination) =>
        (_visit, _item, _examination) = (visit, item, examination);

    /// <summary>The day examined; null where it is not known or cannot be read.</summary>
    public LocalDate? On => _examination.DayAt(_visit.Record.Visit);

    /// <summary>True for the one that decided the outcome.</summary>
    public bool Decided => ReferenceEquals(_examination, _item.Examination);

    public string Basis =>
        _examination.Basis is { } basis
            ? Phrases.Regime(_visit.Rules.FindRegime(_examination.Regime ?? _visit.Record.Visit.Regime)).Bases[basis]
            : Phrases.Common.NotRecorded;

    public string Examiner => RenewalLine.Name(_examination.Examiner, _visit);

    /// <summary>The outcome as determined, of the examination that decided; of any other the conclusion as then recorded.</summary>
    public string Result =>
        Decided ? Phrases.Common.Outcome(_item.Outcome, _item.Until) : Phrases.EquipmentRecord.Conclusion(_examination.Conclusion);

    /// <summary>Defects, what was measured and tested, and the event that called for it; at least one sentence.</summary>
    public IReadOnlyList<string> Found
    {
        get
        {
            var defects = DefectEntry
                .Of(_examination)
                .Select(Defect)
                .DefaultIfEmpty(Printed.Sentence(Phrases.EquipmentRecord.NothingFound) + ".");
            var tests = _examination.Tests.Select(t => Phrases.EquipmentRecord.Test(t.Description, t.Result));
            return [.. Event, .. defects, .. Diameters, .. tests];
        }
    }

    private IEnumerable<string> Event => _examination.Event is { } e ? [Phrases.EquipmentRecord.Event(e.What, e.On)] : [];

    private IEnumerable<string> Diameters
    {
        get
        {
            if (_examination.Diameters.Count == 0)
                return [];
            var means = _examination.Diameters.Select(StationMean.Of).OfType<StationMean>().Select(m => m.Rounded).ToList();
            return means.Count == 0
                ? [Phrases.EquipmentRecord.UnreadableDiameters]
                : [Phrases.EquipmentRecord.Diameters(means.Count, Printed.Millimetres(means.Min()), Printed.Millimetres(means.Max()))];
        }
    }

    private static string Defect(DefectEntry defect) =>
        Phrases.EquipmentRecord.Defect(
            defect.Part,
            defect.Description,
            defect.IsNow ? Phrases.EquipmentRecord.DangerNow : Phrases.EquipmentRecord.DangerLater(defect.BecomesDangerOn),
            defect.Remedy
        );
}

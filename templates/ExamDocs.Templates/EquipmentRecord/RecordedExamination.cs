using ExamDocs.Core.Determination;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using ExamDocs.Templates.EquipmentRecord.Wording;
using ExamDocs.Templates.Shared;
using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.EquipmentRecord;

/// <summary>One examination of the item's history, as it is printed.</summary>
public sealed class RecordedExamination
{
    private static EquipmentRecordPhrases Words => EquipmentRecordPhrases.Current;

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
        Phrases
            .Regime(_visit.Rules.FindRegime(_examination.Regime ?? _visit.Record.Visit.Regime))
            .BasisOf(_examination.Basis, Decided ? _item.WasDueBy : null, !Decided || _item.LastExamined is not null);

    public string Examiner => RenewalLine.Name(_examination.Examiner, _visit);

    /// <summary>The outcome, for the examination that decided it; for any other, the conclusion recorded then.</summary>
    public string Result => Decided ? Phrases.Common.Outcome(_item.Outcome, _item.Until) : Words.Conclusion(_examination.Conclusion);

    /// <summary>The day by which the next one is due: as decided or, of an earlier one, as recorded; null where there is none.</summary>
    public LocalDate? Next => Decided ? _item.NextExaminationBy : _examination.NextBy;

    /// <summary>Defects, what was measured and tested, and the event that called for it; at least one sentence.</summary>
    public IReadOnlyList<string> Found
    {
        get
        {
            var defects = DefectEntry.Of(_examination).Select(Defect).DefaultIfEmpty(Printed.Sentence(Words.NothingFound) + ".");
            var tests = _examination.Tests.Select(t => Words.Test(t.Description, t.Result));
            return [.. Event, .. defects, .. Diameters, .. tests];
        }
    }

    private IEnumerable<string> Event => _examination.Event is { } e ? [Words.Event(e.What, e.On)] : [];

    private IEnumerable<string> Diameters
    {
        get
        {
            if (_examination.Diameters.Count == 0)
                return [];
            var means = _examination.Diameters.Select(StationMean.Of).OfType<StationMean>().Select(m => m.Rounded).ToList();
            return means.Count == 0
                ? [Words.UnreadableDiameters]
                : [Words.Diameters(means.Count, Printed.Millimetres(means.Min()), Printed.Millimetres(means.Max()))];
        }
    }

    private static string Defect(DefectEntry defect) =>
        Words.Defect(
            defect.Part,
            defect.Description,
            defect.IsNow ? Words.DangerNow : Words.DangerLater(defect.BecomesDangerOn),
            defect.Remedy
        );
}

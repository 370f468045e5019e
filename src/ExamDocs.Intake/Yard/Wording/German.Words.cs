using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;

namespace ExamDocs.Intake.Yard.Wording;

/// <content>Words to choose from.</content>
internal sealed partial class German
{
    public override string StateWord(ObservedState state) =>
        state switch
        {
            ObservedState.Clear => "Ohne Befund",
            ObservedState.Noted => "Vermerkt",
            ObservedState.Doubt => "Zweifel",
            ObservedState.Defect => "Mangel",
            ObservedState.NoSign => "Niemand zu befragen; kein Anzeichen gefunden",
            ObservedState.NotExamined => "Nicht geprüft",
            _ => "Entfällt",
        };

    public override string BasisWord(Basis basis) =>
        basis switch
        {
            Core.Records.Basis.SixMonth => "sechsmonatlich",
            Core.Records.Basis.TwelveMonth => "zwölfmonatlich",
            Core.Records.Basis.Scheme => "Prüfplan",
            Core.Records.Basis.Exceptional => "außergewöhnliches Ereignis",
            Core.Records.Basis.FirstUse => "vor dem ersten Gebrauch",
            _ => "nach dem Einbau",
        };

    public override string PurposeWord(Purpose purpose) =>
        purpose switch
        {
            Core.Records.Purpose.LiftsPersons => "hebt Personen",
            Core.Records.Purpose.Accessory => "Lastaufnahmemittel",
            Core.Records.Purpose.Other => "anderes Heben",
            _ => "nur Auffangen von Stürzen",
        };

    public override string StatusWord(ItemStatus status) =>
        status switch
        {
            ItemStatus.InUse => "in Gebrauch",
            ItemStatus.Stored => "gelagert",
            ItemStatus.NotPresented => "nicht vorgelegt",
            ItemStatus.Lost => "verloren",
            _ => "vernichtet",
        };

    public override string MeansWord(Means means) =>
        means switch
        {
            Means.Look => "ansehen",
            Means.Feel => "befühlen",
            Means.Measure => "messen",
            Means.Operate => "betätigen",
            Means.Ask => "fragen",
            _ => "lesen",
        };
}

using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Common;
using NodaTime;

namespace ExamDocs.Templates.CheckSheet.Wording;

/// <inheritdoc />
internal sealed class German : CheckSheetPhrases
{
    public override string Title => "Prüfbogen";
    public override string TitleOfSeveral => "Prüfbögen";

    public override string Lead =>
        "Um eine Prüfung von Hand aufzuschreiben. Er ist kein Bericht und sagt nichts über den Zustand des Gegenstands, "
        + "bevor er ausgefüllt ist.";

    public override string Withdrawn => "Aus dem Gebrauch genommen: nicht benutzen";
    public override string Held => "Ungeklärt: nicht benutzen";
    public override string WithdrawnSince => "Aus dem Gebrauch genommen bei der Prüfung vom";
    public override string HeldSince => "Stand der Aufzeichnung nach der Prüfung vom";

    public override string ReleaseByPerson =>
        "Er bleibt aus dem Gebrauch, was immer dieser Bogen sagt, bis eine sachkundige Person ihn schriftlich mit Begründung freigibt.";

    public override string NeverRelease => "Er kommt nie wieder in Gebrauch, außer eine Freigabe zeigt, dass falsch aufgezeichnet wurde.";

    public override string ReleaseHold =>
        "Er darf erst benutzt werden, wenn eine sachkundige Person ihn geprüft und schriftlich freigegeben hat.";

    public override string LastOutcome => "Ergebnis vom letzten Mal";
    public override string LastExamined => "Zuletzt geprüft";
    public override string LastExaminer => "Geprüft von";
    public override string NextBy => "Nächste bis";
    public override string NotAfter => "Nicht mehr benutzen nach dem";
    public override string Status => "Verbleib";
    public override string Criteria => "Was geprüft wird";

    public override string HowToTick =>
        "Ein Kästchen in jeder Zeile. Eine offene Zeile ist keine Antwort und lässt den Gegenstand ungeklärt. "
        + "Vermerkt, Zweifel und Mangel brauchen eine Bemerkung. Im Zweifel Zweifel ankreuzen: das nimmt den Gegenstand "
        + "aus dem Gebrauch.";

    public override string NotInCatalogue => "Der Katalog hat für diese Art keine Kriterien. In jede Zeile schreiben, was geprüft wurde.";

    public override string LastTime => "Letztes Mal:";
    public override string NoAnswer => "keine Antwort aufgezeichnet";
    public override string Note => "Bemerkung";
    public override string Optional => "keine Pflichtangabe";
    public override string Examined => "Was geprüft wurde";
    public override string Diameters => "Durchmesser entlang des Seils";

    public override string HowToMeasure =>
        "Zwei Messwerte an jeder Stelle, im rechten Winkel zueinander (EN 892:2012 5.3.1, nicht amtliche Abschrift), "
        + "ohne das Seil zu quetschen. Lage in Millimetern vom selben Ende wie beim letzten Mal.";

    public override string Station => "Stelle";
    public override string Position => "Lage, mm";
    public override string FirstReading => "Messwert, mm";
    public override string SecondReading => "Rechtwinklig dazu, mm";
    public override string LastMean => "Mittel beim letzten Mal, mm";
    public override string ReferenceEnd => "Lage gezählt von diesem Ende:";

    public override string NoNominal =>
        "Kein Nenndurchmesser des Herstellers ist aufgezeichnet: die Messwerte werden miteinander verglichen.";

    public override string OpenDefects => "Beim letzten Mal gefunden: noch da oder behoben?";
    public override string StillThere => "noch da";
    public override string PutRight => "behoben";
    public override string PutRightBy => "Behoben von, am, Beleg";
    public override string Defects => "Mängel, die eine Gefahr sind oder werden könnten";
    public override string MoreDefects => "Mehr als zwei: auf einem zweiten Bogen weiterschreiben.";
    public override string Part => "Teil";
    public override string What => "Beschreibung des Mangels";
    public override string Danger => "Gefahr";
    public override string DangerNow => "jetzt";
    public override string DangerLater => "später, bis (Datum)";
    public override string Imminent => "schwere Verletzung droht unmittelbar";
    public override string Remedy => "Nötige Instandsetzung, Erneuerung oder Änderung";
    public override string Told => "Unterrichtet wurde, wie, am (Datum)";
    public override string Tests => "Erprobungen und ihre Ergebnisse";
    public override string Conclusion => "Beurteilung";
    public override string Basis => "Anlass der Prüfung";
    public override string Fit => "weiter benutzbar";
    public override string Withdraw => "aussondern";
    public override string FitMeans => "darf in Gebrauch bleiben";
    public override string WithdrawMeans => "ab jetzt außer Gebrauch, gekennzeichnet und getrennt";
    public override string ExaminerName => "Name";
    public override string ExaminedOn => "Datum der Prüfung";
    public override string NextExamination => "Nächste Prüfung bis, wenn früher";
    public override string Recorded => "Aufgezeichnet";

    public override IReadOnlyList<string> Cautions { get; } =
    [
        "Was beim letzten Mal gefunden wurde, steht hier, damit nichts übersehen wird. Jede Antwort geht vom Gegenstand "
            + "aus, nicht vom letzten Bogen.",
        "Was hier steht, zählt erst, wenn es in die Aufzeichnung des Prüfauftrags eingetragen und geprüft ist.",
    ];

    public override string RecordHasErrors(IReadOnlyList<string> codes) =>
        $"Die Aufzeichnung, aus der dieser Bogen vorausgefüllt ist, hat Fehler ({string.Join(", ", codes)}). Alles hier "
        + "Gedruckte am Gegenstand selbst nachsehen.";

    public override string Of(string item, string heading) => $"{item}: {heading}";

    public override string AsTyped(string? word) => $"„{word}“, was keine Antwort ist";

    public override string Class(CriterionClass criteria) =>
        criteria switch
        {
            CriterionClass.Decisive => "Entscheidend: ein Mangel oder Zweifel beendet den Gebrauch",
            CriterionClass.Judged => "Abzuwägen: mit dem Übrigen gewogen",
            _ => "Hinweisend: übliche Abnutzung, zu vermerken",
        };

    public override string Box(ObservedState state) =>
        state switch
        {
            ObservedState.Clear => "o. B.",
            ObservedState.NoSign => "kein Anz.",
            ObservedState.NotApplicable => "entfällt",
            ObservedState.NotExamined => "n. gepr.",
            _ => SentenceBook.German.Words.State(state),
        };

    public override IReadOnlyList<string> Boxes { get; } =
    ["„o. B.“: ohne Befund.", "„kein Anz.“: niemand zu befragen, und kein Anzeichen gefunden.", "„n. gepr.“: nicht geprüft."];

    public override string Means(Means means) =>
        means switch
        {
            Core.Criteria.Means.Look => "ansehen",
            Core.Criteria.Means.Feel => "abtasten",
            Core.Criteria.Means.Measure => "messen",
            Core.Criteria.Means.Operate => "betätigen",
            Core.Criteria.Means.Ask => "fragen",
            _ => "lesen",
        };

    public override string BasisBox(Basis basis) =>
        basis switch
        {
            Core.Records.Basis.SixMonth => "sechs Monate",
            Core.Records.Basis.TwelveMonth => "zwölf Monate",
            Core.Records.Basis.Scheme => "Prüfplan",
            Core.Records.Basis.Exceptional => "Ereignis",
            Core.Records.Basis.FirstUse => "erster Gebrauch",
            _ => "Einbau",
        };

    public override string Band(string nominal, string tolerance, string low, string high, string source) =>
        $"Nenndurchmesser des Herstellers {nominal}\u00A0mm mit einer Toleranz von {tolerance}\u00A0% nach jeder Seite: {low} bis "
        + $"einschließlich {high}\u00A0mm. Quelle: {source}.";

    public override string NominalOnly(string nominal, string source) =>
        $"Nenndurchmesser des Herstellers {nominal}\u00A0mm; keine Toleranz aufgezeichnet. Quelle: {source}.";

    public override string Released(LocalDate? on, string by, string? grounds) =>
        $"Freigabe vom {Printed.Day(on)} durch {by}: {Printed.Text(grounds)}";

    public override string Disposed(DisposalAction? action, LocalDate? on, string by) =>
        $"{CommonPhrases.Languages.German.Disposal(action)} am {Printed.Day(on)} von {by}";
}

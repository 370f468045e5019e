using ExamDocs.Core.Records;

namespace ExamDocs.Workbench.Pages;

/// <content>German, for the fields of a record.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class German
    {
        private static readonly (string Value, string Label)[] YesNo = [("yes", "ja"), ("no", "nein")];

        protected override string AnswerWord => "Antwort";
        protected override string NoteWord => "Anmerkung";

        public override IReadOnlyList<(string Value, string Label)>? Choices(string name) =>
            name switch
            {
                "visit/basis" =>
                [
                    ("six-month", "sechs Monate nach der letzten"),
                    ("twelve-month", "zwölf Monate nach der letzten"),
                    ("scheme", "nach einem Prüfplan"),
                    ("exceptional", "nach einem außergewöhnlichen Ereignis"),
                    ("first-use", "vor dem ersten Gebrauch"),
                    ("installation", "nach dem Einbau"),
                ],
                "examiner/selfEmployed" or "item/neverUsed" or "item/safeWorkingLoad/notMarked" or "defect/imminentRisk" => YesNo,
                "defect/danger" => [("now", "ist jetzt eine Gefahr"), ("later", "könnte eine Gefahr werden")],
                "item/safeWorkingLoad/unit" or "item/markedStrength/unit" => [.. Core.Records.Words.LoadUnits.Select(u => (u, u))],
                "item/purpose" =>
                [
                    ("lifts-persons", "hebt oder hält Personen"),
                    ("accessory", "Lastaufnahmemittel"),
                    ("other", "anderes Heben"),
                    ("fall-arrest-only", "nur Auffangen von Stürzen"),
                ],
                "item/status" =>
                [
                    ("in-use", "in Gebrauch"),
                    ("stored", "gelagert"),
                    ("not-presented", "nicht vorgelegt"),
                    ("lost", "verloren"),
                    ("destroyed", "vernichtet"),
                ],
                _ => null,
            };

        protected override string OfVisit(string name) =>
            name switch
            {
                "visit/reference" => "Zeichen des Auftrags",
                "visit/employer/name" => "Arbeitgeber",
                "visit/employer/address" => "Anschrift des Arbeitgebers",
                "visit/premises/name" => "Betriebsstätte",
                "visit/premises/address" => "Anschrift der Betriebsstätte",
                "visit/examinedOn" => "Geprüft am",
                "visit/reportedOn" => "Datum des Berichts",
                "visit/regime" => "Regelwerk",
                "visit/basis" => "Anlass der Prüfung",
                "visit/hiredFrom/name" => "Gemietet von (wo das so ist)",
                "visit/hiredFrom/address" => "Anschrift dieses Eigentümers",
                "visit/enforcingAuthority/name" => "Aufsichtsbehörde",
                _ => "Anschrift der Behörde",
            };

        protected override string OfExaminer(string name) =>
            name switch
            {
                "examiner/name" => "Prüfer",
                "examiner/address" => "Anschrift des Prüfers",
                "examiner/qualifications" => "Qualifikationen des Prüfers",
                "examiner/selfEmployed" => "Ist der Prüfer selbständig?",
                "examiner/employer/name" => "Arbeitgeber des Prüfers",
                _ => "Anschrift des Arbeitgebers des Prüfers",
            };

        protected override string OfItem(string member) =>
            member switch
            {
                "id" => "Kennung",
                "category" => "Kategorie",
                "description" => "Bezeichnung",
                "maker" => "Hersteller",
                "model" => "Modell",
                "partNumber" => "Teilenummer",
                "serial" => "Seriennummer",
                "ownersMark" => "Zeichen des Eigentümers",
                "manufactured" => "Hergestellt (Tag, Monat oder Jahr)",
                "purchased" => "Gekauft",
                "firstUsed" => "Erster Gebrauch",
                "neverUsed" => "Noch nie benutzt",
                "obsoleteOn" => "Ablaufdatum (wie aufgedruckt)",
                "safeWorkingLoad/value" => "Tragfähigkeit",
                "safeWorkingLoad/unit" => "Einheit der Tragfähigkeit",
                "safeWorkingLoad/notMarked" => "Tragfähigkeit nicht angegeben",
                "safeWorkingLoad/basis" => "Woher die Tragfähigkeit stammt",
                "markedStrength/value" => "Angegebene Festigkeit",
                "markedStrength/unit" => "Einheit der Festigkeit",
                "standards" => "Angegebene Normen",
                "fittedTo" => "Angebracht an",
                "lastExamined" => "Zuletzt geprüft",
                "purpose" => "Zweck",
                "status" => "Zustand",
                "declaration/reference" => "Konformitätserklärung",
                "declaration/on" => "Datum der Erklärung",
                "transferEvidence" => "Nachweis des früheren Besitzers über die letzte Prüfung",
                "formerly" => "Frühere Kennung",
                _ => member,
            };

        protected override string OfExamination(string member) =>
            member switch
            {
                "conclusion" => "Ihr Ergebnis",
                "nextBy" => "Wieder prüfen bis, wenn früher als nach der Regel",
                "exposure/hardware" => "Metallteil, auf dem es läuft",
                "exposure/ground" => "Untergrund, auf dem es benutzt wird",
                "exposure/userMassKg" => "Masse des Benutzers, kg",
                _ => "Gebrauch",
            };

        protected override string OfDefect(string member) =>
            member switch
            {
                "part" => "Teil",
                "description" => "Beschreibung des Mangels",
                "danger" => "Gefahr",
                "becomesDangerOn" => "Könnte eine Gefahr werden am",
                "remedy" => "Nötige Abhilfe",
                "imminentRisk" => "Bestehende oder unmittelbar drohende Gefahr schwerer Verletzung",
                "notified/whom" => "Wem Sie es gesagt haben",
                "notified/how" => "Wie",
                _ => "Wann Sie es gesagt haben",
            };
    }
}

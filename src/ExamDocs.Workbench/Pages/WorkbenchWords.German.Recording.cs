using ExamDocs.Core.Records;
using ExamDocs.Intake.Drafting;
using ExamDocs.UseCases.Recording;
using NodaTime;

namespace ExamDocs.Workbench.Pages;

/// <content>German, for the pages that record a visit.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class German
    {
        public override string StartAVisit => "Einen Prüfauftrag hier aufzeichnen";
        public override string StartHow =>
            "Mit den Gegenständen, die fällig werden, mit dem, was von ihnen bekannt ist, und dem Befund vom letzten Mal; oder ohne "
            + "Gegenstände, um einen nach dem anderen hinzuzufügen.";
        public override string DueBy => "Fällig bis";
        public override string DueByHow => "Der letzte Tag; leer für jeden Gegenstand des Registers.";
        public override string OfOneEmployer => "Nur wo das Register Gegenstände mehrerer hat.";
        public override string StartFromRegister => "Mit dem Fälligen beginnen";
        public override string StartEmpty => "Ohne Gegenstände beginnen";

        public override string NotADay(string typed) => $"„{typed}“ ist kein Tag. Tippen Sie ihn als 2026-05-11.";

        public override string NotStarted(string why) => $"Es wurde kein Prüfauftrag begonnen: {why}.";

        public override string RecordedHere => "hier aufgezeichnet";
        public override string VisitRecordedHere => "Hier aufgezeichneter Prüfauftrag";
        public override string RecordedOnScreen =>
            "Dieser Auftrag wird auf dem Bildschirm aufgezeichnet: eine Datei kann nicht an die Stelle der Antworten treten. "
            + "Verbessern Sie "
            + "ihn auf seinen Seiten, oder bringen Sie die Datei auf dem Schreibtisch als eigenen Auftrag herein.";
        public override string GoOnRecording => "Weiter aufzeichnen";

        public override string VisitParticulars => "Auftrag: für wen, wo, wann";
        public override string NextParticulars => "Als Nächstes: für wen, wo und wann. Was Sie nicht wissen, bleibt leer.";
        public override string NextAddItem => "Als Nächstes: den ersten Gegenstand hinzufügen.";

        public override string NextRecord(int left) =>
            Text($"Als Nächstes: {left} {(left == 1 ? "Gegenstand" : "Gegenstände")} aufzeichnen.");

        public override string RecordNow(string item) => $"{item} aufzeichnen";

        public override string OutcomesAndIssue => "Ergebnisse und Ausstellen";
        public override string Items => "Gegenstände";
        public override string AllItems => "Alle Gegenstände";
        public override string AddItem => "Gegenstand hinzufügen";
        public override string AddItemNow => "Hinzufügen und aufzeichnen";
        public override string ChooseACategory => "Wählen Sie eine Kategorie: sie sagt, was geprüft wird.";
        public override string ToDo => "offen";
        public override string NotHere => "nicht geprüft: nicht da";

        public override string LeftToAnswer(int criteria, bool isConcluded) =>
            criteria > 0 ? Text($"noch {criteria} zu beantworten")
            : isConcluded ? "eine Kategorie wählen"
            : "Ergebnis fehlt";

        public override string ItemParticulars => "Was es ist";
        public override string Circumstances => "Frühere nächste Prüfung, wie es benutzt wird";
        public override string Optional => "freiwillig";

        public override string LastTime(LocalDate day) => $"Letztes Mal, {Day(day)}:";

        public override string StateIs(ObservedState state) =>
            state switch
            {
                ObservedState.Clear => "ohne Befund",
                ObservedState.Noted => "vermerkt",
                ObservedState.Doubt => "Zweifel",
                ObservedState.Defect => "Mangel",
                ObservedState.NotApplicable => "entfällt",
                ObservedState.NoSign => "niemand zu befragen, kein Anzeichen",
                _ => "nicht geprüft",
            };

        public override string TakeBack => "Antwort zurücknehmen";
        public override string NoteField => "Anmerkung";
        public override string DefectHow => "Der Mangel, wie ihn der Bericht nennt.";
        public override string Diameters => "Durchmesser";
        public override string DiametersHow =>
            "Tippen Sie die Messwerte jeder Stelle mit einem Leerzeichen dazwischen, in Millimetern: 11,1 11,0";

        public override string AtPlace(string mm) => $"Bei {mm} mm";

        public override string FurtherPlaces => "Weitere Stellen, mm vom Bezugsende";
        public override string AddPlaces => "Stellen hinzufügen";
        public override string Conclusion => "Ihr Ergebnis";

        public override string ConclusionIs(Conclusion conclusion) =>
            conclusion is Core.Records.Conclusion.Fit ? "weiter benutzbar" : "aussondern";

        public override string AnsweredOf(int answered, int all) => Text($"{answered} von {all} beantwortet");

        public override string Save => "Speichern";
        public override string SaveAndNext => "Speichern und nächster Gegenstand";
        public override string SaveAndList => "Speichern und alle Gegenstände zeigen";
        public override string Saving => "wird gespeichert";
        public override string Saved => "gespeichert";
        public override string SavingFailed =>
            "NICHT GESPEICHERT. Das Programm antwortet nicht; es wird weiter versucht, solange diese Seite offen ist.";

        public override string NotSavedIs(NotSaved one)
        {
            ArgumentNullException.ThrowIfNull(one);
            var stands = one.Stands.Length > 0 ? $"„{one.Stands}“" : "nichts";
            var typed = one.Field.Now.Length > 0 ? $"„{one.Field.Now}“" : "nichts";
            return one.Because is NotSavedBecause.ChangedMeanwhile
                ? $"{Member(one.Field.Name)}: eine andere Seite hat dort inzwischen {stands} gespeichert. Ihre Eingabe, {typed}, wurde "
                    + "nicht gespeichert, alles andere schon. Laden Sie diese Seite neu und wählen Sie."
                : $"{Member(one.Field.Name)}: {typed} wurde nicht gespeichert, es bleibt {stands}. {Because(one.Because)}";
        }

        public override string Because(NotSavedBecause because) =>
            because switch
            {
                NotSavedBecause.IdIsNotItsOwn => "Geben Sie dem Gegenstand eine Kennung, die kein anderer Gegenstand dieses Auftrags hat.",
                NotSavedBecause.IdIsOnRecord =>
                    "Was von früher bekannt ist, ist unter dieser Kennung bekannt. Fügen Sie einen Gegenstand mit der neuen Kennung hinzu "
                        + "und nennen Sie diese als seine frühere.",
                _ => "Eine andere Seite war schneller.",
            };

        public override string LoadAgain => "Seite neu laden";
    }
}

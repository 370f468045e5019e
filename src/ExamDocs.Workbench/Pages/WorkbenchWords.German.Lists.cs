using ExamDocs.Intake.OwnList.Words;

namespace ExamDocs.Workbench.Pages;

/// <content>German, for the page that takes a list of the user's own.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class German
    {
        public override string TakeAsList => "Als Ihre eigene Geräteliste nehmen: die Spalten zuordnen";
        public override string ListHow =>
            "Dies wird als Ihre eigene Geräteliste genommen. Sagen Sie, was die Spalten und Wörter bedeuten; Vorschläge stehen schon "
            + "in den Feldern. Nichts in der Liste entscheidet etwas: ein früheres „bestanden“ bleibt als Bemerkung, und was die Liste "
            + "als außer Gebrauch führt, kommt ausgesondert herein.";
        public override string ListFormIncomplete =>
            "Was gesendet wurde, ist nicht vollständig; nichts davon wurde behalten. Wählen Sie noch einmal.";
        public override string NextNoItems =>
            "Keine Zeile der Liste handelt von einem Gegenstand. Sehen Sie nach, ob die Spalten sind, was Sie sagen.";
        public override string NextLookAtResult =>
            "Als Nächstes: unten ansehen, was herauskommt, dann den Auftrag aufzeichnen oder die Arbeitsmappe herunterladen.";
        public override string Columns => "Spalten";
        public override string ColumnHead => "Spalte";
        public override string HoldsHead => "Enthält zum Beispiel";
        public override string SeemsHead => "Ist wohl";
        public override string TakeAsHead => "Nehmen als";
        public override string ChooseOne => "wählen";
        public override string Meanings => "Was die Wörter bedeuten";
        public override string DatesQuestion => "In welcher Reihenfolge sind die Daten getippt?";
        public override string MakersQuestion => "Hersteller und Modell stehen in einer Spalte";
        public override string SplitMakers => "nach den Herstellern trennen, die die Liste zeigt";
        public override string TakeWhole => "jeden Wert ganz als Modell nehmen";
        public override string AsOf => "Außer Gebrauch seit, wo die Liste keinen Tag nennt";
        public override string AsOfHow => "Ihr Prüfauftrag muss an einem späteren Tag sein.";
        public override string KindsOfKit => "Arten von Geräten";
        public override string WordHead => "Wort";
        public override string UnknownKind => "nicht bekannt: bleibt, wie es in der Liste steht";
        public override string OutOfUseHeading => "In Gebrauch oder außer Gebrauch";
        public override string OutOfUseHow =>
            "Ein unbekanntes Wort zählt gegen den Gegenstand, bis Sie etwas anderes sagen: er kommt ausgesondert herein und ist "
            + "freizugeben.";
        public override string NotSettledUse => "nicht bekannt: zählt als außer Gebrauch";
        public override string TakeAnswers => "Antworten behalten und zeigen, was herauskommt";
        public override string WhatComesOut => "Was herauskommt";
        public override string FirstSettle => "Noch nichts: wählen Sie zuerst, was oben markiert ist.";
        public override string NothingIsExamined => "Nichts zählt als geprüft: jeder Gegenstand ist noch zu prüfen.";
        public override string ComesInAs => "Kommt herein als";
        public override string ToExamine => "zu prüfen";
        public override string ToKnow => "Gut zu wissen";
        public override string NotTaken => "Nicht genommene Zeilen, und warum";
        public override string RecordList => "Den Prüfauftrag hier aufzeichnen";
        public override string DownloadWorkbook => "Die Arbeitsmappe herunterladen";
        public override string DownloadMap => "Diese Antworten herunterladen, um sie mit --map zu benutzen";
        public override string ListIsOnlyRead => "Ihre Liste wird nur gelesen; Auftrag oder Arbeitsmappe werden neu gemacht.";

        public override string ListCalled(string name) => $"Ihre eigene Liste: {name}";

        public override string NotADayBefore(string typed) => $"„{typed}“ ist kein Tag vor heute. Alle anderen Antworten wurden behalten.";

        public override string NextSettle(int number) => Text($"Als Nächstes: wählen, was markiert ist ({number}).");

        public override string TakeColumnAs(string heading) => $"Spalte {heading} nehmen als";

        public override string TakeWordAs(string word) => $"{word} nehmen als";

        public override string ColourCalled(string colour) => $"Zeilen in eigener Farbe ({colour})";

        public override string SurenessIs(Sureness sure) =>
            sure switch
            {
                Sureness.Yes => "sicher",
                Sureness.Likely => "wahrscheinlich",
                _ => "geraten",
            };

        public override string UseIs(UseMeaning meaning) =>
            meaning switch
            {
                UseMeaning.Remark => "nichts dagegen: eine Bemerkung",
                UseMeaning.Stored => "im Lager",
                UseMeaning.Lost => "verloren",
                UseMeaning.Withdrawn => "außer Gebrauch: kommt ausgesondert herein",
                _ => "vernichtet: kommt ausgesondert herein",
            };

        public override string ForExample(IEnumerable<string> samples) => $"Zum Beispiel: {string.Join("; ", samples)}";

        public override string RowsOf(int rows) => Text($"{rows} {(rows == 1 ? "Zeile" : "Zeilen")}");

        public override string NotShown(int rows) =>
            Text($"{rows} weitere sind nicht gezeigt; sie bleiben wie vorgeschlagen. Was davon unbekannt ist, zählt gegen seine ")
            + "Gegenstände.";

        public override string ComeInWithdrawn(int items) =>
            Text($"{items} {(items == 1 ? "kommt" : "kommen")} ausgesondert herein, bis eine sachkundige Person freigibt.");

        public override string RowNotTaken(string sheet, int row, string why) => Text($"{sheet}, Zeile {row}: {why}");
    }
}

namespace ExamDocs.Workbench.Pages;

/// <content>German, for all the kit on record, audit packs, and work that takes its time.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class German
    {
        public override string AllKit => "Ausrüstung";
        public override string AllKitHow =>
            "Diese Seiten betrachten alle aufgezeichnete Ausrüstung auf einmal, oder alles, was ein "
            + "Arbeitgeber hat. Keine von ihnen entscheidet über einen Gegenstand.";
        public override string Pack => "Prüfmappe";
        public override string PackHow =>
            "Was der Besitzer der Ausrüstung einem Auditor, einer Versicherung oder einer Behörde vorzulegen hat, in einer "
            + "Datei: jedes gültige Dokument, "
            + "wie es ausgestellt wurde, was fehlt, und wie es nachzuprüfen ist. Sie entscheidet nichts und ändert nichts.";
        public override string PackAsOf => "Stand";
        public override string PackAsOfHow => "Wie es am Ende dieses Tages stand, nach dem, was damals aufgezeichnet war.";
        public override string PackPremises => "Nur an diesem Ort";
        public override string PackItems => "Nur diese Gegenstände: Kennungen, eine je Zeile";
        public override string PackAllOfThem => "Leer gelassen: alle.";
        public override string PackEvidence => "Beizulegende Nachweise (PDF, JPEG, PNG)";
        public override string PackEvidenceHow =>
            "Der Dateiname beginnt mit Kennung oder Name eines Prüfenden oder mit Kennung oder Modell eines "
            + "Gegenstands: daran erkennt die Mappe, wovon die Datei handelt.";
        public override string PackLanguage => "Sprache der Mappe";
        public override string PackMake => "Die Mappe zusammenstellen";
        public override string PacksBefore => "Zusammengestellt, seit die Werkbank geöffnet ist";
        public override string PackStop => "Abbrechen";
        public override string PackNothingKept => "Von dieser Mappe wurde nichts behalten.";
        public override string PackGaps => "Was fehlt";
        public override string PackNoGaps => "Nichts von dem, wonach gesucht wird, fehlt. Das zeigt nicht, dass die Ausrüstung sicher ist.";
        public override string PackFiles => "Die Dateien";
        public override string PackSaveZip => "Die Mappe speichern (ZIP)";
        public override string PackSaveCopy => "Die Lesefassung speichern (PDF)";
        public override string PackKept =>
            "Die ZIP-Datei ist die, die übergeben wird. Beide Dateien bleiben hier, bis Sie "
            + "sie entfernen oder die Werkbank schließen.";
        public override string PackRemove => "Beide Dateien hier entfernen";
        public override string HowFar => "Wie weit es ist";
        public override string Waiting => "Wartet, bis andere Arbeit getan ist.";
        public override string StoppedAsAsked => "Angehalten, wie Sie es wollten.";

        public override string PackCounted(int items, int documents, int gaps) =>
            Text($"Gegenstände: {items}; Dokumente: {documents}; es fehlen: {gaps}");

        public override string PackMoreGaps(int more) => Text($"{more} weitere stehen in den Dateien.");

        public override string PackNext(int gaps) =>
            gaps == 0 ? "Fertig. Speichern Sie die Dateien." : "Fertig. Sehen Sie an, was fehlt, dann speichern Sie die Dateien.";
    }
}

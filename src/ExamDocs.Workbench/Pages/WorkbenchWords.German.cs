using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Verifying;

namespace ExamDocs.Workbench.Pages;

/// <content>German.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class German : WorkbenchWords
    {
        public override string Tag => "de";
        public override Terms Terms => Terms.German;

        public override string Desk => "Schreibtisch";
        public override string Find => "Suchen";
        public override string Returns => "Rücknahme";
        public override string Verify => "Dokumente prüfen";
        public override string WhoYouAre => "Wer Sie sind";
        public override string SkipToContent => "Zum Inhalt";
        public override string Caution =>
            "Die Anleitung des Herstellers, das örtliche Recht und das Urteil der sachkundigen Person gehen vor, was immer hier steht.";
        public override string Back => "Zurück";
        public override string Failed => "Das ging nicht";
        public override string ProgramFault =>
            "Das Programm hat einen Fehler gemacht. Dabei wurde nichts ausgestellt; was im Terminal steht, hilft, ihn zu beheben.";

        public override string BringIn => "Prüfauftrag hereinbringen";
        public override string BringInHow =>
            "Eine ausgefüllte Arbeitsmappe (.xlsx), eine Aufzeichnung (.json), was das Formular für den Hof gespeichert hat "
            + "(.json, .zip), oder "
            + "Tabellen (.csv); mehrere Dateien eines Auftrags zusammen.";
        public override string DropHere => "Dateien hier ablegen oder auswählen";
        public override string BringInNow => "Hereinbringen";
        public override string OnTheDesk => "Auf dem Schreibtisch";
        public override string NothingOnTheDesk =>
            "Noch nichts. Was Sie hereinbringen, liegt hier, bis es ausgestellt ist, und auch danach.";
        public override string NothingDropped => "Es kam keine Datei, oder sie ist leer. Wählen Sie eine und versuchen Sie es noch einmal.";

        public override string TooManyFiles(int most) =>
            Text($"Höchstens {most} Dateien auf einmal: bringen Sie die übrigen danach herein.");

        public override string NotOfAKind(string name) =>
            $"{name} kann nicht hereingebracht werden: der Name muss auf .xlsx, .json, .csv, .pdf oder .zip enden.";

        public override string Round(int number) => number == 1 ? "wie hereingebracht" : Text($"{number - 1}-mal verbessert");

        public override string RegisterAt(string place) => $"Register: {place}";

        public override string NextMend(int errors) =>
            Text($"Als Nächstes: {errors} Fehler verbessern, oder ausstellen, was schon ausgestellt werden darf.");

        public override string NextDecide => "Als Nächstes: die Ergebnisse ansehen, dann ausstellen.";
        public override string NextIssued => "Fertig. Die Dokumente stehen unten; drucken Sie die Etiketten und versenden Sie das Übrige.";
        public override string NextUnreadable => "Als Nächstes: eine Datei ablegen, die gelesen werden kann.";

        public override string Unreadable(string file, string why) => $"{file} kann nicht gelesen werden: {why}";

        public override string Mend => "Verbessern";
        public override string NothingToMend => "Es wurde nichts gefunden, was zu verbessern ist.";
        public override string TypeInstead => "Was zu tun ist";
        public override string Error => "Fehler";
        public override string Warning => "Warnung";
        public override string Note => "Hinweis";

        public override string Further(int number) => Text($"und {number} weitere gleiche");

        public override string Annotated => "Arbeitsmappe mit Anmerkungen herunterladen";
        public override string AnnotatedHow =>
            "Jeder Befund steht als Kommentar an seiner Zelle. Verbessern Sie dort und legen Sie die Datei unten ab.";
        public override string DropMended => "Die verbesserte Datei ablegen";
        public override string Decided => "Ergebnisse";
        public override string Item => "Gegenstand";
        public override string OutcomeHead => "Ergebnis";
        public override string NotAfter => "Nicht nach";
        public override string NextBy => "Nächste Prüfung bis";
        public override string Why => "Warum";
        public override string NoId => "(ohne Kennung)";

        public override string RowsNotRead(int rows) =>
            Text($"{rows} {(rows == 1 ? "Zeile wurde" : "Zeilen wurden")} nicht gelesen: über das dort Getippte ist nichts entschieden.");

        public override string Issue => "Ausstellen";
        public override string IssueHow =>
            "Berichte und Etiketten für die nächste Prüfung für das, was benutzt werden darf; Mängelmeldungen und Sperretiketten für das, "
            + "was nicht benutzt werden darf.";
        public override string IssueNow => "Dokumente ausstellen";
        public override string PerItem => "Ein Bericht für jeden Gegenstand";
        public override string Reason => "Warum berichtigt wird";
        public override string ReasonHow =>
            "Nur wo schon eine frühere Fassung ausgestellt wurde; der Grund steht auf dem, was sie ersetzt.";

        public override string IssuingGoesOn => "Sie können diese Seite schließen: es geht weiter.";
        public override string Stop => "Nach dem laufenden Dokument anhalten";

        public override string Stopped(string why) => $"Angehalten: {why}.";

        public override string Issued(int documents) =>
            Text($"{documents} {(documents == 1 ? "Dokument ist" : "Dokumente sind")} ausgestellt.");

        public override string Refused => "Nicht ausgestellt";
        public override string Documents => "Dokumente";
        public override string AllAsZip => "Alles in einem Ordner (zip)";
        public override string Labels => "Etiketten";
        public override string LabelsHow => "In Originalgröße drucken, ohne Anpassen an die Seite.";
        public override string Stock => "Gedruckt auf";
        public override string FirstPlace => "Erster freier Platz auf dem Bogen";
        public override string MakeSheet => "Bogen herstellen";
        public override string NoLabels => "Etiketten dieser Art sind nicht nötig.";
        public override string MendedSince => "Seither wurde etwas verbessert: stellen Sie noch einmal aus.";

        public override string FindHow =>
            "Kennung, Seriennummer, Zeichen des Eigentümers, Hersteller, Modell, Arbeitgeber, Dokumentnummer oder der gescannte Code "
            + "eines Etiketts.";
        public override string FindNow => "Suchen";

        public override string NothingFound(string asked) =>
            $"Das Register weiß nichts von „{asked}“. Behandeln Sie den Gegenstand als nie geprüft.";

        public override string NoneIsMarked(string asked) =>
            $"Kein Gegenstand ist mit „{asked}“ gekennzeichnet. Bei diesen kommen die Wörter vor:";

        public override string SpeltLike(string id) => $"Fast wie {id} geschrieben:";

        public override string Found(int shown, int inAll) =>
            shown == inAll
                ? Text($"{inAll} {(inAll == 1 ? "Gegenstand" : "Gegenstände")}, die schlechtesten zuerst")
                : Text($"{shown} von {inAll} Gegenständen; tippen Sie mehr, um weniger zu finden");

        public override string Serial => "Seriennummer";
        public override string Maker => "Hersteller und Modell";
        public override string Owner => "Eigentümer";
        public override string History => "Verlauf";
        public override string NotRecorded => "nicht aufgezeichnet";
        public override string ReturnsHow => "Scannen oder tippen Sie eine Kennzeichnung nach der anderen. Gesperrtes steht oben.";
        public override string Scan => "Kennzeichnung scannen oder tippen";
        public override string Add => "Hinzufügen";
        public override string Unknown => "UNBEKANNT: NICHT BENUTZEN";
        public override string UnknownWhy => "Das Register kennt keinen Gegenstand mit dieser Kennzeichnung.";

        public override string ListIsFull(int most) =>
            Text($"Die Liste ist voll: {most} Gegenstände. Drucken Sie sie und beginnen Sie eine neue.");

        public override string StandingIs(Standing standing) =>
            standing switch
            {
                Standing.Withdrawn => "NICHT BENUTZEN",
                Standing.Held => "UNGEKLÄRT: NICHT BENUTZEN",
                Standing.Overdue => "PRÜFUNG ÜBERFÄLLIG: NICHT BENUTZEN",
                Standing.NotIssued => "KEIN GÜLTIGER BERICHT: NICHT BENUTZEN",
                _ => "In Gebrauch",
            };

        public override string OutcomeIs(Outcome outcome) =>
            outcome switch
            {
                Outcome.Fit => "weiter benutzbar",
                Outcome.FitUntil => "benutzbar bis zu einem Tag",
                Outcome.Undetermined => "ungeklärt",
                _ => "ausgesondert",
            };

        public override string Print => "Diese Liste drucken";

        public override string VerifyHow =>
            "Legen Sie Dokumente (PDF) ab, um zu sehen, ob sie echt, vollständig und aktuell sind. Davon wird nichts aufbewahrt.";
        public override string VerifyNow => "Prüfen";

        public override string VerdictIs(Verdict verdict) =>
            verdict switch
            {
                Verdict.Valid => "Gültig",
                Verdict.NotValid => "NICHT GÜLTIG",
                _ => "Nicht zu sagen",
            };

        public override string Settle => "Was es klären würde";

        public override string WhoHow =>
            "Wird einmal gefragt. Es kommt in den Briefkopf und wird angeboten, wenn Sie einen Prüfauftrag aufzeichnen.";
        public override string Name => "Ihr Name";
        public override string Qualifications => "Qualifikationen";
        public override string Address => "Anschrift";
        public override string Firm => "Firma im Briefkopf";
        public override string Contact => "Telefon für Rückfragen";
        public override string Language => "Sprache";
        public override string Keep => "Behalten";
    }
}

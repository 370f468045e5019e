using System.Globalization;

namespace ExamDocs.Templates.AuditPack.Wording;

/// <inheritdoc />
internal sealed class German : PackPhrases
{
    public override string Title => "Prüfmappe";
    public override string Lead => "Das Verzeichnis der Ausrüstung, was fehlt, jedes gültige Dokument und die Nachweise der Befähigung.";
    public override string AsOf => "Stand";
    public override string BuiltOn => "Erstellt am";
    public override string Employer => "Arbeitgeber";
    public override string Premises => "Betriebsstätte";
    public override string Items => "Gegenstände";
    public override string All => "alle";
    public override string Register => "Register";
    public override string KeptSince => "Geführt seit";
    public override string Holds => "Inhalt";

    public override string Counts(int items, int inService, int documents, int evidence) =>
        $"Gegenstände: {N(items)}, davon in Gebrauch: {N(inService)}; Dokumente: {N(documents)}; Nachweise: {N(evidence)}";

    public override string WhatAsOfMeans(bool isToday) =>
        isToday
            ? "Sie sagt, wie es am Tag der Erstellung steht."
            : "Sie sagt, wie es am genannten Stand war: nach den Prüfungen, die bis zum Ende dieses Tages gespeichert, und den Dokumenten, "
                + "die bis dahin ausgestellt waren. Ob das Register in Ordnung ist und was in Ordnern liegt, wurde am Tag der Erstellung "
                + "nachgesehen.";

    public override string OnlyReadingCopy =>
        "Dies ist eine Lesekopie. Die Dokumente, wie sie ausgestellt wurden, liegen in der ZIP-Datei daneben: Nur sie lassen sich "
        + "überprüfen, und nur sie kann ein Bildschirmleser vorlesen.";

    public override string GapsHeading => "Lücken";

    public override string GapCount(int gaps) => gaps == 1 ? "1 Lücke" : $"{N(gaps)} Lücken";

    public override string NoGaps => "Nichts von dem, wonach gesucht wird, fehlt.";
    public override string GapsLead => "Sie stehen am Anfang, und jede sagt, was fehlt.";

    public override string Gap(PackGapKind kind) =>
        kind switch
        {
            PackGapKind.RegisterNotSound => "Das Register ist nicht in Ordnung",
            PackGapKind.DecidedOtherwise => "Aufträge, über die heute anders entschieden würde",
            PackGapKind.DocumentMissingOrDiffers => "Dokumente, die das Register nicht mehr so hat, wie sie ausgestellt wurden",
            PackGapKind.NoDocumentInDate => "Ausrüstung ohne gültiges Dokument",
            PackGapKind.NoQuarantineRecord => "Ausgesonderte Ausrüstung, deren Verwahrung nicht aufgezeichnet ist",
            PackGapKind.RemedyNotRecorded => "Mängel, deren Behebung zum genannten Tag nicht aufgezeichnet ist",
            PackGapKind.ReplacedInCirculation => "Ersetzte Dokumente, die noch im Umlauf sind",
            PackGapKind.DeclarationMissing => "Fehlende Konformitätserklärungen",
            _ => "Prüfer ohne Nachweis der Befähigung",
        };

    public override string RegisterHeading => "Verzeichnis der Ausrüstung";
    public override string Item => "Gegenstand, Seriennummer";
    public override string What => "Was es ist";
    public override string Standing => "Wie es steht";
    public override string NextBy => "Nächste Prüfung bis";
    public override string Documents => "Dokumente";
    public override string NoDocument => "keines";

    public override string AndMore(int count) => $"und {N(count)} weitere";

    public override string BackTitle => "Nachweise, Aufbewahrung und Verzeichnisse";
    public override string ExaminersHeading => "Prüfer und Nachweise ihrer Befähigung";
    public override string NoExaminer => "Es ist keine Prüfung aufgezeichnet.";
    public override string Examiner => "Prüfer";
    public override string Qualifications => "Befähigung wie aufgezeichnet";
    public override string Evidence => "Beigefügte Nachweise";
    public override string NoneEnclosed => "keiner beigefügt";
    public override string EvidenceHeading => "Beigefügte Nachweise und Erklärungen";
    public override string OtherEvidence => "ihr Name nennt weder Prüfer noch Gegenstand noch Modell";
    public override string File => "Datei";
    public override string About => "Betrifft";
    public override string PackPage => "Seite der Mappe";
    public override string OnlyInZip => "nur in der ZIP-Datei";
    public override string RetentionHeading => "Wie lange Berichte aufzubewahren sind";
    public override string RetentionLead =>
        "Nach dem Recht, wie es das Programm kennt. Ansprüche nach Unfällen, Versicherer und Verträge können mehr verlangen.";
    public override string Visit => "Prüftermin";
    public override string ReportedOn => "Bericht vom";
    public override string Keep => "Berichte aufbewahren";
    public override string Until => "Mindestens bis";
    public override string NoRule => "keine Regel bekannt: aufbewahren";
    public override string NotYetKnown => "noch nicht bekannt";
    public override string ByItemHeading => "Verzeichnis nach Gegenständen";
    public override string Continued => " (Fortsetzung)";

    public override string OnPage(string number, int page) => $"{number}, S. {N(page)}";

    public override string ByDocumentHeading => "Verzeichnis nach Dokumenten";
    public override string IssuedOn => "Ausgestellt am";

    public override string HowToCheckCopy =>
        "Die Seiten sind oben durchgezählt: vor den Dokumenten in römischen Ziffern, vom ersten Dokument an in arabischen. Ob ein Dokument "
        + "echt ist, zeigt nur seine Datei in der ZIP-Datei: how-to-verify.txt darin sagt, wie es sich ohne unser Programm prüfen lässt.";

    public override string PageMark(string number) => $"Pruefmappe, Seite {number}";

    public override string FilesHeading => "Weitere Dateien";
    public override string HowToVerifyFile => "wie sich alles ohne unser Programm prüfen lässt";
    public override string WorkbookFile => "Verzeichnis, Dokumente und Lücken als Tabellen";
    public override string JsonFile => "dasselbe für Programme";
    public override string CheckpointFile => "der Stand des Protokolls des Registers";
    public override string ProofsFile => "zeigt, dass jedes Dokument in diesem Protokoll steht";

    public override string HowToVerify =>
        """
            WIE SICH DIESE MAPPE OHNE DAS PROGRAMM PRÜFEN LÄSST, DAS SIE ERSTELLT HAT

            1. Ist die Mappe vollständig und seit der Erstellung unverändert?
               Die ZIP-Datei auspacken. In dem Ordner, in dem bagit.txt liegt, ausführen:

                 sha256sum -c manifest-sha256.txt
                 sha256sum -c tagmanifest-sha256.txt

               (macOS: shasum -a 256 -c ...). Jede Zeile muss mit OK enden. Der Ordner ist ein "bag" nach RFC 8493; jedes Programm
               für solche Ordner prüft ihn ebenso. Das zeigt Versehen, keinen Betrug: Wer eine Datei ändert, kann auch eine neue
               Liste machen. Fragen Sie daher den Absender unter einer Telefonnummer, die Sie anderswoher kennen, nach dem SHA-256
               von tagmanifest-sha256.txt.

            2. Ist ein Dokument das, das ausgestellt wurde?
               Jede PDF-Datei in documents ist Byte für Byte die ausgestellte. Trägt sie eine elektronische Signatur, zeigt sie jedes
               Programm, das Signaturen von PDF-Dateien prüft. Der SHA-256 jedes Dokuments steht in register.json und im Protokoll
               des Registers.

            3. Wurde ein Dokument in das Protokoll des Registers eingetragen?
               log/checkpoint.json nennt die Länge des Protokolls und seine Wurzel (Baum nach RFC 6962, SHA-256).
               log/inclusion-proofs.json hat für jedes Dokument seinen Eintrag im Protokoll und den Pfad vom Eintrag zu dieser Wurzel.
               Die Zeilen unten als check.py in dem Ordner speichern, in dem bagit.txt liegt, und mit Python 3 ausführen. Hinter jedem
               Dokument muss "ok" stehen, und keine weitere Zeile darf erscheinen: Eine Datei, die in keiner Liste steht, kam später
               dazu, und ein Dokument ohne Beleg ist keines des Registers.
               Ein Stand des Protokolls, den Sie früher vom Absender bekommen haben oder der anderswo
               veröffentlicht ist, zeigt, dass das Protokoll seither nicht umgeschrieben wurde.

            4. Was sich von hier aus nicht prüfen lässt: ob das Aufgezeichnete wahr ist.

            """;

    public override string Description(string employer, string asOf) => $"Prüfmappe für {employer}, Stand {asOf}";

    private static string N(int count) => count.ToString(CultureInfo.InvariantCulture);
}

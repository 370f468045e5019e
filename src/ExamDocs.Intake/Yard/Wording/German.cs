using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Intake.Yard.Wording;

/// <inheritdoc />
internal sealed partial class German : YardPhrases
{
    public override string Language => "de";

    public override Terms Terms => Terms.German;

    public override string Title => "Prüfauftrag aufzeichnen";
    public override string NoScript =>
        "Dieses Telefon oder dieser Browser führt in Dateien keine Skripte aus, deshalb lässt sich das Formular hier "
        + "nicht benutzen. Legen Sie dieselbe Datei unter irgendeine https-Adresse Ihrer eigenen Firma und öffnen Sie "
        + "sie von dort, oder öffnen Sie die Datei in einem Browser, der Skripte ausführt. Nichts wird irgendwohin "
        + "gesendet: einmal geöffnet, arbeitet das Formular ohne Netz.";
    public override string Opening =>
        "Das Formular wird geöffnet. Bleibt diese Zeile stehen, führt der Browser in Dateien keine Skripte aus: öffnen "
        + "Sie dieselbe Datei von irgendeiner https-Adresse Ihrer eigenen Firma.";
    public override string Caution => "Die Anleitung des Herstellers, das örtliche Recht und das Urteil der sachkundigen Person gehen vor.";
    public override string Tabs => "Seiten des Formulars";
    public override string Visit => "Auftrag";
    public override string Items => "Gegenstände";
    public override string Save => "Speichern";
    public override string Choose => "wählen";
    public override string Yes => "Ja";
    public override string No => "Nein";
    public override string TakeBack => "Zurücknehmen";
    public override string More => "Mehr, wo es nötig ist";
    public override string Missing => "{0} fehlt";
    public override string NotANumber => "Das ist keine Zahl in einfachen Ziffern. Es bleibt, wie Sie es getippt haben.";

    public override string OnlyHere => "Nur auf diesem Telefon. Noch in keiner Datei.";
    public override string ChangedSince => "Nur auf diesem Telefon: was Sie seit {0} geändert haben.";
    public override string SavedAs => "Dem Browser gegeben als {0}. Sehen Sie nach, ob die Datei da ist, bevor Sie das Telefon weglegen.";
    public override string NotKept =>
        "NICHT AUFBEWAHRT: der Browser konnte Ihre letzte Eingabe nicht speichern. Speichern Sie jetzt die Datei und "
        + "schließen Sie diese Seite nicht vorher.";
    public override string MayBeCleared =>
        "Der Browser hat nicht zugesagt, dies aufzubewahren. Bei knappem Platz kann er es löschen: speichern Sie oft " + "eine Datei.";
    public override string NoBase =>
        "Dieser Browser bewahrt für diese Seite nichts auf, Ihre Eingaben gingen verloren. Öffnen Sie das Formular in "
        + "einem gewöhnlichen Fenster, nicht in einem privaten, oder öffnen Sie dieselbe Datei von irgendeiner "
        + "https-Adresse Ihrer eigenen Firma.";
    public override string NoLocks =>
        "Dieser Browser kann zwei Reiter des Formulars nicht auseinanderhalten. Öffnen Sie die Datei selbst in einem "
        + "aktuellen Browser oder von irgendeiner https-Adresse Ihrer eigenen Firma.";
    public override string OpenElsewhere =>
        "Dieses Formular ist in einem anderen Reiter offen. Machen Sie dort weiter oder schließen Sie ihn: dann öffnet "
        + "sich das Formular hier mit allem, was getippt wurde.";

    public override string Reference =>
        "Zeichen dieses Auftrags: {0}. Es wurde einmal vergeben und bleibt; eine zweimal gesendete Datei zählt einmal.";
    public override string Regime => "Regelwerk";
    public override string EmployerName => "Arbeitgeber: Name";
    public override string EmployerAddress => "Arbeitgeber: Anschrift";
    public override string PremisesName => "Betriebsstätte: Name";
    public override string PremisesAddress => "Betriebsstätte: Anschrift";
    public override string HiredFromName => "Gemietet von: Name";
    public override string HiredFromAddress => "Gemietet von: Anschrift";
    public override string EnforcingAuthorityName => "Aufsichtsbehörde: Name";
    public override string EnforcingAuthorityAddress => "Aufsichtsbehörde: Anschrift";
    public override string ExaminedOn => "Tag der Prüfung";
    public override string ReportedOn => "Tag des Berichts";
    public override string DayNotAfter =>
        "Das Formular kennt eine Prüfung vom {0}. Von mehreren Prüfungen eines Gegenstands entscheidet die des "
        + "spätesten Tages: sehen Sie nach, ob dieser Tag stimmt.";
    public override string Examiner => "Prüfer";
    public override string Basis => "Anlass der Prüfung";
    public override string SchemeReference => "Prüfplan: Zeichen";
    public override string SchemeAuthor => "Prüfplan: aufgestellt von";
    public override string SchemeMonths => "Prüfplan: Monate";
    public override string EventWhat => "Was geschah";
    public override string EventOn => "Wann es geschah";
    public override string AddPerson => "Person hinzufügen";
    public override string Person => "Person {0}";
    public override string PersonName => "Name";
    public override string PersonAddress => "Anschrift";
    public override string PersonQualifications => "Qualifikationen";
    public override string SelfEmployed => "Selbständig?";
    public override string PersonsEmployer => "Arbeitgeber dieser Person: Name, wo sie nicht selbständig ist";
    public override string PersonsEmployerAddress => "Arbeitgeber dieser Person: Anschrift";
    public override string ToItems => "Zu den Gegenständen";

    public override string NoItems => "Es gibt noch keine Gegenstände.";
    public override string NotBegun => "nicht begonnen";
    public override string AllRecorded => "alles aufgezeichnet";
    public override string Answered => "{0} von {1} beantwortet";
    public override string AddItem => "Gegenstand hinzufügen";
    public override string NewItem => "Neuer Gegenstand";
    public override string Twice => "Zwei Gegenstände haben die Kennung {0}. Jeder braucht eine eigene.";
    public override string ToTheEnd => "Zum Schluss";
}

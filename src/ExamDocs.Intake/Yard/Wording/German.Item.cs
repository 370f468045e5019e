namespace ExamDocs.Intake.Yard.Wording;

/// <content>Words about one item, and about the end of the visit.</content>
internal sealed partial class German
{
    public override string Id => "Kennung";
    public override string IdHint => "Wie der Eigentümer ihn kennzeichnet; keine zwei gleich.";
    public override string Category => "Kategorie";
    public override string Description => "Bezeichnung";
    public override string Maker => "Hersteller";
    public override string Model => "Modell";
    public override string PartNumber => "Teilenummer";
    public override string Serial => "Seriennummer";
    public override string OwnersMark => "Zeichen des Eigentümers";
    public override string Manufactured => "Hergestellt";
    public override string Purchased => "Gekauft";
    public override string FirstUsed => "Erster Gebrauch";
    public override string ObsoleteOn => "Aufgedrucktes Ablaufdatum";
    public override string LastExamined => "Letzte gründliche Prüfung";
    public override string PartialDate => "2026-05-20 oder 2026-05 oder 2026";
    public override string Purpose => "Zweck";
    public override string Status => "Wo er ist";
    public override string FittedTo => "Angebracht an";
    public override string Load => "Tragfähigkeit";
    public override string Unit => "Einheit";
    public override string NotMarked => "keine angegeben";
    public override string LoadBasis => "Woher die Tragfähigkeit stammt";
    public override string Particulars => "Angaben zu diesem Gegenstand";
    public override string Limits => "Grenzen des Herstellers";
    public override string LimitsHint =>
        "Das Formular kennt für diesen Hersteller und dieses Modell keine Grenzen. Tippen Sie, was in der Anleitung "
        + "des Herstellers steht, und nichts anderes.";
    public override string SourceTitle => "Unterlage des Herstellers: Titel";
    public override string SourceRevision => "Unterlage des Herstellers: Ausgabe";
    public override string SourcePage => "Unterlage des Herstellers: Seite";
    public override string MaxUseYears => "Höchstens Jahre ab erstem Gebrauch";
    public override string MaxStorageYears => "Höchstens Jahre gelagert vor erstem Gebrauch";
    public override string MaxAgeYears => "Höchstens Jahre ab Herstellung";
    public override string IntervalMonths => "Höchstens Monate zwischen Prüfungen";
    public override string NominalDiameterMm => "Nenndurchmesser, mm";
    public override string DiameterTolerancePercent => "Toleranz des Durchmessers, %";
    public override string NoLimit => "Der Hersteller nennt ausdrücklich keine zeitliche Grenze";
    public override string LastExaminedOn => "Zuletzt geprüft: {0}.";
    public override string NoDay => "Tag nicht aufgezeichnet";
    public override string FitThen => "Ergebnis des Prüfers damals: weiter benutzbar.";
    public override string WithdrawnThen =>
        "Der Prüfer hat ihn damals AUSGESONDERT. Wurde er seither nicht freigegeben, bleibt er außer Gebrauch. Dieses "
        + "Formular kann ihn nicht freigeben.";
    public override string WithdrawnLast => "letztes Mal ausgesondert";
    public override string NoConclusionThen => "Es wurde kein Ergebnis aufgezeichnet.";
    public override string DefectsThen => "Damals aufgezeichnete Mängel:";
    public override string NextItem => "Nächster Gegenstand: {0}";
    public override string SaveAndGoOn => "Datei speichern. {0}";

    public override string Criteria => "Kriterien";
    public override string HowExamined => "{0} von {1}. Wie: {2}";
    public override string LastTime => "Letztes Mal, {0}: {1}";
    public override string AddNote => "Anmerkung hinzufügen";
    public override string Note => "Anmerkung";
    public override string NoteNeeded => "Diese Antwort braucht eine Anmerkung.";
    public override string NoteMissing => "{0}: die Anmerkung fehlt";
    public override string Unanswered => "{0} nicht beantwortet: {1}";
    public override string AddPhoto => "Foto hinzufügen";
    public override string Photo => "Foto dieses Befunds";
    public override string RemovePhoto => "Foto entfernen";
    public override string PhotoRefused => "Dieses Bild ließ sich nicht lesen oder aufbewahren. Nehmen Sie es noch einmal als JPEG auf.";
    public override string TheDefect => "Der Mangel";
    public override string DefectPart => "Teil";
    public override string DefectDescription => "Was nicht in Ordnung ist";
    public override string DefectRemedy => "Nötige Reparatur, Erneuerung oder Änderung";
    public override string DefectMissing => "{0}: vom Mangel nicht aufgezeichnet: {1}";
    public override string DefectKept =>
        "Was Sie über einen Mangel geschrieben haben, bleibt hier, steht aber nicht in der Datei, solange die Antwort "
        + "nicht Mangel ist.";
    public override string Danger => "Ist es eine Gefahr für Personen?";
    public override string DangerNow => "Es ist jetzt eine Gefahr";
    public override string DangerLater => "Es könnte eine Gefahr werden";
    public override string BecomesDangerOn => "Könnte eine Gefahr werden bis";
    public override string BecomesDangerHint => "Der Tag davor ist der letzte Tag des Gebrauchs.";
    public override string ImminentRisk => "Bestehende oder unmittelbar drohende Gefahr schwerer Verletzung?";
    public override string ToldWhom => "Wem Sie es gesagt haben";
    public override string ToldHow => "Wie Sie es gesagt haben";
    public override string ToldOn => "Wann Sie es gesagt haben";

    public override string Diameters => "Durchmesser";
    public override string DiametersHint => "Zwei Messwerte im rechten Winkel an jeder Stelle. Die Stelle zählt vom Bezugsende.";
    public override string Station => "Stelle {0}, in mm";
    public override string Position => "Stelle";
    public override string FirstReading => "Messwert 1";
    public override string SecondReading => "Messwert 2";
    public override string LastMean => "Mittel letztes Mal: {0} mm";
    public override string AddStation => "Stelle hinzufügen";

    public override string Conclusion => "Ergebnis";
    public override string ConclusionAsked => "Darf er weiter benutzt werden?";
    public override string ConclusionHint => "Ihr eigenes Ergebnis. Das Programm prüft es und ist nie milder als Sie.";
    public override string ConclusionMissing => "Das Ergebnis fehlt";
    public override string Fit => "Weiter benutzbar";
    public override string Withdraw => "Aussondern";
    public override string NextBy => "Nächste Prüfung spätestens";
    public override string NextByHint => "Nur um sie früher anzusetzen, als Recht und Hersteller verlangen.";
    public override string OwnRegime => "Regelwerk dieses Gegenstands, wo es nicht das des Auftrags ist";
    public override string TestDescription => "Ausgeführter Versuch";
    public override string TestResult => "Ergebnis des Versuchs";
    public override string Hardware => "Metallteil, auf dem er läuft";
    public override string Ground => "Untergrund";
    public override string Use => "Gebrauch";
    public override string UserMassKg => "Masse des Benutzers, kg";

    public override string StillMissing => "Was noch fehlt";
    public override string NothingMissing => "Jeder Gegenstand hat seine Antworten und sein Ergebnis.";
    public override string DecidesNothing =>
        "Dieses Formular entscheidet nichts. examdocs check DATEI sagt, was nicht stimmt und was herauskommt.";
    public override string PhotosWithin =>
        "{0} Antworten haben ein Foto. Die Datei ist ein Archiv (.zip): entpacken Sie es und lassen Sie die Fotos "
        + "neben der Aufzeichnung.";
    public override string SaveFile => "Datei speichern";
    public override string SendIt =>
        "Jede Datei enthält den ganzen Auftrag bis dahin: die letzte genügt. Schicken Sie sie an den, der die " + "Dokumente ausstellt.";
    public override string StartAnother => "Mit diesem Formular einen weiteren Auftrag beginnen";
    public override string OtherVisits => "Andere Aufträge auf diesem Telefon";
}

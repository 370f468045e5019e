namespace ExamDocs.Templates.FirstVisit.Wording;

/// <inheritdoc />
internal sealed class German : FirstVisitPhrases
{
    public override string Title => "Prüfbögen für einen ersten Termin";
    public override string Lead =>
        "Um eine Prüfung von Hand aufzuschreiben, wo keine frühere Aufzeichnung vorliegt. Sie sind kein Bericht "
        + "und haben keine Nummer.";
    public override string HowToWrite =>
        "Ein Stern zeigt, was ein Gegenstand braucht, um tauglich zu sein, oder ein Bericht, um gemacht zu werden. "
        + "Daten als Jahr-Monat-Tag schreiben: 2026-05-11. Ist nur der Monat oder das Jahr bekannt, dieses "
        + "schreiben. Was niemand weiß, leer lassen; eine leere Zeile ist ein fehlender Wert und keine Antwort.";
    public override string Visit => "Termin";
    public override string Examiner => "Prüfer";
    public override string OtherPerson => "Wer außerdem unterschreibt oder beaufsichtigt";
    public override string Models => "Modelle: was allen Gegenständen eines Modells gemeinsam ist";
    public override string HowToModels =>
        "Ein Block für jedes Modell. Nur schreiben, was die Anleitung des Herstellers sagt, mit Dokument, Ausgabe "
        + "und Seite. Wo keine Grenze steht, wird keine angenommen; textile Ausrüstung ohne Grenze bleibt "
        + "unentschieden.";
    public override string OneBox =>
        "Ein Kästchen in jeder Zeile; eine offene Zeile ist keine Antwort. Vermerkt, Zweifel und Mangel brauchen "
        + "eine Bemerkung. Im Zweifel Zweifel ankreuzen.";
    public override string HowToMeasure =>
        "Zwei Messwerte an jeder Stelle, im rechten Winkel; Stellen in mm von einem Ende, das Sie kennzeichnen.";
    public override string MoreOverleaf => "Weitere: auf der Rückseite.";
    public override string DefectsOverleaf =>
        "Versuche und ihre Ergebnisse. Mängel, die eine Gefahr sind oder werden könnten: auf der Rückseite";
    public override IReadOnlyList<string> YesAndNo { get; } = ["ja", "nein"];
    public override IReadOnlyList<string> Cautions { get; } =
    [
        "Was hier steht, zählt erst, wenn es in die Aufzeichnung des Termins eingetragen und geprüft ist.",
        "Jede Antwort ist die des Prüfers und geht vom Gegenstand aus. Nichts ist vorher angekreuzt.",
    ];

    public override string Label(FormLine line) =>
        OfVisit(line) ?? OfItem(line) ?? throw new ArgumentOutOfRangeException(nameof(line), line, null);

    private static string? OfVisit(FormLine line) =>
        line switch
        {
            FormLine.Reference => "Ihr Zeichen des Termins",
            FormLine.Regime => "Regelwerk, etwa gb-loler oder de",
            FormLine.EmployerName => "Arbeitgeber: Name",
            FormLine.EmployerAddress => "Arbeitgeber: Anschrift",
            FormLine.PremisesName => "Ort der Prüfung: Name",
            FormLine.PremisesAddress => "Ort der Prüfung: Anschrift",
            FormLine.HiredFromName => "Gemietet von: Name, wo gemietet",
            FormLine.HiredFromAddress => "Gemietet von: Anschrift",
            FormLine.AuthorityName => "Zuständige Behörde: Name, wo bekannt",
            FormLine.AuthorityAddress => "Zuständige Behörde: Anschrift",
            FormLine.ExaminedOn => "Geprüft am",
            FormLine.ReportedOn => "Datum des Berichts",
            FormLine.Basis => "Anlass der Prüfung. Einen anderen neben den Gegenstand schreiben",
            FormLine.PersonId => "Kurzname, etwa p1",
            FormLine.PersonName => "Voller Name",
            FormLine.PersonAddress => "Anschrift",
            FormLine.Qualifications => "Was die Person befähigt",
            FormLine.SelfEmployed => "Selbständig",
            FormLine.ItsEmployerName => "Sonst: Name des Arbeitgebers",
            FormLine.ItsEmployerAddress => "Anschrift des Arbeitgebers",
            _ => null,
        };

    private static string? OfItem(FormLine line) =>
        line switch
        {
            FormLine.ItemId => "Kennung des Gegenstands",
            FormLine.Serial => "Serien- oder Chargennummer",
            FormLine.OwnersMark => "Eigentümerzeichen",
            FormLine.Maker => "Hersteller",
            FormLine.Model => "Modell",
            FormLine.PartNumber => "Artikel-Nr.",
            FormLine.Manufactured => "Hergestellt",
            FormLine.FirstUsed => "Erster Gebrauch",
            FormLine.NeverUsed => "Nie benutzt",
            FormLine.LastExamined => "Letzte gründliche Prüfung",
            FormLine.FittedTo => "Angebracht an (Kennung)",
            FormLine.Purpose => "Zweck",
            FormLine.Description => "Beschreibung",
            FormLine.SafeWorkingLoad => "Tragfähigkeit, mit Einheit",
            FormLine.MarkedStrength => "Angegebene Festigkeit",
            FormLine.NotMarked => "Keine angegeben",
            FormLine.SourceTitle => "Anleitung des Herstellers: Titel",
            FormLine.SourceRevision => "Ausgabe oder Datum",
            FormLine.SourcePage => "Seite",
            FormLine.MaxUseYears => "Gebrauch, Jahre",
            FormLine.MaxStorageYears => "Lagerung, Jahre",
            FormLine.MaxAgeYears => "Höchstalter, Jahre",
            FormLine.MaxCleanings => "Reinigungen, höchstens",
            FormLine.IntervalMonths => "Prüfung alle, Monate",
            FormLine.NoLimit => "Laut Hersteller ohne Frist",
            FormLine.EventEndsService => "Laut Hersteller nach jedem Ereignis außer Gebrauch",
            FormLine.InstructionsSought => "Keine Anleitung zu bekommen: wie gesucht",
            FormLine.UseUntil => "Dann: benutzen bis",
            FormLine.NominalDiameter => "Durchmesser, mm",
            FormLine.DiameterTolerance => "Toleranz, ± %",
            FormLine.PermittedParts => "Zulässige Teile",
            FormLine.MinimumTail => "Endlänge, mm",
            FormLine.Retying => "Wer neu knüpfen darf",
            FormLine.Standards => "Angegebene Normen",
            _ => null,
        };
}

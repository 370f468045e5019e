namespace ExamDocs.Templates.Shared.Wording.Corrections;

/// <inheritdoc />
internal sealed class German : CorrectionPhrases
{
    public override string Letterhead => "Briefkopf";
    public override string ElectronicSignature => "elektronische Signatur";
    public override string ReadingDistance => "Leseabstand des Etiketts";
    public override string OtherRecords => "Angaben anderer Aufzeichnungen";
    public override string OwnRules => "die vom Benutzer ergänzten Regeln";

    public override string Of(string what, string whose) => $"{what} von {whose}";

    public override string AndMore(string named, int more) => $"{named} und {Printed.Count(more)} weitere";

    protected override IReadOnlyDictionary<string, string> Words { get; } =
        new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["visit/reference"] = "Auftragsnummer",
            ["visit/regime"] = "angewandtes Recht",
            ["visit/employer"] = "Arbeitgeber",
            ["visit/premises"] = "Prüfort",
            ["visit/hiredFrom"] = "Eigentümer",
            ["visit/enforcingAuthority"] = "Behörde",
            ["visit/examiner"] = "Prüfer",
            ["visit/basis"] = "Art der Prüfung",
            ["visit/examinedOn"] = "Tag der Prüfung",
            ["visit/reportedOn"] = "Datum des Berichts",
            ["items/added"] = "Ergänzung",
            ["items/removed"] = "Streichung",
            ["items/id"] = "Kennzeichen",
            ["items/category"] = "Art",
            ["items/description"] = "Beschreibung",
            ["items/maker"] = "Hersteller",
            ["items/model"] = "Modell",
            ["items/partNumber"] = "Artikelnummer",
            ["items/serial"] = "Seriennummer",
            ["items/ownersMark"] = "Eigentümerzeichen",
            ["items/manufactured"] = "Herstellungsdatum",
            ["items/purchased"] = "Kaufdatum",
            ["items/firstUsed"] = "Datum des ersten Gebrauchs",
            ["items/neverUsed"] = "früherer Gebrauch",
            ["items/cleanings"] = "Zahl der Reinigungen",
            ["items/obsoleteOn"] = "Ablaufdatum",
            ["items/safeWorkingLoad"] = "Tragfähigkeit",
            ["items/markedStrength"] = "angegebene Bruchkraft",
            ["items/standards"] = "Normen",
            ["items/fittedTo"] = "Anbringung",
            ["items/lastExamined"] = "Datum der letzten Prüfung",
            ["items/purpose"] = "Zweck",
            ["items/declaration"] = "Konformitätserklärung",
            ["items/transferEvidence"] = "Nachweis bei Übergabe",
            ["items/status"] = "Verbleib",
            ["items/formerly"] = "früheres Kennzeichen",
            ["items/notTheSameAs"] = "Unterschied zu anderen Gegenständen",
            ["examinations"] = "Prüfungen",
            ["examinations/item"] = "Gegenstand",
            ["examinations/examiner"] = "Prüfer",
            ["examinations/author"] = "Verfasser des Berichts",
            ["examinations/authenticatedBy"] = "Unterzeichner",
            ["examinations/regime"] = "angewandtes Recht",
            ["examinations/basis"] = "Art der Prüfung",
            ["examinations/scheme"] = "Prüfplan",
            ["examinations/event"] = "außergewöhnliches Ereignis",
            ["examinations/examinedOn"] = "Prüfdatum",
            ["examinations/nextBy"] = "Datum der nächsten Prüfung",
            ["examinations/observations"] = "Antworten",
            ["examinations/diameters"] = "Durchmesser",
            ["examinations/tests"] = "Erprobungen",
            ["examinations/defects"] = "Mängel",
            ["examinations/exposure"] = "Gebrauch und Beanspruchung",
            ["examinations/conclusion"] = "Beurteilung",
            ["renewals"] = "Erneuerungen",
            ["remedies"] = "Instandsetzungen",
            ["releases"] = "Freigaben",
            ["disposals"] = "Verbleib nach dem Aussondern",
            ["people"] = "Angaben",
            ["limits"] = "Herstellergrenzen",
        };
}

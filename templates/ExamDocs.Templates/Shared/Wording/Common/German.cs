using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Templates.Shared.Wording.Common;

/// <inheritdoc />
internal sealed class German : CommonPhrases
{
    public override string NotRecorded => "nicht erfasst";
    public override string AddressNotRecorded => "Anschrift nicht erfasst";
    public override string UnitNotRecorded => "(Einheit nicht erfasst)";
    public override string OnePerson => "Person";
    public override string Persons => "Personen";
    public override string LoadNotMarked => "am Gegenstand nicht angegeben";
    public override string LoadBasis => "laut";
    public override string Issued => "Ausgestellt am";
    public override string Page => "Seite";
    public override string Of => "von";
    public override string Signature => "Unterschrift";
    public override string ToBeSigned => "Unterschrift – von Hand zu leisten";
    public override string DateSigned => "Datum";
    public override string PlaceSigned => "Ort";
    public override string QrLabel => "QR-Code mit der Nummer dieses Dokuments und dem Gegenstand";
    public override string DocumentNumber => "Dokumentnummer";
    public override string IssueDate => "Ausstellungsdatum";
    public override string VisitReference => "Auftragsnummer";
    public override string CautionsHeading => "Bitte beachten";
    public override string None => "keine";
    public override string Yes => "ja";
    public override string No => "nein";

    public override string SignedElectronically(string name) => $"Elektronisch unterschrieben mit dem Zertifikat von {name}.";

    public override string SignatureCertificate(string issuer, string serialNumber, string fingerprint) =>
        $"Ausgestellt von {issuer}, Seriennummer {serialNumber}, SHA-256 beginnt mit {fingerprint}.";

    public override string SignatureTimestamped => "Mit Zeitstempel.";

    public override string SignatureNotTimestamped => "Ohne Zeitstempel.";

    public override string HowToCheckSignature =>
        "Zum Prüfen die Datei in einem Programm öffnen, das Signaturen zeigt, und diese Angaben vergleichen. Die "
        + "Signatur ist in der Datei; ein Ausdruck ist nicht unterschrieben.";

    public override string SignatureField => "Elektronische Signatur dieses Dokuments";

    public override string CautionPrecedence =>
        "Herstelleranleitung, das am Einsatzort geltende Recht und die Beurteilung der sachkundigen Person " + "gehen diesem Dokument vor.";

    public override string LanguageNote => "Ausgestellt und im Register geführt auf Deutsch.";

    public override string LogoOf(string name) => $"Logo von {name}";

    public override string Replaces(string number, string? reason) => $"Ersetzt {number}: {reason ?? "die Aufzeichnung wurde berichtigt"}.";

    public override string HowToVerify(string number) =>
        $"Echtheit prüfen: die Nummer {number} und den SHA-256-Hashwert der Datei mit dem Register des Ausstellers vergleichen.";

    public override string Imprint(string version) =>
        $"Gedruckt mit ExamDocs {version}. Die Prüfung und ihre Schlussfolgerungen sind die des Prüfers.";

    public override string Outcome(Outcome outcome) =>
        outcome switch
        {
            Core.Records.Outcome.Fit => "Darf in Gebrauch bleiben",
            Core.Records.Outcome.FitUntil => "Darf befristet in Gebrauch bleiben",
            Core.Records.Outcome.Undetermined => "Ungeklärt: nicht benutzen",
            _ => "Nicht benutzen",
        };

    public override string Outcome(Outcome outcome, LocalDate? until) =>
        outcome is Core.Records.Outcome.FitUntil ? $"Darf bis {Printed.Day(until)} in Gebrauch bleiben" : Outcome(outcome);

    public override string Class(CriterionClass? criterion) =>
        criterion switch
        {
            CriterionClass.Decisive => "entscheidend",
            CriterionClass.Judged => "abzuwägen",
            CriterionClass.Advisory => "hinweisend",
            _ => "nicht im Katalog",
        };

    public override string Purpose(Purpose? purpose) =>
        purpose switch
        {
            Core.Records.Purpose.LiftsPersons => "hebt oder senkt Personen",
            Core.Records.Purpose.Accessory => "Lastaufnahmemittel oder Anschlagmittel",
            Core.Records.Purpose.Other => "anderes Arbeitsmittel zum Heben von Lasten",
            Core.Records.Purpose.FallArrestOnly => "fängt nur Stürze auf",
            _ => NotRecorded,
        };

    public override string Status(ItemStatus? status) =>
        status switch
        {
            ItemStatus.InUse => "in Gebrauch",
            ItemStatus.Stored => "gelagert",
            ItemStatus.NotPresented => "nicht vorgelegt",
            ItemStatus.Lost => "verloren",
            ItemStatus.Destroyed => "vernichtet",
            _ => NotRecorded,
        };

    public override string Disposal(DisposalAction? action) =>
        action switch
        {
            DisposalAction.Quarantined => "gesperrt",
            DisposalAction.SentForRepair => "zur Instandsetzung geschickt",
            DisposalAction.Destroyed => "vernichtet",
            _ => NotRecorded,
        };
}

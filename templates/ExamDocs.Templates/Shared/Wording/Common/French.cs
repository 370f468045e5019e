using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Templates.Shared.Wording.Common;

/// <inheritdoc />
internal sealed class French : CommonPhrases
{
    public override string NotRecorded => "non renseigné";
    public override string AddressNotRecorded => "adresse non renseignée";
    public override string UnitNotRecorded => "(unité non renseignée)";
    public override string OnePerson => "personne";
    public override string Persons => "personnes";
    public override string LoadNotMarked => "non marquée sur l’équipement";
    public override string LoadBasis => "selon";
    public override string Issued => "Émis le";
    public override string Page => "Page";
    public override string Of => "sur";
    public override string Signature => "Signature";
    public override string ToBeSigned => "Signature – à apposer à la main";
    public override string DateSigned => "Date de signature";
    public override string PlaceSigned => "Lieu";
    public override string QrLabel => "Code QR du numéro de ce document et de l’équipement";
    public override string DocumentNumber => "Numéro du document";
    public override string IssueDate => "Date d’émission";
    public override string VisitReference => "Référence de la visite";
    public override string CautionsHeading => "À noter";
    public override string None => "aucun";
    public override string Yes => "oui";
    public override string No => "non";

    public override string SignedElectronically(string name) => $"Signé électroniquement. Certificat établi pour {name}.";

    public override string SignatureCertificate(string issuer, string serialNumber, string fingerprint) =>
        $"Émis par {issuer}, numéro de série {serialNumber}, SHA-256 commençant par {fingerprint}.";

    public override string SignatureTimestamped => "Avec horodatage.";

    public override string SignatureNotTimestamped => "Sans horodatage.";

    public override string HowToCheckSignature =>
        "Pour vérifier, ouvrir le fichier dans un programme qui montre les signatures et comparer ces indications. La "
        + "signature est dans le fichier\u00A0; un tirage n’est pas signé.";

    public override string SignatureField => "Signature électronique de ce document";

    public override string CautionPrecedence =>
        "La notice du fabricant, la réglementation applicable sur place et le jugement de la personne qualifiée priment sur ce document.";

    public override string LanguageNote => "Émis et inscrit au registre en français.";

    public override string LogoOf(string name) => $"Logo de {name}";

    public override string Replaces(string number, string? reason) =>
        $"Remplace {number}\u00A0: {reason ?? "l’enregistrement a été corrigé"}.";

    public override string HowToVerify(string number) =>
        $"Pour vérifier\u00A0: comparer le numéro {number} et l’empreinte SHA-256 du fichier au registre de l’émetteur.";

    public override string Imprint(string version) =>
        $"Imprimé par ExamDocs {version}. La vérification et ses conclusions sont celles du vérificateur.";

    public override string Outcome(Outcome outcome) =>
        outcome switch
        {
            Core.Records.Outcome.Fit => "Peut rester en service",
            Core.Records.Outcome.FitUntil => "Peut rester en service jusqu’à une date",
            Core.Records.Outcome.Undetermined => "En attente de décision\u00A0: ne pas utiliser",
            _ => "Ne pas utiliser",
        };

    public override string Outcome(Outcome outcome, LocalDate? until) =>
        outcome is Core.Records.Outcome.FitUntil ? $"Peut rester en service jusqu’au {Printed.Day(until)}" : Outcome(outcome);

    public override string Class(CriterionClass? criterion) =>
        criterion switch
        {
            CriterionClass.Decisive => "décisif",
            CriterionClass.Judged => "à apprécier",
            CriterionClass.Advisory => "indicatif",
            _ => "absent du catalogue",
        };

    public override string Purpose(Purpose? purpose) =>
        purpose switch
        {
            Core.Records.Purpose.LiftsPersons => "élève ou descend des personnes",
            Core.Records.Purpose.Accessory => "accessoire de levage",
            Core.Records.Purpose.Other => "autre équipement de levage",
            Core.Records.Purpose.FallArrestOnly => "arrête seulement les chutes",
            _ => NotRecorded,
        };

    public override string Status(ItemStatus? status) =>
        status switch
        {
            ItemStatus.InUse => "en service",
            ItemStatus.Stored => "en stock",
            ItemStatus.NotPresented => "non présenté",
            ItemStatus.Lost => "perdu",
            ItemStatus.Destroyed => "détruit",
            _ => NotRecorded,
        };

    public override string Disposal(DisposalAction? action) =>
        action switch
        {
            DisposalAction.Quarantined => "mis à l’écart",
            DisposalAction.SentForRepair => "envoyé en réparation",
            DisposalAction.Destroyed => "détruit",
            _ => NotRecorded,
        };
}

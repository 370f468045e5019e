namespace ExamDocs.Templates.Shared.Wording.Corrections;

/// <inheritdoc />
internal sealed class French : CorrectionPhrases
{
    public override string Letterhead => "en-tête";
    public override string ElectronicSignature => "signature électronique";
    public override string ReadingDistance => "distance de lecture de l’étiquette";
    public override string OtherRecords => "contenu d’autres enregistrements";
    public override string OwnRules => "les règles ajoutées par l’utilisateur";

    public override string Of(string what, string whose) => $"{what} de {whose}";

    public override string AndMore(string named, int more) => $"{named} et {Printed.Count(more)} autres";

    protected override IReadOnlyDictionary<string, string> Words { get; } =
        new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["visit/reference"] = "référence de la visite",
            ["visit/regime"] = "réglementation appliquée",
            ["visit/employer"] = "employeur",
            ["visit/premises"] = "lieu de la vérification",
            ["visit/hiredFrom"] = "propriétaire",
            ["visit/enforcingAuthority"] = "autorité",
            ["visit/examiner"] = "vérificateur",
            ["visit/basis"] = "type de vérification",
            ["visit/examinedOn"] = "date de la visite",
            ["visit/reportedOn"] = "date du rapport",
            ["items/added"] = "ajout",
            ["items/removed"] = "retrait",
            ["items/id"] = "identifiant",
            ["items/category"] = "catégorie",
            ["items/description"] = "description",
            ["items/maker"] = "fabricant",
            ["items/model"] = "modèle",
            ["items/partNumber"] = "référence",
            ["items/serial"] = "numéro de série",
            ["items/ownersMark"] = "marque du propriétaire",
            ["items/manufactured"] = "date de fabrication",
            ["items/purchased"] = "date d’achat",
            ["items/firstUsed"] = "date de première utilisation",
            ["items/neverUsed"] = "utilisation antérieure",
            ["items/cleanings"] = "nombre de nettoyages",
            ["items/obsoleteOn"] = "date de péremption",
            ["items/safeWorkingLoad"] = "charge maximale d’utilisation",
            ["items/markedStrength"] = "résistance marquée",
            ["items/standards"] = "normes",
            ["items/fittedTo"] = "montage",
            ["items/lastExamined"] = "date de la dernière vérification",
            ["items/purpose"] = "usage",
            ["items/declaration"] = "déclaration de conformité",
            ["items/transferEvidence"] = "preuve à la remise",
            ["items/status"] = "situation",
            ["items/formerly"] = "ancien identifiant",
            ["items/notTheSameAs"] = "différence avec d’autres équipements",
            ["examinations"] = "vérifications",
            ["examinations/item"] = "équipement",
            ["examinations/examiner"] = "vérificateur",
            ["examinations/author"] = "auteur du rapport",
            ["examinations/authenticatedBy"] = "signataire",
            ["examinations/regime"] = "réglementation appliquée",
            ["examinations/basis"] = "type de vérification",
            ["examinations/scheme"] = "plan de vérification",
            ["examinations/event"] = "événement exceptionnel",
            ["examinations/examinedOn"] = "date de vérification",
            ["examinations/nextBy"] = "date de la prochaine vérification",
            ["examinations/observations"] = "réponses",
            ["examinations/diameters"] = "diamètres",
            ["examinations/tests"] = "essais",
            ["examinations/defects"] = "défauts",
            ["examinations/exposure"] = "usage et exposition",
            ["examinations/conclusion"] = "conclusion",
            ["renewals"] = "remplacements",
            ["remedies"] = "réparations",
            ["releases"] = "remises en service",
            ["disposals"] = "mise à l’écart",
            ["people"] = "coordonnées",
            ["limits"] = "limites du fabricant",
        };
}

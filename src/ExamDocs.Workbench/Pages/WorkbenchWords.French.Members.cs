using ExamDocs.Core.Records;

namespace ExamDocs.Workbench.Pages;

/// <content>French, for the fields of a record.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class French
    {
        private static readonly (string Value, string Label)[] YesNo = [("yes", "oui"), ("no", "non")];

        protected override string Colon => "\u00A0: ";
        protected override string AnswerWord => "réponse";
        protected override string NoteWord => "remarque";

        public override IReadOnlyList<(string Value, string Label)>? Choices(string name) =>
            name switch
            {
                "visit/basis" =>
                [
                    ("six-month", "six mois après le dernier"),
                    ("twelve-month", "douze mois après le dernier"),
                    ("scheme", "selon un plan d’examen"),
                    ("exceptional", "après un événement exceptionnel"),
                    ("first-use", "avant la mise en service"),
                    ("installation", "après installation"),
                ],
                "examiner/selfEmployed" or "item/neverUsed" or "item/safeWorkingLoad/notMarked" or "defect/imminentRisk" => YesNo,
                "defect/danger" => [("now", "est un danger maintenant"), ("later", "pourrait devenir un danger")],
                "item/safeWorkingLoad/unit" or "item/markedStrength/unit" => [.. Core.Records.Words.LoadUnits.Select(u => (u, u))],
                "item/purpose" =>
                [
                    ("lifts-persons", "élève ou retient des personnes"),
                    ("accessory", "accessoire de levage"),
                    ("other", "autre levage"),
                    ("fall-arrest-only", "arrêt des chutes seulement"),
                ],
                "item/status" =>
                [
                    ("in-use", "en service"),
                    ("stored", "stocké"),
                    ("not-presented", "non présenté"),
                    ("lost", "perdu"),
                    ("destroyed", "détruit"),
                ],
                _ => null,
            };

        protected override string OfVisit(string name) =>
            name switch
            {
                "visit/reference" => "Référence de la visite",
                "visit/employer/name" => "Employeur",
                "visit/employer/address" => "Adresse de l’employeur",
                "visit/premises/name" => "Établissement",
                "visit/premises/address" => "Adresse de l’établissement",
                "visit/examinedOn" => "Examiné le",
                "visit/reportedOn" => "Date du rapport",
                "visit/regime" => "Réglementation",
                "visit/basis" => "Motif de l’examen",
                "visit/hiredFrom/name" => "Loué à (le cas échéant)",
                "visit/hiredFrom/address" => "Adresse de ce propriétaire",
                "visit/enforcingAuthority/name" => "Autorité de contrôle",
                _ => "Adresse de l’autorité",
            };

        protected override string OfExaminer(string name) =>
            name switch
            {
                "examiner/name" => "Vérificateur",
                "examiner/address" => "Adresse du vérificateur",
                "examiner/qualifications" => "Qualifications du vérificateur",
                "examiner/selfEmployed" => "Le vérificateur est-il indépendant\u00A0?",
                "examiner/employer/name" => "Employeur du vérificateur",
                _ => "Adresse de l’employeur du vérificateur",
            };

        protected override string OfItem(string member) =>
            member switch
            {
                "id" => "Identifiant",
                "category" => "Catégorie",
                "description" => "Désignation",
                "maker" => "Fabricant",
                "model" => "Modèle",
                "partNumber" => "Référence de pièce",
                "serial" => "Numéro de série",
                "ownersMark" => "Marque du propriétaire",
                "manufactured" => "Fabriqué (jour, mois ou année)",
                "purchased" => "Acheté",
                "firstUsed" => "Première utilisation",
                "neverUsed" => "Jamais utilisé",
                "obsoleteOn" => "Fin de vie (imprimée)",
                "safeWorkingLoad/value" => "Charge maximale d’utilisation",
                "safeWorkingLoad/unit" => "Unité de cette charge",
                "safeWorkingLoad/notMarked" => "Charge maximale non marquée",
                "safeWorkingLoad/basis" => "D’où vient la charge",
                "markedStrength/value" => "Résistance marquée",
                "markedStrength/unit" => "Unité de la résistance",
                "standards" => "Normes marquées",
                "fittedTo" => "Monté sur",
                "lastExamined" => "Dernier examen",
                "purpose" => "Destination",
                "status" => "État",
                "declaration/reference" => "Déclaration de conformité",
                "declaration/on" => "Date de la déclaration",
                "transferEvidence" => "Preuve du dernier examen, de l’ancien détenteur",
                "formerly" => "Ancien identifiant",
                _ => member,
            };

        protected override string OfExamination(string member) =>
            member switch
            {
                "conclusion" => "Votre conclusion",
                "nextBy" => "Prochain examen au plus tard, si plus tôt que la règle",
                "exposure/hardware" => "Pièce métallique sur laquelle il coulisse",
                "exposure/ground" => "Terrain d’emploi",
                "exposure/userMassKg" => "Masse de l’utilisateur, kg",
                _ => "Emploi",
            };

        protected override string OfDefect(string member) =>
            member switch
            {
                "part" => "Partie",
                "description" => "Description du défaut",
                "danger" => "Danger",
                "becomesDangerOn" => "Pourrait devenir un danger le",
                "remedy" => "Remède nécessaire",
                "imminentRisk" => "Risque existant ou imminent de blessure grave",
                "notified/whom" => "Qui vous avez prévenu",
                "notified/how" => "Comment",
                _ => "Quand vous l’avez prévenu",
            };
    }
}

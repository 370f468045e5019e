using ExamDocs.UseCases.Recording;

namespace ExamDocs.Workbench.Pages;

/// <content>French, about what was done to an item.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class French
    {
        public override string EntriesOf(string list) =>
            list switch
            {
                PeopleRows.List => "Autres personnes",
                ItemRows.Tests => "Essais faits",
                ItemRows.Renewals => "Pièces renouvelées",
                ItemRows.Remedies => "Réparations et modifications",
                ItemRows.Releases => "Remises en service après un retrait",
                _ => "Devenir après un retrait",
            };

        public override string EntriesHow(string list) =>
            list switch
            {
                PeopleRows.List => "Qui, à part le vérificateur, a fait ou surveillé ce qui est enregistré ici\u00A0: à choisir sur les "
                    + "pages des équipements.",
                ItemRows.Tests => "Les essais faits lors de cet examen, et leurs résultats.",
                ItemRows.Renewals =>
                    "Pièces enlevées de cet équipement, et ce qui a été monté à leur place. La pièce montée est un équipement de "
                        + "cette visite, et sa propre page dit qu’elle est montée sur celui-ci. Une personne qualifiée qui a fait le "
                        + "travail elle-même est aussi nommée comme surveillante.",
                ItemRows.Remedies => "Réparations de cet équipement, et modifications.",
                ItemRows.Releases => "Décisions d’une personne qualifiée qu’un retrait antérieur de cet équipement a pris fin. Indiquez le "
                    + "document qui l’a retiré, ou le jour. Si rien ne dit pourquoi il a pris fin, il compte comme corrigé quand un "
                    + "renouvellement ou une réparation de l’équipement est enregistré, sinon comme examiné à nouveau.",
                _ => "Ce que cet équipement est devenu après son retrait.",
            };

        public override string AddEntry(string list) =>
            list switch
            {
                PeopleRows.List => "Ajouter une personne",
                ItemRows.Tests => "Ajouter un essai",
                ItemRows.Renewals => "Ajouter un renouvellement",
                ItemRows.Remedies => "Ajouter une réparation",
                ItemRows.Releases => "Ajouter une remise en service",
                _ => "Ajouter un devenir",
            };

        public override string RowCalled(string list, int number) =>
            list switch
            {
                PeopleRows.List => Text($"Personne {number}"),
                ItemRows.Tests => Text($"Essai {number}"),
                ItemRows.Renewals => Text($"Renouvellement {number}"),
                ItemRows.Remedies => Text($"Réparation {number}"),
                ItemRows.Releases => Text($"Remise en service {number}"),
                _ => Text($"Devenir {number}"),
            };

        public override string TakeRowOff(string row) => $"Enlever\u00A0: {row}";

        public override string RowMember(string list, string member) =>
            $"{list}/{member}" switch
            {
                "tests/description" => "Ce qui a été essayé",
                "tests/result" => "Résultat",
                "renewals/removedPart" => "Pièce enlevée",
                "renewals/fittedPart" => "Pièce montée",
                "renewals/reason" => "Motif",
                "renewals/doneBy" or "remedies/doneBy" or "disposals/by" => "Fait par",
                "renewals/supervisedBy" => "Sous la surveillance de",
                "renewals/doneOn" or "remedies/doneOn" or "disposals/on" => "Fait le",
                "renewals/retiedBy" => "Renoué par (le cas échéant)",
                "remedies/what" => "Ce qui a été fait",
                "remedies/evidence" => "Preuve",
                "releases/document" => "Document qui l’a retiré",
                "releases/withdrawnOn" => "Retiré le",
                "releases/because" => "Pourquoi le retrait a pris fin",
                "releases/by" => "Remis en service par",
                "releases/on" => "Remis en service le",
                "releases/grounds" => "Motifs",
                "disposals/action" => "Ce qu’il est devenu",
                "people/name" => "Nom",
                "people/address" => "Adresse",
                "people/qualifications" => "Qualifications",
                "people/selfEmployed" => "Indépendant\u00A0?",
                "people/employer/name" => "Employeur",
                "people/employer/address" => "Adresse de l’employeur",
                _ => member,
            };

        protected override IReadOnlyList<(string Value, string Label)>? ChoicesOfRow(string name) =>
            name switch
            {
                "releases/because" =>
                [
                    ("made-good", "corrigé par un renouvellement ou une réparation"),
                    ("examined-again", "examiné à nouveau"),
                    ("recorded-in-error", "enregistré par erreur"),
                ],
                "disposals/action" =>
                [
                    ("quarantined", "mis à l’écart"),
                    ("sent for repair", "envoyé en réparation"),
                    ("destroyed", "détruit"),
                ],
                _ => null,
            };
    }
}

using ExamDocs.Core.Records;
using ExamDocs.Intake.Drafting;
using ExamDocs.UseCases.Recording;
using NodaTime;

namespace ExamDocs.Workbench.Pages;

/// <content>French, for the pages that record a visit.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class French
    {
        public override string StartAVisit => "Enregistrer une visite ici";
        public override string StartHow =>
            "Avec les équipements qui arrivent à échéance, ce qu’on en sait et ce qui fut constaté la dernière fois\u00A0; ou sans "
            + "équipement, pour les ajouter un à un.";
        public override string DueBy => "À échéance au plus tard le";
        public override string DueByHow => "Le dernier jour\u00A0; vide pour tous les équipements du registre.";
        public override string OfOneEmployer => "Seulement si le registre en a de plusieurs.";
        public override string StartFromRegister => "Commencer par ce qui arrive à échéance";
        public override string StartEmpty => "Commencer sans équipement";

        public override string NotADay(string typed) => $"«\u00A0{typed}\u00A0» n’est pas un jour. Tapez-le ainsi\u00A0: 2026-05-11.";

        public override string NotStarted(string why) => $"Aucune visite n’a été commencée\u00A0: {why}.";

        public override string RecordedHere => "enregistrée ici";
        public override string VisitRecordedHere => "Visite enregistrée ici";
        public override string RecordedOnScreen =>
            "Cette visite est enregistrée à l’écran\u00A0: un fichier ne peut pas prendre la place des réponses. Corrigez-la "
            + "sur ses pages, "
            + "ou apportez le fichier sur le bureau, comme une visite à part.";
        public override string GoOnRecording => "Continuer l’enregistrement";

        public override string VisitParticulars => "Visite\u00A0: pour qui, où, quand";
        public override string NextParticulars => "Ensuite\u00A0: dites pour qui, où et quand. Ce que vous ne savez pas reste vide.";
        public override string NextAddItem => "Ensuite\u00A0: ajouter le premier équipement.";

        public override string NextRecord(int left) =>
            Text($"Ensuite\u00A0: enregistrer {left} {(left == 1 ? "équipement" : "équipements")}.");

        public override string RecordNow(string item) => $"Enregistrer {item}";

        public override string OutcomesAndIssue => "Résultats et émission";
        public override string Items => "Équipements";
        public override string AllItems => "Tous les équipements";
        public override string AddItem => "Ajouter un équipement";
        public override string AddItemNow => "L’ajouter et l’enregistrer";
        public override string ChooseACategory => "Choisissez une catégorie\u00A0: elle dit ce qui est examiné.";
        public override string ToDo => "à faire";
        public override string NotHere => "non examiné\u00A0: absent";

        public override string LeftToAnswer(int criteria, bool isConcluded) =>
            criteria > 0 ? Text($"encore {criteria} à répondre")
            : isConcluded ? "choisir une catégorie"
            : "conclusion manquante";

        public override string ItemParticulars => "Ce qu’est l’équipement";
        public override string Circumstances => "Prochain examen plus tôt, conditions d’emploi";
        public override string Optional => "facultatif";

        public override string LastTime(LocalDate day) => $"La dernière fois, {Day(day)}\u00A0:";

        public override string StateIs(ObservedState state) =>
            state switch
            {
                ObservedState.Clear => "rien à signaler",
                ObservedState.Noted => "noté",
                ObservedState.Doubt => "doute",
                ObservedState.Defect => "défaut",
                ObservedState.NotApplicable => "sans objet",
                ObservedState.NoSign => "personne à interroger, aucun signe",
                _ => "non examiné",
            };

        public override string TakeBack => "retirer la réponse";
        public override string NoteField => "Remarque";
        public override string DefectHow => "Le défaut, tel que le rapport l’énonce.";
        public override string Diameters => "Diamètres";
        public override string DiametersHow => "Tapez les mesures de chaque endroit séparées par un blanc, en millimètres\u00A0: 11,1 11,0";

        public override string AtPlace(string mm) => $"À {mm} mm";

        public override string FurtherPlaces => "Autres endroits, en mm depuis l’extrémité de référence";
        public override string AddPlaces => "Ajouter des endroits";
        public override string Conclusion => "Votre conclusion";

        public override string ConclusionIs(Conclusion conclusion) =>
            conclusion is Core.Records.Conclusion.Fit ? "maintenu en service" : "à retirer du service";

        public override string AnsweredOf(int answered, int all) => Text($"{answered} réponses sur {all}");

        public override string Save => "Enregistrer";
        public override string SaveAndNext => "Enregistrer et équipement suivant";
        public override string SaveAndList => "Enregistrer et montrer tous les équipements";
        public override string Saving => "enregistrement";
        public override string Saved => "enregistré";
        public override string SavingFailed =>
            "NON ENREGISTRÉ. Le programme ne répond pas\u00A0; les essais continuent tant que cette page est ouverte.";

        public override string NotSavedIs(NotSaved one)
        {
            ArgumentNullException.ThrowIfNull(one);
            var stands = one.Stands.Length > 0 ? $"«\u00A0{one.Stands}\u00A0»" : "rien";
            var typed = one.Field.Now.Length > 0 ? $"«\u00A0{one.Field.Now}\u00A0»" : "rien";
            return one.Because is NotSavedBecause.ChangedMeanwhile
                ? $"{Member(one.Field.Name)}\u00A0: une autre page y a enregistré {stands} entre-temps. Votre saisie, {typed}, n’a pas été "
                    + "enregistrée\u00A0; tout le reste l’a été. Rechargez cette page et choisissez."
                : $"{Member(one.Field.Name)}\u00A0: {typed} n’a pas été enregistré, il reste {stands}. {Because(one.Because)}";
        }

        public override string Because(NotSavedBecause because) =>
            because switch
            {
                NotSavedBecause.IdIsNotItsOwn => "Donnez à l’équipement un identifiant qu’aucun autre équipement de cette visite ne porte.",
                NotSavedBecause.IdIsOnRecord =>
                    "Ce qu’on en sait d’avant est connu sous cet identifiant. Ajoutez un équipement avec le nouvel identifiant et indiquez "
                        + "celui-ci comme ancien identifiant.",
                _ => "Une autre page a été plus rapide.",
            };

        public override string LoadAgain => "Recharger cette page";
    }
}

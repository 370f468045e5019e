using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Verifying;

namespace ExamDocs.Workbench.Pages;

/// <content>French.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class French : WorkbenchWords
    {
        public override string Tag => "fr";
        public override Terms Terms => Terms.French;

        public override string Desk => "Bureau";
        public override string Find => "Chercher";
        public override string Returns => "Retours";
        public override string Verify => "Contrôler des documents";
        public override string WhoYouAre => "Qui vous êtes";
        public override string SkipToContent => "Aller au contenu";
        public override string Caution =>
            "La notice du fabricant, la loi locale et le jugement de la personne qualifiée l’emportent, quoi que dise cette page.";
        public override string Back => "Retour";
        public override string Failed => "Cela n’a pas marché";
        public override string ProgramFault =>
            "Le programme a fait une erreur. Rien n’a été émis de ce fait\u00A0; ce que montre le terminal aide à la corriger.";

        public override string BringIn => "Apporter une visite";
        public override string BringInHow =>
            "Un classeur rempli (.xlsx), un enregistrement (.json), ce que le formulaire de terrain a enregistré (.json, .zip), ou des "
            + "tableaux (.csv)\u00A0; plusieurs fichiers d’une visite ensemble.";
        public override string DropHere => "Déposer des fichiers ici, ou les choisir";
        public override string BringInNow => "Apporter";
        public override string OnTheDesk => "Sur le bureau";
        public override string NothingOnTheDesk => "Rien encore. Ce que vous apportez reste ici jusqu’à son émission, et après.";
        public override string NothingDropped => "Aucun fichier n’est arrivé, ou il est vide. Choisissez-en un et recommencez.";

        public override string TooManyFiles(int most) => Text($"Au plus {most} fichiers à la fois\u00A0: apportez les autres ensuite.");

        public override string NotOfAKind(string name) =>
            $"{name} ne peut pas être apporté\u00A0: le nom doit finir par .xlsx, .json, .csv, .pdf ou .zip.";

        public override string Round(int number) => number == 1 ? "comme apporté" : Text($"corrigé {number - 1} fois");

        public override string RegisterAt(string place) => $"Registre\u00A0: {place}";

        public override string NextMend(int errors) =>
            Text($"Ensuite\u00A0: corriger {errors} {(errors == 1 ? "erreur" : "erreurs")}, ou émettre ce qui peut déjà l’être.");

        public override string NextDecide => "Ensuite\u00A0: regarder les résultats, puis émettre.";
        public override string NextIssued => "Terminé. Les documents sont plus bas\u00A0; imprimez les étiquettes et envoyez le reste.";
        public override string NextUnreadable => "Ensuite\u00A0: déposer un fichier lisible.";

        public override string Unreadable(string file, string why) => $"{file} ne peut pas être lu\u00A0: {why}";

        public override string Mend => "Corriger";
        public override string NothingToMend => "Rien à corriger n’a été trouvé.";
        public override string TypeInstead => "Que faire";
        public override string Error => "erreur";
        public override string Warning => "avertissement";
        public override string Note => "remarque";

        public override string Further(int number) => Text($"et {number} du même genre");

        public override string Annotated => "Télécharger le classeur avec les remarques";
        public override string AnnotatedHow =>
            "Chaque constat est un commentaire sur sa cellule. Corrigez-y, puis déposez le fichier ci-dessous.";
        public override string DropMended => "Déposer le fichier corrigé";
        public override string Decided => "Résultats";
        public override string Item => "Équipement";
        public override string OutcomeHead => "Résultat";
        public override string NotAfter => "Pas après";
        public override string NextBy => "Prochain examen au plus tard";
        public override string Why => "Pourquoi";
        public override string NoId => "(sans identifiant)";

        public override string RowsNotRead(int rows) =>
            Text($"{rows} {(rows == 1 ? "ligne n’a" : "lignes n’ont")} pas été lue{(rows == 1 ? "" : "s")}\u00A0: ")
            + "rien n’est décidé de ce qui y est saisi.";

        public override string Issue => "Émettre";
        public override string IssueHow =>
            "Rapports et étiquettes de prochain examen pour ce qui peut servir\u00A0; avis de défectuosité et étiquettes d’interdiction "
            + "pour ce qui ne le peut pas.";
        public override string IssueNow => "Émettre les documents";
        public override string PerItem => "Un rapport par équipement";
        public override string Reason => "Motif de la correction";
        public override string ReasonHow =>
            "Seulement si une version antérieure a été émise\u00A0; le motif est imprimé sur ce qui la remplace.";

        public override string IssuingGoesOn => "Vous pouvez fermer cette page\u00A0: cela continue.";
        public override string Stop => "Arrêter après le document en cours";

        public override string Stopped(string why) => $"Arrêté\u00A0: {why}.";

        public override string Issued(int documents) =>
            Text($"{documents} {(documents == 1 ? "document est émis" : "documents sont émis")}.");

        public override string Refused => "Non émis";
        public override string Documents => "Documents";
        public override string AllAsZip => "Tout dans un dossier (zip)";
        public override string Labels => "Étiquettes";
        public override string LabelsHow => "Imprimer à la taille réelle, sans mise à l’échelle.";
        public override string Stock => "Imprimé sur";
        public override string FirstPlace => "Première place libre de la planche";
        public override string MakeSheet => "Faire la planche";
        public override string NoLabels => "Aucune étiquette de ce genre n’est requise.";
        public override string MendedSince => "Quelque chose a été corrigé depuis\u00A0: émettez de nouveau.";

        public override string FindHow =>
            "Identifiant, numéro de série, marque du propriétaire, fabricant, modèle, employeur, numéro de document, ou code lu sur une "
            + "étiquette.";
        public override string FindNow => "Chercher";

        public override string NothingFound(string asked) =>
            $"Le registre ne sait rien de «\u00A0{asked}\u00A0». Tenez l’équipement pour jamais examiné.";

        public override string NoneIsMarked(string asked) =>
            $"Aucun équipement n’est marqué «\u00A0{asked}\u00A0». Ceux-ci en contiennent les mots\u00A0:";

        public override string SpeltLike(string id) => $"Presque écrit comme {id}\u00A0:";

        public override string Found(int shown, int inAll) =>
            shown == inAll
                ? Text($"{inAll} {(inAll == 1 ? "équipement" : "équipements")}, les pires d’abord")
                : Text($"{shown} équipements sur {inAll}\u00A0; précisez pour en trouver moins");

        public override string Serial => "Numéro de série";
        public override string Maker => "Fabricant et modèle";
        public override string Owner => "Propriétaire";
        public override string History => "Historique";
        public override string NotRecorded => "non enregistré";
        public override string ReturnsHow => "Scannez ou tapez un marquage après l’autre. Ce qui ne doit pas servir vient d’abord.";
        public override string Scan => "Scanner ou taper un marquage";
        public override string Add => "Ajouter";
        public override string Unknown => "INCONNU\u00A0: NE PAS UTILISER";
        public override string UnknownWhy => "Le registre ne connaît aucun équipement de ce marquage.";

        public override string ListIsFull(int most) =>
            Text($"La liste est pleine\u00A0: {most} équipements. Imprimez-la, puis commencez-en une autre.");

        public override string StandingIs(Standing standing) =>
            standing switch
            {
                Standing.Withdrawn => "NE PAS UTILISER",
                Standing.Held => "EN ATTENTE DE DÉCISION\u00A0: NE PAS UTILISER",
                Standing.Overdue => "EXAMEN EN RETARD\u00A0: NE PAS UTILISER",
                Standing.NotIssued => "AUCUN RAPPORT EN VIGUEUR\u00A0: NE PAS UTILISER",
                _ => "En service",
            };

        public override string OutcomeIs(Outcome outcome) =>
            outcome switch
            {
                Outcome.Fit => "maintenu en service",
                Outcome.FitUntil => "maintenu jusqu’à une date",
                Outcome.Undetermined => "en attente de décision",
                _ => "retiré du service",
            };

        public override string Print => "Imprimer cette liste";

        public override string VerifyHow =>
            "Déposez des documents (PDF) pour voir s’ils sont authentiques, entiers et en vigueur. Rien n’en est gardé.";
        public override string VerifyNow => "Contrôler";

        public override string VerdictIs(Verdict verdict) =>
            verdict switch
            {
                Verdict.Valid => "Valable",
                Verdict.NotValid => "NON VALABLE",
                _ => "Impossible à dire",
            };

        public override string Settle => "Ce qui trancherait";

        public override string WhoHow =>
            "Demandé une seule fois. Cela figure dans l’en-tête, et est proposé quand vous enregistrez une visite.";
        public override string Name => "Votre nom";
        public override string Qualifications => "Qualifications";
        public override string Address => "Adresse";
        public override string Firm => "Entreprise de l’en-tête";
        public override string Contact => "Téléphone pour les questions";
        public override string Language => "Langue";
        public override string Keep => "Garder";
    }
}

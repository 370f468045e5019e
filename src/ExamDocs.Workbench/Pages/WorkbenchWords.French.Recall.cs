using ExamDocs.Core.Recalls;

namespace ExamDocs.Workbench.Pages;

/// <content>French, for the pages that look up a maker's safety notice.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class French
    {
        public override string Recall => "Rappel";
        public override string RecallHow =>
            "Un fabricant a écrit : retirez-les du service. Déposez l’avis comme fichier ou saisissez-le. Chaque "
            + "équipement du registre est alors concerné, pas concerné, ou on ne peut pas le dire.";
        public override string DropNotice => "Déposez l’avis ici (.json)";
        public override string LookThrough => "Parcourir le registre";
        public override string TypeNotice => "Saisir l’avis";
        public override string NoticeMaker => "Fabricant, tel que l’avis le nomme";
        public override string NoticeAlsoCalled => "Autres noms du fabricant, un par ligne";
        public override string NoticeReference => "Référence du fabricant";
        public override string NoticeOn => "Date de l’avis";
        public override string NoticeDemands => "Ce que le fabricant demande";
        public override string NoticeReadAt => "Où vous l’avez lu";
        public override string NoticeNames => "Ce qu’il désigne";
        public override string NoticeNamesHow =>
            "Tout ce que vous saisissez doit être vrai ; parmi les plages, modèles de numéro et numéros isolés, un "
            + "suffit. Laissez vide ce que le fabricant ne restreint pas. Pour plusieurs sortes d’équipement, déposez un "
            + "fichier.";
        public override string NoticeModels => "Modèles, un par ligne";
        public override string NoticePartNumbers => "Numéros de pièce, un par ligne";
        public override string NoticeSerials => "Numéros de série isolés, un par ligne";
        public override string NoticePatterns => "Modèles de numéro de série, un par ligne : * quelconque, ? un caractère, # un chiffre";
        public override string NoticeBatches => "Numéros de lot, un par ligne";
        public override string MadeFrom => "Fabriqué à partir de, inclus (2024-02)";
        public override string MadeTo => "Fabriqué jusqu’à, inclus";
        public override string CheckCharacters => "Caractères finaux qui ne font que contrôler le numéro";
        public override string NoticesBefore => "Consultés auparavant";
        public override string TakeOut => "Retirer du service";
        public override string TakeOutNow => "Émettre les papiers";
        public override string NothingToTakeOut => "Plus rien à retirer : ce que l’avis désigne l’est déjà.";
        public override string NextTakeOut => "Ensuite : regardez ce qui est concerné, puis émettez les papiers et posez les étiquettes.";
        public override string SweepRecord => "Télécharger le procès-verbal du rappel";
        public override string AffectedHead => "Concernés";
        public override string OpenHead => "Impossible à dire";
        public override string NotAffectedHead => "Pas concernés";
        public override string ShowThem => "Les afficher";
        public override string Today => "Aujourd’hui";
        public override string NoItemsOnRecord => "Le registre n’a aucun équipement.";

        public override string RangeFrom(int number) => Text($"Numéros de série {number} : de, inclus");

        public override string RangeTo(int number) => Text($"Numéros de série {number} : à, inclus");

        public override string TakeOutHow(int withdraw, int hold) =>
            Text($"{withdraw} à retirer, chacun avec un avis et une étiquette de retrait ; {hold} à retenir, chacun avec une étiquette. ")
            + "Il est consigné que personne ne les a regardés et que vous les retirez parce que le fabricant le demande.";

        public override string RecallIs(RecallVerdict verdict) =>
            verdict switch
            {
                RecallVerdict.Affected => "CONCERNÉ : NE PAS UTILISER",
                RecallVerdict.CannotTell => "IMPOSSIBLE À DIRE : NE PAS UTILISER avant que quelqu’un ait regardé",
                _ => "pas concerné",
            };
    }
}

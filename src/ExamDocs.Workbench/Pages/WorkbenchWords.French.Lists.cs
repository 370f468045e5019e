using ExamDocs.Intake.OwnList.Words;

namespace ExamDocs.Workbench.Pages;

/// <content>French, for the page that takes a list of the user's own.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class French
    {
        public override string TakeAsList => "Prendre comme votre propre liste de matériel\u00A0: en associer les colonnes";
        public override string ListHow =>
            "Ceci est pris pour votre propre liste de matériel. Dites ce que sont ses colonnes et ses mots\u00A0; les propositions sont "
            + "déjà dans les champs. Rien dans la liste ne décide de quoi que ce soit\u00A0: un ancien «\u00A0bon\u00A0» reste une "
            + "remarque, et ce que la liste dit hors d’usage entre comme retiré du service.";
        public override string ListFormIncomplete => "L’envoi n’est pas entier, et rien n’en a été gardé. Choisissez de nouveau.";
        public override string NextNoItems =>
            "Aucune ligne de la liste ne porte sur un équipement. Voyez si les colonnes sont ce que vous dites.";
        public override string NextLookAtResult =>
            "Ensuite\u00A0: regarder ci-dessous ce qui en sort, puis enregistrer la visite ou télécharger le classeur.";
        public override string Columns => "Colonnes";
        public override string ColumnHead => "Colonne";
        public override string HoldsHead => "Contient, par exemple";
        public override string SeemsHead => "Semble être";
        public override string TakeAsHead => "La prendre comme";
        public override string ChooseOne => "choisir";
        public override string Meanings => "Ce que veulent dire ses mots";
        public override string DatesQuestion => "Dans quel ordre les dates sont-elles saisies\u00A0?";
        public override string MakersQuestion => "Fabricant et modèle sont dans une même colonne";
        public override string SplitMakers => "les séparer d’après les fabricants que montre la liste";
        public override string TakeWhole => "prendre chaque valeur entière comme modèle";
        public override string AsOf => "Hors d’usage depuis, si la liste ne donne pas de jour";
        public override string AsOfHow => "Votre visite doit avoir lieu un jour plus tard.";
        public override string KindsOfKit => "Genres de matériel";
        public override string WordHead => "Mot";
        public override string UnknownKind => "inconnu\u00A0: reste comme dans la liste";
        public override string OutOfUseHeading => "En service ou hors d’usage";
        public override string OutOfUseHow =>
            "Un mot inconnu compte contre l’équipement tant que vous ne dites pas le contraire\u00A0: il entre comme retiré, à libérer.";
        public override string NotSettledUse => "inconnu\u00A0: compte comme hors d’usage";
        public override string TakeAnswers => "Garder les réponses et montrer ce qui en sort";
        public override string WhatComesOut => "Ce qui en sort";
        public override string FirstSettle => "Rien encore\u00A0: choisissez d’abord ce qui est marqué ci-dessus.";
        public override string NothingIsExamined => "Rien ne compte comme examiné\u00A0: tout reste à examiner.";
        public override string ComesInAs => "Entre comme";
        public override string ToExamine => "à examiner";
        public override string ToKnow => "À savoir";
        public override string NotTaken => "Lignes non prises, et pourquoi";
        public override string RecordList => "Enregistrer la visite ici";
        public override string DownloadWorkbook => "Télécharger le classeur";
        public override string DownloadMap => "Télécharger ces réponses, pour les employer avec --map";
        public override string ListIsOnlyRead => "Votre liste est seulement lue\u00A0; la visite ou le classeur est fait à neuf.";

        public override string ListCalled(string name) => $"Votre propre liste\u00A0: {name}";

        public override string NotADayBefore(string typed) =>
            $"«\u00A0{typed}\u00A0» n’est pas un jour avant aujourd’hui. Toutes les autres réponses ont été gardées.";

        public override string NextSettle(int number) => Text($"Ensuite\u00A0: choisir ce qui est marqué ({number}).");

        public override string TakeColumnAs(string heading) => $"Prendre la colonne {heading} comme";

        public override string TakeWordAs(string word) => $"Prendre {word} comme";

        public override string ColourCalled(string colour) => $"Lignes d’une couleur à part ({colour})";

        public override string SurenessIs(Sureness sure) =>
            sure switch
            {
                Sureness.Yes => "sûr",
                Sureness.Likely => "probable",
                _ => "supposé",
            };

        public override string UseIs(UseMeaning meaning) =>
            meaning switch
            {
                UseMeaning.Remark => "rien contre\u00A0: une remarque",
                UseMeaning.Stored => "en stock",
                UseMeaning.Lost => "perdu",
                UseMeaning.Withdrawn => "hors d’usage\u00A0: entre comme retiré",
                _ => "détruit\u00A0: entre comme retiré",
            };

        public override string ForExample(IEnumerable<string> samples) => $"Par exemple\u00A0: {string.Join("\u00A0; ", samples)}";

        public override string RowsOf(int rows) => Text($"{rows} {(rows == 1 ? "ligne" : "lignes")}");

        public override string NotShown(int rows) =>
            Text($"{rows} autres ne sont pas montrées\u00A0; elles restent comme proposé. Ce qui y est inconnu compte contre ses ")
            + "équipements.";

        public override string ComeInWithdrawn(int items) =>
            Text($"{items} {(items == 1 ? "entre" : "entrent")} comme retiré{(items == 1 ? "" : "s")}, ")
            + "jusqu’à libération par une personne qualifiée.";

        public override string RowNotTaken(string sheet, int row, string why) => Text($"{sheet}, ligne {row}\u00A0: {why}");
    }
}

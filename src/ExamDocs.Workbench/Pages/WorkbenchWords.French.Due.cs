namespace ExamDocs.Workbench.Pages;

/// <content>French, for what falls due and for spares.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class French
    {
        public override string Due => "Échéances";
        public override string DueHow =>
            "Ce qui doit être vérifié d’un jour à un autre, d’après les décisions enregistrées à ce "
            + "jour. Cette "
            + "page ne décide rien.";
        public override string DueFrom => "Du, inclus";
        public override string DueTo => "Au, inclus";
        public override string DueShow => "Afficher";
        public override string DuePdf => "Le plan en PDF";
        public override string DueWorkbook => "Un classeur";
        public override string DueCalendar => "Un fichier de calendrier";
        public override string DueApart => "À ne pas utiliser";
        public override string DueVisits => "Visites proposées";
        public override string DueVisitsHow =>
            "Chacune à sa date ou avant. Les jours fériés et les fins de semaine ne sont pas pris en compte.";
        public override string DueOnOrBefore => "Au plus tard le";
        public override string DueWhere => "Où";
        public override string DueItems => "Équipements";
        public override string DueStart => "Commencer une visite pour ceux-ci";
        public override string DueStartHow => "Elle reprend ce qui est à échéance jusqu’au dernier jour, avec ce qui est en retard.";
        public override string DueList => "Équipement par équipement";
        public override string DueDay => "Échéance";
        public override string DueItem => "Équipement";
        public override string DueCategory => "Catégorie";
        public override string DueToKnow => "À savoir";
        public override string DueNoTimes =>
            "Les enregistrements ne contiennent pas d’heures\u00A0: la durée des visites passées ne peut pas en " + "être mesurée.";
        public override string Spares => "Pièces de rechange";
        public override string SparesHow =>
            "Pièces à remplacer jusqu’à un jour\u00A0: retirées et encore montées, en fin de service, ou dont "
            + "l’usure est projetée. Une projection est une proposition\u00A0; elle ne devient pas une limite.";
        public override string SparesTo => "Jusqu’au, inclus";
        public override string SparesStock => "Ce qui est en stock";
        public override string SparesStockHow =>
            "Un classeur ou .csv avec une colonne «\u00A0référence\u00A0» et une colonne "
            + "«\u00A0quantité\u00A0». "
            + "Il est seulement lu.";
        public override string SparesOrder => "La commande en classeur";
        public override string SparesNotRecorded => "Aucune référence autorisée n’est indiquée\u00A0: demander au fabricant";
        public override string SparesBy => "Nécessaire pour le";
        public override string SparesPart => "Pièce";
        public override string SparesOn => "Montée sur";
        public override string SparesWhy => "Pourquoi";

        public override string DueAndApart(int due, int apart) => Text($"À vérifier\u00A0: {due}\u00A0; à ne pas utiliser\u00A0: {apart}");

        public override string DueMore(int more) => Text($"{more} de plus sont dans le classeur.");

        public override string SparesCounted(int needed, int toOrder) =>
            Text($"À remplacer\u00A0: {needed}\u00A0; à commander\u00A0: {toOrder}");

        public override string SparesLine(int needed, int fromStock, int toOrder) =>
            Text($"Nécessaires\u00A0: {needed}\u00A0; du stock\u00A0: {fromStock}\u00A0; à commander\u00A0: {toOrder}");

        public override string PartNumbers(IReadOnlyList<string> numbers) => string.Join(" ou ", numbers);
    }
}

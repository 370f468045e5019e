using System.Globalization;

namespace ExamDocs.Templates.Lessons.Wording;

/// <inheritdoc />
internal sealed class French : LessonsPhrases
{
    public override string Title => "Ce que les enregistrements apprennent";
    public override string Lead => "Compté à partir des vérifications d’un registre. Ce n’est pas un rapport et cela n’a pas de numéro.";
    public override string Whose => "Équipements de";
    public override string Everybody => "tous ceux du registre";
    public override string Counted => "Compté";

    public override string VisitsAndItems(int visits, int items) => $"visites : {N(visits)}, équipements : {N(items)}";

    public override string Period => "Vérifiés";
    public override string ThisRegisterOnly =>
        "Ces nombres ne valent que pour ce registre. Ils ne décident d’aucun équipement et ne fixent aucune limite : un "
        + "équipement est apte ou retiré d’après sa propre vérification.";

    public override string RatesHeading => "Combien sont retirés";

    public override string RatesLead(int least) =>
        "Équipements dont le service a fini par un retrait pour usure ou défaut, parmi tous ceux qui ont été vérifiés. Ce qui "
        + "est périmé, perdu ou retiré à cause d’une pièce compte comme non retiré. La barre est l’intervalle à 95 % (Wilson) : "
        + "là où deux barres se recouvrent "
        + $"largement, l’écart peut être dû au hasard. Les groupes de moins de {N(least)} sont sans barre.";

    public override string Group => "Groupe";
    public override string Items => "Équipements";
    public override string Withdrawn => "Retirés";
    public override string Share => "Part";
    public override string Interval => "Intervalle à 95 %";
    public override string TooFew => "trop peu pour comparer";

    public override string TooFewToCompare(int least) =>
        $"Trop peu pour comparer : moins de deux groupes ont {N(least)} équipements ou plus.";

    public override string MoreInWorkbook(int groups) => $"Le classeur a {N(groups)} groupes de plus.";

    public override string By(GroupedBy by) =>
        by switch
        {
            GroupedBy.Everything => "Tous les ponts en corde",
            GroupedBy.Category => "Catégorie",
            GroupedBy.Model => "Modèle",
            GroupedBy.Hardware => "Pièce métallique sur le pont",
            GroupedBy.Ground => "Terrain où le pont est utilisé",
            _ => "Âge à la vérification",
        };

    public override string Years(string span) => $"{span} ans";

    public override string SurvivalHeading => "Combien de temps durent les ponts en corde";
    public override string SurvivalLead =>
        "La part des ponts en corde qui ne sont pas encore retirés pour usure ou défaut, par mois depuis la première "
        + "utilisation (Kaplan-Meier ; erreur de Greenwood, intervalle log-log, 95 %). Un petit trait vertical marque les ponts "
        + "encore en service à leur dernière vérification, ou sortis pour une autre raison. Le trait est mince là où moins de "
        + "dix sont encore suivis : un seul pont le déplace beaucoup. Un retrait compte le jour où il a été constaté : l’usure "
        + "est plus ancienne.";
    public override string NoBridges =>
        "Le registre n’a pas de pont en corde dont la première utilisation est connue et qui a été vérifié après.";

    public override string LeftOut(int bridges) =>
        $"Laissés de côté : {N(bridges)} ponts en corde dont la première utilisation n’est pas connue, ou qui n’ont pas été suivis.";

    public override string ManyComparisons =>
        "Face aux autres : combien de fois des ponts tous semblables différeraient autant par hasard (test du log-rank). Sur "
        + "vingt comparaisons, environ une est sous 0,05 par le seul hasard. Utilisateurs, terrain et pièces vont ensemble : un "
        + "écart ne prouve pas sa cause.";
    public override string AllBridges => "Tous";
    public override string Bridges => "Ponts";
    public override string Median => "La moitié dure jusqu’à, mois (95 %)";

    public override string LeftAfter(int months) => $"Restent après {N(months)} mois (95 %)";

    public override string PerHundredYears => "Retirés pour 100 années de pont (95 %, exact)";
    public override string AgainstOthers => "Face aux autres, p";
    public override string NotReached => "pas atteint";

    public override string OnlyAtRisk(int bridges) => $"{N(bridges)} seulement encore suivis alors";

    public override string MonthsOfUse => "Mois depuis la première utilisation";

    public override string PlotTitle(string by) => $"Part des ponts en corde restants par mois depuis la première utilisation. {by}";

    public override string WearHeading => "À quelle vitesse les ponts en corde s’amincissent";
    public override string WearLead =>
        "Millimètres de diamètre par mois à l’endroit le plus mince, pour les ponts mesurés trois jours ou plus (pente de "
        + "Theil et Sen). Chaque cercle est un pont, le cadre contient la moitié du milieu. Sous zéro, un pont a épaissi.";
    public override string MedianWear => "Médiane, mm par mois";
    public override string MiddleHalf => "Moitié du milieu, mm par mois";

    public override string ReasonsHeading => "Pourquoi ils sont retirés";
    public override string ReasonsLead =>
        "Critères avec un défaut ou un doute à la vérification qui a mis fin au service. Un équipement peut en avoir plusieurs.";
    public override string NoReasons => "Aucun équipement n’a été retiré pour usure ou défaut.";
    public override string Criterion => "Critère";

    public override string AgreementHeading => "Deux vérificateurs voient-ils la même chose ?";
    public override string AgreementLead =>
        "Équipements que deux vérificateurs ont regardés en 31 jours : les deux ont-ils vu quelque chose pour un critère, ou "
        + "aucun ? Un kappa bas est une raison de regarder quelques équipements ensemble et de convenir de ce qui est à noter. "
        + "Il ne dit pas qui a raison et ne mesure le travail de personne : c’est pourquoi il n’y a pas de noms ici. Les "
        + "critères où toutes les réponses étaient les mêmes sont laissés de côté.";
    public override string NoPairs =>
        "Aucun équipement n’a été vérifié par deux vérificateurs en 31 jours. Pour savoir si vous vous accordez, faites "
        + "vérifier quelques équipements encore une fois par un collègue.";
    public override string AllTogether => "Tous ensemble";
    public override string Pairs => "Paires";
    public override string Alike => "Même réponse";
    public override string Kappa => "Kappa";

    public override IReadOnlyList<string> Cautions { get; } =
    [
        "Peu de nombres ne prouvent rien. Ce qui sert plus durement est retiré plus tôt : ne comparer que ce qui sert de même " + "façon.",
        "Aucun nombre ici ne raccourcit ni n’allonge une durée de vie donnée par le fabricant ou un délai de la loi.",
        "Un équipement est suivi par son identifiant et son propriétaire. Celui qui a changé d’identifiant compte deux fois.",
    ];

    private static string N(int number) => number.ToString(CultureInfo.InvariantCulture);
}

namespace ExamDocs.Templates.FirstVisit.Wording;

/// <inheritdoc />
internal sealed class French : FirstVisitPhrases
{
    public override string Title => "Fiches pour une première visite";
    public override string Lead =>
        "Pour noter une vérification à la main quand aucun enregistrement antérieur n’est disponible. Ce n’est pas "
        + "un rapport, et elles n’ont pas de numéro.";
    public override string HowToWrite =>
        "Une étoile marque ce qu’il faut à un équipement pour être apte, ou à un rapport pour être fait. Écrire "
        + "les dates année-mois-jour\u00A0: 2026-05-11. Si seul le mois ou l’année est connu, l’écrire. Laisser vide "
        + "ce que personne ne sait\u00A0; une ligne vide est une valeur manquante, jamais une réponse.";
    public override string Visit => "Visite";
    public override string Examiner => "Vérificateur";
    public override string OtherPerson => "Autre personne qui signe ou surveille";
    public override string Models => "Modèles\u00A0: ce que tous les équipements d’un modèle ont en commun";
    public override string HowToModels =>
        "Un bloc par modèle. N’écrire que ce que dit la notice du fabricant, avec le document, la révision et la "
        + "page. Aucune limite n’est supposée là où rien n’est écrit\u00A0; un équipement textile sans limite reste "
        + "non déterminé.";
    public override string OneBox =>
        "Une case par ligne\u00A0; une ligne ouverte n’est pas une réponse. Noté, doute et défaut demandent une "
        + "remarque. En cas de doute, cocher doute.";
    public override string HowToMeasure =>
        "Deux mesures à chaque endroit, à angle droit\u00A0; endroits en mm depuis une extrémité que vous marquez.";
    public override string MoreOverleaf => "Les autres\u00A0: au verso.";
    public override string DefectsOverleaf =>
        "Essais faits, et leurs résultats. Défauts qui sont, ou pourraient devenir, un danger\u00A0: au verso";
    public override IReadOnlyList<string> YesAndNo { get; } = ["oui", "non"];
    public override IReadOnlyList<string> Cautions { get; } =
    [
        "Ce qui est écrit ici ne compte qu’une fois inscrit dans l’enregistrement de la visite et contrôlé.",
        "Chaque réponse est celle du vérificateur et part de l’équipement. Rien n’est coché d’avance.",
    ];

    public override string Label(FormLine line) =>
        OfVisit(line) ?? OfItem(line) ?? throw new ArgumentOutOfRangeException(nameof(line), line, null);

    private static string? OfVisit(FormLine line) =>
        line switch
        {
            FormLine.Reference => "Votre référence de la visite",
            FormLine.Regime => "Régime applicable, par exemple fr",
            FormLine.EmployerName => "Employeur\u00A0: nom",
            FormLine.EmployerAddress => "Employeur\u00A0: adresse postale",
            FormLine.PremisesName => "Lieu\u00A0: nom",
            FormLine.PremisesAddress => "Lieu\u00A0: adresse postale",
            FormLine.HiredFromName => "Loué à\u00A0: nom, si loué",
            FormLine.HiredFromAddress => "Loué à\u00A0: adresse postale",
            FormLine.AuthorityName => "Autorité compétente\u00A0: nom, si connue",
            FormLine.AuthorityAddress => "Autorité compétente\u00A0: adresse postale",
            FormLine.ExaminedOn => "Vérifié le",
            FormLine.ReportedOn => "Date du rapport",
            FormLine.Basis => "Motif de la vérification. En écrire un autre à côté de l’équipement",
            FormLine.PersonId => "Nom court, par exemple v1",
            FormLine.PersonName => "Nom complet",
            FormLine.PersonAddress => "Adresse postale",
            FormLine.Qualifications => "Qualifications qui rendent la personne compétente",
            FormLine.SelfEmployed => "Indépendant",
            FormLine.ItsEmployerName => "Sinon\u00A0: nom de l’employeur",
            FormLine.ItsEmployerAddress => "Adresse postale de l’employeur",
            _ => null,
        };

    private static string? OfItem(FormLine line) =>
        line switch
        {
            FormLine.ItemId => "Identifiant de l’équipement",
            FormLine.Serial => "Numéro de série ou de lot",
            FormLine.OwnersMark => "Marque du propriétaire",
            FormLine.Maker => "Fabricant",
            FormLine.Model => "Modèle",
            FormLine.PartNumber => "Référence",
            FormLine.Manufactured => "Date de fabrication",
            FormLine.FirstUsed => "Première utilisation",
            FormLine.NeverUsed => "Jamais utilisé",
            FormLine.LastExamined => "Dernière vérification approfondie",
            FormLine.FittedTo => "Monté sur (identifiant)",
            FormLine.Purpose => "Usage",
            FormLine.Description => "Description",
            FormLine.SafeWorkingLoad => "Charge maximale d’utilisation, unité",
            FormLine.MarkedStrength => "Résistance marquée",
            FormLine.NotMarked => "Aucune marquée",
            FormLine.SourceTitle => "Notice du fabricant\u00A0: titre du document",
            FormLine.SourceRevision => "Révision ou date",
            FormLine.SourcePage => "Page",
            FormLine.MaxUseYears => "Utilisation, années",
            FormLine.MaxStorageYears => "Stockage, années",
            FormLine.MaxAgeYears => "Âge maximal, années",
            FormLine.MaxCleanings => "Nettoyages, maximum",
            FormLine.IntervalMonths => "Intervalle, mois",
            FormLine.NoLimit => "Sans limite selon le fabricant",
            FormLine.EventEndsService => "Hors service après tout événement, selon le fabricant",
            FormLine.InstructionsSought => "Notice introuvable\u00A0: comment elle a été cherchée",
            FormLine.UseUntil => "Alors\u00A0: utiliser jusqu’au",
            FormLine.NominalDiameter => "Diamètre, mm",
            FormLine.DiameterTolerance => "Tolérance, ±\u00A0%",
            FormLine.PermittedParts => "Pièces admises",
            FormLine.MinimumTail => "Bout libre, mm",
            FormLine.Retying => "Qui peut renouer",
            FormLine.Standards => "Normes marquées",
            _ => null,
        };
}

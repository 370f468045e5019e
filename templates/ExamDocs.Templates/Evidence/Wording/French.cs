using ExamDocs.Core.Determination.CaseForService;
using ExamDocs.Core.Records;

namespace ExamDocs.Templates.Evidence.Wording;

/// <inheritdoc />
internal sealed class French : EvidencePhrases
{
    public override string Title => "Dossier justificatif";

    public override string Lead =>
        "Ce sur quoi reposent les résultats de cette vérification\u00A0: les éléments pour et contre le maintien en service de chaque "
        + "équipement, les mesures et la source de chaque règle. Les résultats figurent dans le rapport signé\u00A0; ce dossier n’est "
        + "pas un rapport.";

    public override string Employer => "Employeur";
    public override string Premises => "Lieu de la vérification";
    public override string Items => "Équipements";
    public override string NotInThisFile => "Absents de ce dossier, car impossibles à imprimer en entier";
    public override string Purchased => "Date d’achat";
    public override string LastExamined => "Dernière vérification";
    public override string Examiner => "Vérificateur";
    public override string Law => "Vérifié selon";
    public override string Exposure => "Usage et exposition";
    public override string ColumnRule => "Règle";
    public override string ColumnReason => "Motif du résultat";
    public override string ColumnSource => "Source";
    public override string ColumnStep => "Étape";
    public override string ColumnBearing => "Portée";
    public override string ColumnEvidence => "Élément";
    public override string ColumnCriterion => "Critère";
    public override string ColumnClass => "Classe";
    public override string Position => "Position, mm";
    public override string Readings => "Mesures, mm";
    public override string Mean => "Moyenne, mm";
    public override string Uncertainty => "± 95\u00A0%, mm";
    public override string Differ => "Écart entre mesures, mm";
    public override string Remark => "Remarque";
    public override string Series => "Série";
    public override string Points => "Vérifications";
    public override string PerYear => "Variation, mm par an";
    public override string Limit => "Limite du fabricant, mm";
    public override string ByLine => "Atteinte selon la droite de Theil-Sen";
    public override string ByBand => "Atteinte selon la bande de prévision";
    public override string Smallest => "plus petite moyenne";
    public override string Largest => "plus grande moyenne";
    public override string SourcesHeading => "Sources";
    public override string LawHeading => "Textes applicables";
    public override string RulesHeading => "Règles qui ont donné un motif ou un constat";
    public override string LegendHeading => "Comment lire ce dossier";

    public override IReadOnlyList<string> Legend { get; } =
    [
        "Les règles W retirent un équipement, les règles D fixent son dernier jour d’utilisation, les règles U disent ce que "
            + "l’enregistrement laisse en suspens. Les autres codes sont des constats des contrôles.",
        "Les critères décisifs mettent fin au service dès qu’un défaut est trouvé\u00A0; les critères à apprécier sont "
            + "pesés avec le reste\u00A0; les critères indicatifs notent l’usure normale. Un doute compte comme un défaut.",
        "Les éléments sont donnés dans l’ordre où ils ont été pesés. Ce qui est «\u00A0noté\u00A0» ne pèse rien par " + "lui-même.",
    ];

    public override IReadOnlyList<string> Cautions { get; } =
    [
        "Un équipement retiré le reste, quoi qui parle ici en sa faveur. Ce dossier étaye le rapport de la vérification et ne le "
            + "remplace pas.",
    ];

    public override string ReasonsHeading(string item) => $"{item}\u00A0: motifs";

    public override string CaseHeading(string item) => $"{item}\u00A0: éléments pour et contre le maintien en service";

    public override string DiametersHeading(string item) => $"{item}\u00A0: diamètre le long de la corde";

    public override string TrendHeading(string item) => $"{item}\u00A0: diamètre d’une vérification à l’autre";

    public override string CriteriaHeading(string category) => $"Critères\u00A0: {category}";

    public override string Step(Heading heading) =>
        heading switch
        {
            Heading.Identity => "Identité",
            Heading.History => "Historique",
            Heading.Decisive => "Critères décisifs",
            Heading.Judged => "Critères à apprécier",
            Heading.Advisory => "Critères indicatifs",
            Heading.Measurements => "Mesures",
            Heading.Limits => "Limites",
            _ => "Doutes, et ce qui les a levés",
        };

    public override string Bearing(Bearing bearing) =>
        bearing switch
        {
            Core.Determination.CaseForService.Bearing.For => "pour",
            Core.Determination.CaseForService.Bearing.Against => "contre",
            Core.Determination.CaseForService.Bearing.Open => "en suspens",
            _ => "noté",
        };

    public override string Routine(ObservedState state) =>
        state switch
        {
            ObservedState.Clear => "rien à signaler",
            ObservedState.NoSign => "personne à interroger\u00A0; aucun signe trouvé",
            _ => "sans objet",
        };

    protected override string Outside => "hors des limites du fabricant";

    protected override string StandsOut => "s’écarte des autres";

    protected override string TooClose => "dans les limites, mais trop près pour conclure";
}

using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Common;
using NodaTime;

namespace ExamDocs.Templates.CheckSheet.Wording;

/// <inheritdoc />
internal sealed class French : CheckSheetPhrases
{
    public override string Title => "Fiche de vérification";
    public override string TitleOfSeveral => "Fiches de vérification";

    public override string Lead =>
        "Pour noter une vérification à la main. Ce n’est pas un rapport, et elle ne dit rien de l’état de l’équipement "
        + "avant d’être remplie.";

    public override string Withdrawn => "Retiré du service\u00A0: ne pas utiliser";
    public override string Held => "En attente de décision\u00A0: ne pas utiliser";
    public override string WithdrawnSince => "Retiré du service à la vérification du";
    public override string HeldSince => "État de l’enregistrement après la vérification du";

    public override string ReleaseByPerson =>
        "Il reste retiré, quoi que dise cette fiche, jusqu’à ce qu’une personne qualifiée le remette en service par "
        + "écrit, avec motifs.";

    public override string NeverRelease =>
        "Il ne revient jamais en service, sauf remise en service qui montre que l’enregistrement était erroné.";
    public override string ReleaseHold => "Il ne peut être utilisé que quand une personne qualifiée l’a vérifié et l’a confirmé par écrit.";
    public override string LastOutcome => "Résultat de la dernière fois";
    public override string LastExamined => "Dernière vérification";
    public override string LastExaminer => "Vérifié par";
    public override string NextBy => "Prochaine échéance";
    public override string NotAfter => "Ne pas utiliser après le";
    public override string Status => "Situation";
    public override string Criteria => "Ce qui est vérifié";

    public override string HowToTick =>
        "Une case par ligne. Une ligne laissée vide n’est pas une réponse et laisse l’équipement en attente de décision. Noté, "
        + "doute et défaut demandent une remarque. En cas de doute, cocher doute\u00A0: cela retire l’équipement du "
        + "service.";

    public override string NotInCatalogue =>
        "Le catalogue n’a pas de critères pour cette catégorie. Écrire sur chaque ligne ce qui a été vérifié.";

    public override string LastTime => "La dernière fois\u00A0:";
    public override string NoAnswer => "aucune réponse enregistrée";
    public override string Note => "Remarque";
    public override string Optional => "facultatif";
    public override string Examined => "Ce qui a été vérifié";
    public override string Diameters => "Diamètre le long de la corde";

    public override string HowToMeasure =>
        "Deux mesures à chaque endroit, à angle droit l’une de l’autre (EN 892:2012 5.3.1, copie non officielle), sans "
        + "serrer la corde. Positions en millimètres depuis la même extrémité que la dernière fois.";

    public override string Station => "Endroit";
    public override string Position => "Position, mm";
    public override string FirstReading => "Mesure, mm";
    public override string SecondReading => "À angle droit, mm";
    public override string LastMean => "Moyenne la dernière fois, mm";
    public override string ReferenceEnd => "Positions comptées depuis cette extrémité\u00A0:";

    public override string NoNominal =>
        "Aucun diamètre nominal du fabricant n’est enregistré\u00A0: les mesures sont comparées entre elles.";

    public override string OpenDefects => "Trouvé la dernière fois\u00A0: encore là, ou corrigé\u00A0?";
    public override string StillThere => "encore là";
    public override string PutRight => "corrigé";
    public override string PutRightBy => "Corrigé par, le, preuve";
    public override string Defects => "Défauts qui sont, ou pourraient devenir, un danger";
    public override string MoreDefects => "Plus de deux\u00A0: continuer sur une seconde fiche.";
    public override string Part => "Pièce";
    public override string What => "Ce qui ne va pas";
    public override string Danger => "Danger";
    public override string DangerNow => "maintenant";
    public override string DangerLater => "plus tard, d’ici au (date)";
    public override string Imminent => "risque imminent de blessure grave";
    public override string Remedy => "Réparation, renouvellement ou modification nécessaire";
    public override string Told => "Qui a été informé, comment, le (date)";
    public override string Tests => "Essais faits, et leurs résultats";
    public override string Conclusion => "Conclusion";
    public override string Basis => "Motif de la vérification";
    public override string Fit => "apte à l’emploi";
    public override string Withdraw => "à retirer du service";
    public override string FitMeans => "peut rester en service";
    public override string WithdrawMeans => "hors service dès maintenant, étiqueté et tenu à l’écart";
    public override string ExaminerName => "Nom";
    public override string ExaminedOn => "Date de la vérification";
    public override string NextExamination => "Prochaine vérification au plus tard le, si plus proche";
    public override string Recorded => "Enregistré";

    public override IReadOnlyList<string> Cautions { get; } =
    [
        "Ce qui a été trouvé la dernière fois est dit pour que rien ne soit oublié. Chaque réponse part de l’équipement, "
            + "non de la dernière fiche.",
        "Ce qui est écrit ici ne compte qu’une fois inscrit dans l’enregistrement de la visite et contrôlé.",
    ];

    public override string RecordHasErrors(IReadOnlyList<string> codes) =>
        $"L’enregistrement dont cette fiche est tirée a des erreurs ({string.Join(", ", codes)}). Comparer tout ce qui "
        + "est imprimé ici à l’équipement lui-même.";

    public override string Of(string item, string heading) => $"{item}\u00A0: {heading}";

    public override string AsTyped(string? word) => $"«\u00A0{word}\u00A0», qui n’est pas une réponse";

    public override string Class(CriterionClass criteria) =>
        criteria switch
        {
            CriterionClass.Decisive => "Décisif\u00A0: un défaut ou un doute met fin au service",
            CriterionClass.Judged => "À apprécier\u00A0: pesé avec le reste",
            _ => "Indicatif\u00A0: usure normale, à noter",
        };

    public override string Box(ObservedState state) =>
        state switch
        {
            ObservedState.Clear => "RAS",
            ObservedState.NoSign => "aucun signe",
            ObservedState.NotApplicable => "S.O.",
            ObservedState.NotExamined => "non ex.",
            _ => SentenceBook.French.Words.State(state),
        };

    public override IReadOnlyList<string> Boxes { get; } =
    [
        "«\u00A0RAS\u00A0»\u00A0: rien à signaler.",
        "«\u00A0aucun signe\u00A0»\u00A0: personne à interroger, et aucun signe trouvé.",
        "«\u00A0S.O.\u00A0»\u00A0: sans objet pour cet équipement.",
        "«\u00A0non ex.\u00A0»\u00A0: non examiné.",
    ];

    public override string Means(Means means) =>
        means switch
        {
            Core.Criteria.Means.Look => "regarder",
            Core.Criteria.Means.Feel => "toucher",
            Core.Criteria.Means.Measure => "mesurer",
            Core.Criteria.Means.Operate => "manœuvrer",
            Core.Criteria.Means.Ask => "demander",
            _ => "lire",
        };

    public override string BasisBox(Basis basis) =>
        basis switch
        {
            Core.Records.Basis.SixMonth => "six mois",
            Core.Records.Basis.TwelveMonth => "douze mois",
            Core.Records.Basis.Scheme => "plan",
            Core.Records.Basis.Exceptional => "événement",
            Core.Records.Basis.FirstUse => "mise en service",
            _ => "installation",
        };

    public override string Band(string nominal, string tolerance, string low, string high, string source) =>
        $"Diamètre nominal du fabricant {nominal}\u00A0mm avec une tolérance de {tolerance}\u00A0% de part et d’autre\u00A0: "
        + $"de {low} à {high}\u00A0mm inclus. Source\u00A0: {source}.";

    public override string NominalOnly(string nominal, string source) =>
        $"Diamètre nominal du fabricant {nominal}\u00A0mm\u00A0; aucune tolérance enregistrée. Source\u00A0: {source}.";

    public override string Released(LocalDate? on, string by, string? grounds) =>
        $"Remise en service du {Printed.Day(on)} par {by}\u00A0: {Printed.Text(grounds)}";

    public override string Disposed(DisposalAction? action, LocalDate? on, string by) =>
        $"{CommonPhrases.Languages.French.Disposal(action)} le {Printed.Day(on)} par {by}";
}

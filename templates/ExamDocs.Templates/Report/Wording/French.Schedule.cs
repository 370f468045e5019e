using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.Report.Wording;

internal sealed partial class French
{
    public override string Colon => "\u00A0: ";
    public override string Semicolon => "\u00A0; ";
    public override string ColumnMarking => "N° de série ou marque";
    public override string ColumnMade => "Fabriqué";
    public override string ColumnLast => "Dernière vérif.";
    public override string ColumnUseUntil => "Utiliser jusqu’au";
    public override string ColumnNote => "Remarque";
    public override string Position => "Position, mm";
    public override string Readings => "Mesures, mm";
    public override string Mean => "Moyenne, mm";
    public override string NotKnown => "non connu";
    public override string First => "première";
    public override string SafeNo => "non, la sécurité d’emploi n’a pas été constatée";
    public override string Purchased => "Acheté";
    public override string DeclarationLabel => "Déclaration de conformité";
    public override string Scope => "Étendue de la vérification";
    public override string Laws => "Vérifié selon";
    public override string ExaminedBy => "Vérifié par";
    public override string AnnexToRegister => "À annexer au registre de sécurité.";
    public override string NoSign => "Personne à interroger\u00A0; aucun signe trouvé";
    public override string PlacesHeading => "Où figure chaque paragraphe";
    public override string LawHeading => "Textes applicables";
    public override string NotReadHeading => "Texte non vérifié à la source";

    public override IReadOnlyList<string> Legend { get; } =
    [
        "«\u00A0Utiliser jusqu’au\u00A0» et «\u00A0ne pas utiliser après le\u00A0» donnent le dernier jour d’utilisation, distinct de la "
            + "date limite de la prochaine vérification\u00A0: la plus proche des deux l’emporte. Dans une ligne, «\u00A0utiliser "
            + "jusqu’au\u00A0» est la fin de service selon les limites enregistrées du fabricant\u00A0; un tiret veut dire qu’elles "
            + "n’en fixent pas.",
        "Un groupe réunit des équipements sans réserve, pour lesquels vaut tout ce que dit son titre. «\u00A0Non renseigné\u00A0» et "
            + "«\u00A0non connu\u00A0» veulent dire que l’enregistrement ne contient pas cette valeur, et non qu’il n’y en a pas.",
    ];

    public override IReadOnlyList<string> Cautions { get; } =
    [
        "Ce rapport porte sur chaque équipement tel qu’il a été trouvé le jour de la vérification, et sur aucun autre "
            + "équipement, pièce ou jour. Il ne remplace pas le contrôle avant chaque utilisation.",
        "Un équipement qui a arrêté une chute, touché une scie, la chaleur ou un produit chimique, ou qui laisse un doute, "
            + "est retiré du service et vérifié de nouveau, quoi que dise ce rapport.",
    ];

    public override string CountLabel(Outcome outcome, int count) =>
        outcome switch
        {
            Outcome.Withdraw => "ne pas utiliser",
            Outcome.FitUntil => "en service jusqu’à une date",
            Outcome.Undetermined => "en attente de décision\u00A0: ne pas utiliser",
            _ => count <= 1 ? "peut rester en service" : "peuvent rester en service",
        };

    public override string NotInReport(int count) =>
        count <= 1 ? "absent du rapport\u00A0: ne pas utiliser" : "absents du rapport\u00A0: ne pas utiliser";

    public override string Part(int number, int of) =>
        $"Rapport {Printed.Count(number)} sur {Printed.Count(of)} de cette visite. "
        + "Les autres équipements figurent dans les autres rapports.";

    public override string BlocksHeading(BlockKind kind, int items) =>
        kind switch
        {
            BlockKind.Withdrawn => $"Ne pas utiliser\u00A0: {Items(items)}",
            BlockKind.Limited => $"Seulement jusqu’à une date\u00A0: {Items(items)}",
            BlockKind.Overdue => $"En service, vérification en retard\u00A0: {Items(items)}",
            BlockKind.First => $"En service, première vérification\u00A0: {Items(items)}",
            _ => $"En service, indications plus longues\u00A0: {Items(items)}",
        };

    public override string LinesHeading(int items) => $"En service\u00A0: {Items(items)} sans réserve";

    public override string Items(int count) => count <= 1 ? $"{Printed.Count(count)} équipement" : $"{Printed.Count(count)} équipements";

    public override string Continued(int from, int to, int of) =>
        $"suite\u00A0: {Printed.Count(from)} à {Printed.Count(to)} sur {Printed.Count(of)} équipements";

    public override string ExaminedOn(string day) => $"vérifié le {day}";

    public override string Mark(string mark) => $"marque du propriétaire {mark}";

    protected override string Tolerated(string nominal, string tolerance, string low, string high) =>
        $"Nominal du fabricant {nominal}\u00A0mm ± {tolerance}\u00A0%\u00A0: {low} à {high}\u00A0mm (ombré).";

    protected override string NoTolerance => "Aucune tolérance du fabricant n’est renseignée\u00A0: aucune limite n’est tracée.";

    public override string Declaration(string? reference, LocalDate? on) => $"{Printed.Text(reference)}, {Printed.Day(on)}";

    public override string Remedy(string? what, LocalDate? on) => $"Remis en état le {Printed.Day(on)}\u00A0: {Printed.Text(what)}";

    public override string Release(LocalDate? on, string by, bool inError, string? grounds) =>
        $"Remis en service le {Printed.Day(on)} par {by}{(inError ? ", le retrait ayant été enregistré par erreur" : "")}\u00A0: "
        + Printed.Text(grounds);

    public override string TrendProposal(LocalDate on) =>
        $"Selon l’évolution de ses diamètres, il pourrait devenir un danger au plus tard le {Printed.Day(on)}\u00A0: une proposition, "
        + "qui ne vaut qu’une fois inscrite comme défaut par le vérificateur";

    public override string Place(ParagraphPlace place, bool isSchedule) =>
        (place, isSchedule) switch
        {
            (ParagraphPlace.Once, _) => "une fois, à la première page ou avec les signatures",
            (ParagraphPlace.Unknown, _) => "aucune place connue du programme\u00A0: vérifier si le rapport le contient",
            (_, false) => "parmi les indications sur l’équipement",
            (ParagraphPlace.Group, _) => "dans le titre du groupe, ou dans le bloc de l’équipement",
            (ParagraphPlace.Line, _) => "dans la ligne de l’équipement, ou dans son bloc",
            _ => "toujours dans un bloc à part",
        };

    public override string AddUp(int blocks, int lines, int groups) =>
        $"{Printed.Count(blocks)} dans un bloc à part et {Printed.Count(lines)} dans les lignes de "
        + $"{(groups <= 1 ? $"{Printed.Count(groups)} groupe" : $"{Printed.Count(groups)} groupes")} font {Items(blocks + lines)}.";

    public override string Evidence(string? number) =>
        "Les éléments pour et contre le maintien en service, toutes les mesures, les photos et la source de chaque règle sont dans le "
        + $"dossier justificatif\u00A0: {number ?? "sur demande à l’émetteur, sous la référence de la visite"}.";

    public override string PhotosElsewhere(int count) =>
        count == 1 ? "1 photo, dans le dossier justificatif" : $"{Printed.Count(count)} photos, dans le dossier justificatif";
}

using ExamDocs.Core.Determination.CaseForService;
using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Common;
using NodaTime;

namespace ExamDocs.Templates.Report.Wording;

/// <inheritdoc />
internal sealed class French : ReportPhrases
{
    public override string MadeFor => "Établi pour (employeur)";
    public override string Premises => "Lieu de la vérification";
    public override string HiredFrom => "Propriétaire qui le loue ou le cède en crédit-bail";
    public override string ReportDate => "Date du rapport";
    public override string ResultHeading => "Résultat";
    public override string DoNotUseHeading => "Ne pas utiliser";
    public override string UntilHeading => "Seulement jusqu’à une date";
    public override string ScheduleHeading => "Liste";
    public override string ItemsHeading => "Indications pour chaque équipement";
    public override string ReportItemHeading => "Indications sur l’équipement";
    public override string ColumnNumber => "N°";
    public override string ColumnOutcome => "Résultat";
    public override string ColumnNotAfter => "Ne pas utiliser après";
    public override string ColumnNext => "Prochaine au plus tard le";
    public override string ColumnWhy => "Motif";
    public override string NotReportedHeading => "Enregistré à cette visite, mais absent de ce rapport";

    public override string NotReported =>
        "Ces équipements ne font pas l’objet du rapport, car ils n’ont pas été vérifiés, ou leur enregistrement est "
        + "incomplet, contradictoire ou impossible à imprimer en entier. Ils ne sont pas à considérer comme aptes.";

    public override string Identification => "Identification";
    public override string Basis => "Vérifié";
    public override string SafeToOperate => "Serait sûr à l’emploi";
    public override string ReasonsHeading => "Motif";
    public override string DefectsHeading => "Défauts";
    public override string NoDefects => "Aucun défaut qui soit, ou puisse devenir, un danger pour des personnes n’est enregistré.";

    public override string NoDefectWritten =>
        "Aucun défaut de l’équipement lui-même n’est décrit\u00A0; les motifs ci-dessus disent pourquoi il ne faut pas l’utiliser.";

    public override string NotInReport => "absents du rapport\u00A0: ne pas utiliser";
    public override string Tests => "Essais faits";
    public override string NoTests => "aucun enregistré";
    public override string CaseHeading => "ce qui parle pour et contre le maintien en service";
    public override string Photo => "photo enregistrée\u00A0:";

    public override string Exposure => "Usage et exposition";
    public override string DiametersHeading => "diamètre le long de la corde";
    public override string Position => "Position, mm";
    public override string Readings => "Mesures, mm";
    public override string Mean => "Moyenne, mm";
    public override string RenewalsHeading => "pièces renouvelées";
    public override string AuthorHeading => "Rapport établi par";
    public override string AuthenticatedHeading => "Authentifié par";
    public override string Name => "Nom";
    public override string Address => "Adresse";
    public override string Qualifications => "Qualifications";
    public override string SelfEmployed => "Indépendant";
    public override string EmployedBy => "Employé par";
    public override string EmploymentNotRecorded => "indépendant ou employé\u00A0: non enregistré";
    public override string SignLead => "Authentifié par signature\u00A0:";
    public override string LegendHeading => "Comment lire ce rapport";

    public override IReadOnlyList<string> Legend { get; } =
    [
        "La lettre et le chiffre devant un motif nomment la règle sur laquelle il repose\u00A0: W retire l’équipement, D "
            + "fixe son dernier jour d’utilisation, U dit ce que l’enregistrement laisse ouvert.",
        "Les critères décisifs mettent fin au service dès qu’un défaut est trouvé\u00A0; les critères appréciés sont "
            + "pesés avec le reste\u00A0; les critères indicatifs notent l’usure normale. Un doute compte comme un défaut.",
        "«\u00A0Ne pas utiliser après\u00A0» une date\u00A0: cette date est le dernier jour d’utilisation. Elle est "
            + "distincte de la date limite de la prochaine vérification\u00A0; la plus proche des deux l’emporte.",
        "«\u00A0Pour et contre le maintien en service\u00A0» expose les éléments dans l’ordre où ils ont été pesés. "
            + "«\u00A0Contre\u00A0» et «\u00A0ouvert\u00A0» marquent ce qui parle contre l’équipement ou laisse une question "
            + "ouverte\u00A0; une ligne sans l’un ni l’autre parle pour lui ou ne pèse rien par elle-même.",
        "«\u00A0Non enregistré\u00A0» veut dire que l’enregistrement ne contient pas cette valeur, et non qu’il n’y en a pas.",
    ];

    public override IReadOnlyList<string> Cautions { get; } =
    [
        "Ce rapport parle de chaque équipement tel qu’il a été trouvé le jour de la vérification, et d’aucun autre "
            + "équipement, pièce ou jour. Il ne remplace pas le contrôle avant chaque utilisation.",
        "Un équipement qui a arrêté une chute, touché une scie, la chaleur ou un produit chimique, ou qui laisse le "
            + "moindre doute, est retiré du service et vérifié de nouveau, quoi que dise ce rapport.",
    ];

    public override string Last(string examination) => $"Dernière {examination}";

    public override string Summary(int items) =>
        items <= 1 ? $"{Printed.Count(items)} équipement figure au rapport." : $"{Printed.Count(items)} équipements figurent au rapport.";

    public override string CountLabel(Outcome outcome) =>
        outcome switch
        {
            Core.Records.Outcome.Withdraw => "ne pas utiliser",
            Core.Records.Outcome.FitUntil => "en service jusqu’à une date",
            Core.Records.Outcome.Undetermined => "non déterminés\u00A0: ne pas utiliser",
            _ => "peuvent rester en service",
        };

    public override string MoreReasons(int more) =>
        more == 1 ? "\u00A0; et 1 autre motif" : $"\u00A0; et {Printed.Count(more)} autres motifs";

    public override string ShortOutcome(Outcome outcome) =>
        outcome switch
        {
            Core.Records.Outcome.Withdraw => "Ne pas utiliser",
            Core.Records.Outcome.FitUntil => "Jusqu’à une date",
            Core.Records.Outcome.Undetermined => "Ne pas utiliser",
            _ => "Peut rester",
        };

    public override string PositionOf(int position, int of) => $"Équipement {Printed.Count(position)} sur {Printed.Count(of)}";

    public override string SafeFit => "Oui\u00A0: tel que vérifié, il serait sûr à l’emploi.";

    public override string SafeUntil(LocalDate? until) =>
        $"Oui\u00A0: tel que vérifié, il serait sûr à l’emploi jusqu’au {Printed.Day(until)} inclus.";

    public override string SafeInstalled => "Oui\u00A0: il a été installé correctement et, tel que vérifié, serait sûr à l’emploi.";

    public override string SafeNo => "Non\u00A0: cela n’est pas déclaré.";

    public override string Scheme(string? reference, string? author, int? months) =>
        $"plan de vérification {Printed.Text(reference)}, établi par {Printed.Text(author)}, intervalle en mois\u00A0: "
        + $"{(months is { } m ? Printed.Count(m) : CommonPhrases.Languages.French.NotRecorded)}";

    public override string Event(string? what, LocalDate? on) => $"{Printed.Text(what)}, le {Printed.Day(on)}";

    public override string CaseStep(Heading heading) =>
        heading switch
        {
            Heading.Identity => "Identité",
            Heading.History => "Historique",
            Heading.Decisive => "Critères décisifs",
            Heading.Judged => "Critères appréciés",
            Heading.Advisory => "Indications",
            Heading.Measurements => "Mesures",
            Heading.Limits => "Limites",
            _ => "Doutes, et ce qui les a levés",
        };

    public override string Routine(ObservedState state) =>
        state switch
        {
            ObservedState.Clear => "Rien à signaler\u00A0:",
            ObservedState.NoSign => "Personne à interroger\u00A0; aucun signe trouvé\u00A0:",
            _ => "Sans objet\u00A0:",
        };

    public override string CaseLine(Bearing bearing, string code, string text)
    {
        var word = bearing switch
        {
            Bearing.Against => "Contre",
            Bearing.Open => "Ouvert",
            _ => "",
        };
        var lead = Printed.Join(", ", word, code);
        return lead.Length == 0 ? text : $"{lead}\u00A0: {text}";
    }
}

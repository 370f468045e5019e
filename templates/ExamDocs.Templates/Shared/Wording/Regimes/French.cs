using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Templates.Shared.Wording.Common;
using ExamDocs.Templates.Shared.Wording.LawAndSources;
using NodaTime;

namespace ExamDocs.Templates.Shared.Wording.Regimes;

/// <inheritdoc />
internal sealed partial class French : RegimePhrases
{
    public override string Overdue(LocalDate due, string basis) =>
        $"en retard\u00A0: la vérification était due au plus tard le {Printed.Day(due)}\u00A0; fondement\u00A0: {basis}";

    public override string LastNotKnown(string basis) => $"{basis}\u00A0; la date de la vérification précédente n’est pas enregistrée";

    protected override RegimeWording Periodic =>
        new()
        {
            Title = "Rapport de vérification périodique",
            Law = "",
            ShortLaw = "",
            Examination = "vérification périodique",
            Keys = null,
            DutyNow = "L’équipement ne doit pas être utilisé avant qu’une personne compétente ait confirmé que le défaut est corrigé.",
            DutyLater = "Passé la date indiquée, l’équipement ne doit plus être utilisé tant que le défaut n’est pas corrigé.",
            NoticeLead =
                "La vérification périodique a révélé un défaut qui est, ou pourrait devenir, un danger pour des "
                + "personnes. Cet avis en informe l’employeur ou le détenteur.",
            Bases = new Dictionary<Basis, string>
            {
                [Basis.SixMonth] = "dans un intervalle de 6 mois",
                [Basis.TwelveMonth] = "dans un intervalle de 12 mois",
                [Basis.Scheme] = "selon un plan écrit",
                [Basis.Exceptional] = "après des circonstances exceptionnelles",
                [Basis.FirstUse] = "première vérification, avant la mise en service",
                [Basis.Installation] = "première vérification après installation ou assemblage en un nouvel endroit",
            },
            BasesByName = new Dictionary<Basis, string>
            {
                [Basis.SixMonth] = "intervalle de 6 mois",
                [Basis.TwelveMonth] = "intervalle de 12 mois",
                [Basis.Scheme] = "plan écrit",
            },
        };

    protected override RegimeWording Europe =>
        Periodic with
        {
            Law =
                "EN 365:2004, paragraphe 4.4, pour l’équipement de protection "
                + "individuelle contre les chutes de hauteur. La loi du pays peut demander davantage",
            ShortLaw = "EN 365:2004",
            Title = "Rapport d’examen périodique",
            Examination = "examen périodique",
            NoticeLead =
                "L’examen périodique a révélé un défaut qui est, ou pourrait devenir, un danger pour des personnes. Cet avis en "
                + "informe l’employeur ou le détenteur.",
            SignsEachEntry = true,
        };

    protected override RegimeWording Germany =>
        Periodic with
        {
            Law = "Betriebssicherheitsverordnung, §\u00A014\u00A0; PSA-Benutzungsverordnung\u00A0; DGUV Regel 112-198",
            ShortLaw = "BetrSichV §\u00A014, DGUV Regel 112-198",
            DutyNow =
                "L’équipement ne doit pas être utilisé avant qu’une personne compétente (sachkundige Person) ait confirmé que "
                + "le défaut est corrigé.",
            SignsEachEntry = true,
            ForTheKeeper =
            [
                "Si le lieu d’utilisation change, une preuve de la dernière vérification doit s’y trouver (BetrSichV §\u00A014 (7)).",
                "Si ce document n’est transmis que par voie électronique, il lui faut une signature électronique (BetrSichV §\u00A014 (7), "
                    + "TRBS 1201 8.3.1).",
                "L’employeur fixe l’intervalle (BetrSichV §\u00A014 (2))\u00A0; la date donnée ici est la date limite. "
                    + "Il n’y a pas de délai "
                    + "supplémentaire de deux mois.",
            ],
        };

    protected override RegimeWording France =>
        Periodic with
        {
            Title = "Rapport de vérification générale périodique",
            Law = "Arrêté du 19 mars 1993, article 1, et arrêté du 1er mars 2004, articles 23 et 24",
            ShortLaw = "arrêtés du 19 mars 1993 et du 1er mars 2004",
            Examination = "vérification générale périodique",
            DutyNow = "L’équipement ne doit pas être utilisé avant qu’une personne qualifiée ait confirmé que le défaut est corrigé.",
            ForTheKeeper =
            [
                "À annexer au registre de sécurité (Code du travail R4323-101 et R4323-102).",
                "Conserver les rapports cinq ans, et toujours les deux derniers (Code du travail D4711-3).",
                "L’inspecteur du travail peut réduire l’intervalle.",
            ],
            PassingOn =
                "En France, un équipement de protection individuelle d’occasion ne peut être cédé librement (Code du "
                + "travail R4312-8)\u00A0: "
                + "consulter un juriste avant de le vendre, louer ou prêter. Cette déclaration n’est pas le certificat "
                + "qu’exige une cession.",
            NoticeLead =
                "La vérification générale périodique a révélé un défaut qui est, ou pourrait devenir, un danger pour des "
                + "personnes. Cet avis en informe l’employeur ou le détenteur.",
        };

    protected override RegimeWording AustraliaNewZealand =>
        Inspection with
        {
            Law = "AS/NZS 1891.4:2009, section 9",
            ShortLaw = "AS/NZS 1891.4:2009",
        };

    protected override RegimeWording UnitedStates =>
        Inspection with
        {
            Law = "29 CFR 1910.140(c)(17) et (18), ANSI/ASSP Z359.2 et California Title 8",
            ShortLaw = "29 CFR 1910.140, ANSI/ASSP Z359.2",
        };

    protected override RegimeWording Unnamed =>
        WorkAtHeight with
        {
            Title = "Rapport de vérification",
            Law = "La loi selon laquelle cette vérification a été faite n’est pas renseignée",
            ShortLaw = CommonPhrases.Languages.French.NotRecorded,
            Examination = "vérification",
            DutyNow = "L’équipement ne doit pas être utilisé avant que le défaut soit corrigé.",
            NoticeLead =
                "La vérification a révélé un défaut qui est, ou pourrait devenir, un danger pour des personnes. Cet avis "
                + "en informe l’employeur.",
        };

    protected override RegimeWording Added(Regime regime, string file) =>
        Periodic with
        {
            Law =
                $"{string.Join("\u00A0; ", regime.Laws.InForce(null).Select(l => l.Cited))}. "
                + $"{LawAndSourcesPhrases.Languages.French.Added(file)}",
            ShortLaw = $"{regime.Name} ({LawAndSourcesPhrases.Languages.French.AddedShort(file)})",
            UsersOwn = LawAndSourcesPhrases.Languages.French.UsersOwn,
        };

    private RegimeWording Inspection =>
        Periodic with
        {
            Title = "Rapport d’inspection périodique",
            Examination = "inspection périodique",
            NoticeLead =
                "L’inspection périodique a révélé un défaut qui est, ou pourrait devenir, un danger pour des personnes. "
                + "Cet avis en informe l’employeur ou le détenteur.",
        };
}

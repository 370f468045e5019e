using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;

namespace ExamDocs.Templates.Wording;

public static partial class French
{
    internal sealed partial class Regimes : RegimePhrases
    {
        protected override RegimeWording Loler =>
            new()
            {
                Title = "Rapport de vérification approfondie (thorough examination)",
                Law = "Lifting Operations and Lifting Equipment Regulations 1998 (SI 1998/2307), regulation 10(1)(b) et Schedule 1",
                ShortLaw = "SI 1998/2307",
                Examination = "vérification approfondie",
                Keys = "Les petits numéros encadrés donnent le paragraphe du Schedule 1 de SI 1998/2307 qui demande l’indication.",
                DutyNow = "L’équipement ne doit pas être utilisé avant que le défaut soit corrigé\u00A0: SI 1998/2307 regulation 10(3)(a).",
                DutyLater =
                    "L’équipement ne doit pas être utilisé après la date indiquée, ni avant que le défaut soit "
                    + "corrigé\u00A0: SI 1998/2307 regulation 10(3)(b).",
                NoticeLead =
                    "Qui fait une vérification approfondie informe aussitôt l’employeur de tout défaut qui est, ou pourrait "
                    + "devenir, un danger pour des personnes\u00A0: regulation 10(1)(a) des Lifting Operations and Lifting "
                    + "Equipment Regulations 1998 (SI 1998/2307).",
                Authorities = new Dictionary<Recipient, string>
                {
                    [Recipient.HealthAndSafetyExecutive] =
                        "Health and Safety Executive (l’équipement est loué ou en crédit-bail\u00A0: SI 1998/2307 regulation 10(4))",
                    [Recipient.AuthorityForThePremises] =
                        "Autorité compétente pour le lieu où l’équipement a été vérifié (SI 1998/2307 regulation 10(4))",
                },
                Bases = new Dictionary<Basis, string>
                {
                    [Basis.SixMonth] = "dans un intervalle de 6 mois (regulation 9(3)(a)(i))",
                    [Basis.TwelveMonth] = "dans un intervalle de 12 mois (regulation 9(3)(a)(ii))",
                    [Basis.Scheme] = "selon un plan de vérification (regulation 9(3)(a)(iii))",
                    [Basis.Exceptional] = "après des circonstances exceptionnelles (regulation 9(3)(a)(iv))",
                    [Basis.FirstUse] = "première vérification approfondie, avant la mise en service (regulation 9(1))",
                    [Basis.Installation] =
                        "première vérification approfondie après installation, ou après assemblage en un nouveau lieu (regulation 9(2))",
                },
            };

        protected override RegimeWording LolerNorthernIreland =>
            Loler with
            {
                Law =
                    "Lifting Operations and Lifting Equipment Regulations (Northern Ireland) 1999 (SR 1999/304), regulation "
                    + "10 et Schedule 2",
                ShortLaw = "SR 1999/304",
                Keys =
                    "Les petits numéros encadrés donnent le paragraphe du Schedule 2 de SR 1999/304 qui demande "
                    + "l’indication\u00A0; après 8(a), ils sont de mémoire.",
                DutyNow =
                    "L’équipement ne doit pas être utilisé avant que le défaut soit corrigé\u00A0: SR 1999/304 regulation "
                    + "10(3), de mémoire.",
                DutyLater =
                    "L’équipement ne doit pas être utilisé après la date indiquée, ni avant que le défaut soit "
                    + "corrigé\u00A0: SR 1999/304 regulation 10(3), de mémoire.",
                NoticeLead =
                    "Qui fait une vérification approfondie informe aussitôt l’employeur de tout défaut qui est, ou pourrait "
                    + "devenir, un danger pour des personnes\u00A0: regulation 10 des Lifting Operations and Lifting Equipment "
                    + "Regulations (Northern Ireland) 1999 (SR 1999/304), de mémoire.",
                Authorities = new Dictionary<Recipient, string>
                {
                    [Recipient.EnforcingAuthority] =
                        "L’autorité compétente (SR 1999/304 regulation 10, de mémoire\u00A0; laquelle, cela n’a pas été confirmé)",
                },
            };

        protected override RegimeWording WorkAtHeight =>
            new()
            {
                Title = "Rapport d’inspection périodique",
                Law =
                    "Work at Height Regulations 2005 (SI 2005/735), regulation 12. Pour cet équipement, la loi prescrit un "
                    + "enregistrement, non son contenu\u00A0: les indications sont au choix de l’émetteur",
                ShortLaw = "SI 2005/735",
                Examination = "inspection",
                Keys = null,
                DutyNow =
                    "L’équipement ne doit pas être utilisé avant que le défaut soit corrigé. L’équipement de protection "
                    + "individuelle doit rester efficace, en état de marche et en bon état\u00A0: SI 1992/2966 regulation 7.",
                DutyLater = "L’équipement ne doit pas être utilisé après la date indiquée, ni avant que le défaut soit corrigé.",
                NoticeLead =
                    "L’inspection a trouvé un défaut qui est, ou pourrait devenir, un danger pour des personnes. Cet avis en "
                    + "informe l’employeur.",
                Bases = new Dictionary<Basis, string>
                {
                    [Basis.SixMonth] = "dans un intervalle de 6 mois",
                    [Basis.TwelveMonth] = "dans un intervalle de 12 mois",
                    [Basis.Scheme] = "selon un plan écrit",
                    [Basis.Exceptional] = "après des circonstances exceptionnelles (regulation 12(3))",
                    [Basis.FirstUse] = "première inspection, avant la mise en service",
                    [Basis.Installation] = "première inspection après installation ou assemblage en un nouvel endroit",
                },
            };

        protected override RegimeWording Periodic =>
            new()
            {
                Title = "Rapport de vérification périodique",
                Law = "",
                ShortLaw = "",
                Examination = "vérification périodique",
                Keys = null,
                DutyNow = "L’équipement ne doit pas être utilisé avant qu’une personne compétente ait confirmé que le défaut est corrigé.",
                DutyLater = "L’équipement ne doit pas être utilisé après la date indiquée, ni avant que le défaut soit corrigé.",
                NoticeLead =
                    "La vérification périodique a trouvé un défaut qui est, ou pourrait devenir, un danger pour des "
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
            };

        protected override RegimeWording Europe =>
            Periodic with
            {
                Law =
                    "EN 365:2004, paragraphe 4.4 (vue dans une copie non officielle), pour l’équipement de protection "
                    + "individuelle contre les chutes de hauteur. La loi du pays peut demander davantage",
                ShortLaw = "EN 365:2004",
            };

        protected override RegimeWording Germany =>
            Periodic with
            {
                Law = "Betriebssicherheitsverordnung, § 14, et DGUV Regel 112-198 (les deux de mémoire)",
                ShortLaw = "BetrSichV § 14, DGUV Regel 112-198",
                DutyNow =
                    "L’équipement ne doit pas être utilisé avant qu’une personne qualifiée (Sachkundiger) ait confirmé que "
                    + "le défaut est corrigé.",
            };

        protected override RegimeWording France =>
            Periodic with
            {
                Title = "Rapport de vérification générale périodique",
                Law = "Arrêté du 19 mars 1993, article 1, et arrêté du 1er mars 2004, articles 23 et 24",
                ShortLaw = "arrêtés du 19 mars 1993 et du 1er mars 2004",
                Examination = "vérification générale périodique",
                NoticeLead =
                    "La vérification générale périodique a trouvé un défaut qui est, ou pourrait devenir, un danger pour des "
                    + "personnes. Cet avis en informe l’employeur ou le détenteur.",
            };

        protected override RegimeWording AustraliaNewZealand =>
            Inspection with
            {
                Law = "AS/NZS 1891.4:2009, section 9 (vue dans une copie non officielle)",
                ShortLaw = "AS/NZS 1891.4:2009",
            };

        protected override RegimeWording UnitedStates =>
            Inspection with
            {
                Law = "29 CFR 1910.140(c)(17) et (18), ANSI/ASSP Z359.2 et California Title 8 (tous de mémoire)",
                ShortLaw = "29 CFR 1910.140, ANSI/ASSP Z359.2",
            };

        protected override RegimeWording Unnamed =>
            WorkAtHeight with
            {
                Title = "Rapport de vérification",
                Law = "La loi selon laquelle cette vérification a été faite n’est pas enregistrée",
                ShortLaw = Words.Common.NotRecorded,
                Examination = "vérification",
                DutyNow = "L’équipement ne doit pas être utilisé avant que le défaut soit corrigé.",
                NoticeLead =
                    "La vérification a trouvé un défaut qui est, ou pourrait devenir, un danger pour des personnes. Cet avis "
                    + "en informe l’employeur.",
            };

        protected override RegimeWording Added(Regime regime, string file) =>
            Periodic with
            {
                Law = $"{string.Join("\u00A0; ", regime.Laws.InForce(null).Select(l => l.Cited))}. {Words.LawAndSources.Added(file)}",
                ShortLaw = $"{regime.Name} ({Words.LawAndSources.AddedShort(file)})",
                UsersOwn = Words.LawAndSources.UsersOwn,
            };

        private RegimeWording Inspection =>
            Periodic with
            {
                Title = "Rapport d’inspection périodique",
                Examination = "inspection périodique",
                NoticeLead =
                    "L’inspection périodique a trouvé un défaut qui est, ou pourrait devenir, un danger pour des personnes. "
                    + "Cet avis en informe l’employeur ou le détenteur.",
            };
    }
}

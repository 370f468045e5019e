using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;

namespace ExamDocs.Templates.Shared.Wording.Regimes;

// Great Britain and Northern Ireland.
internal sealed partial class French
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
                "Passé la date indiquée, l’équipement ne doit plus être utilisé tant que le défaut n’est pas "
                + "corrigé\u00A0: SI 1998/2307 regulation 10(3)(b).",
            NoticeLead =
                "La personne qui procède à une vérification approfondie doit informer sans délai l’employeur de tout défaut qui, "
                + "de son avis, est ou pourrait devenir un danger pour des personnes\u00A0: regulation 10(1)(a) des "
                + "Lifting Operations and Lifting "
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
            BasesByName = new Dictionary<Basis, string>
            {
                [Basis.SixMonth] = "intervalle de 6 mois (regulation 9(3)(a)(i))",
                [Basis.TwelveMonth] = "intervalle de 12 mois (regulation 9(3)(a)(ii))",
                [Basis.Scheme] = "plan de vérification (regulation 9(3)(a)(iii))",
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
                + "l’indication\u00A0; après 8(a), ils n’ont pas été vérifiés à la source.",
            DutyNow = "L’équipement ne doit pas être utilisé avant que le défaut soit corrigé\u00A0: SR 1999/304 regulation " + "10(3).",
            DutyLater =
                "Passé la date indiquée, l’équipement ne doit plus être utilisé tant que le défaut n’est pas "
                + "corrigé\u00A0: SR 1999/304 regulation 10(3).",
            NoticeLead =
                "La personne qui procède à une vérification approfondie doit informer sans délai l’employeur de tout défaut qui, "
                + "de son avis, est ou pourrait devenir un danger pour des personnes\u00A0: regulation 10 des Lifting "
                + "Operations and Lifting Equipment "
                + "Regulations (Northern Ireland) 1999 (SR 1999/304).",
            Authorities = new Dictionary<Recipient, string>
            {
                [Recipient.EnforcingAuthority] =
                    "L’autorité compétente (SR 1999/304 regulation 10\u00A0; laquelle, cela n’a pas été confirmé)",
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
            DutyLater = "Passé la date indiquée, l’équipement ne doit plus être utilisé tant que le défaut n’est pas corrigé.",
            NoticeLead =
                "L’inspection a révélé un défaut qui est, ou pourrait devenir, un danger pour des personnes. Cet avis en "
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
            BasesByName = new Dictionary<Basis, string>
            {
                [Basis.SixMonth] = "intervalle de 6 mois",
                [Basis.TwelveMonth] = "intervalle de 12 mois",
                [Basis.Scheme] = "plan écrit",
            },
        };
}

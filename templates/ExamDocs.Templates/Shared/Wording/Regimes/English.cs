using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Templates.Shared.Wording.Common;
using ExamDocs.Templates.Shared.Wording.LawAndSources;
using NodaTime;

namespace ExamDocs.Templates.Shared.Wording.Regimes;

/// <inheritdoc />
internal sealed partial class English : RegimePhrases
{
    public override string Overdue(LocalDate due, string basis) => $"overdue: it was due by {Printed.Day(due)}; basis: {basis}";

    public override string LastNotKnown(string basis) => $"{basis}; when it was last examined is not recorded";

    protected override RegimeWording Periodic =>
        new()
        {
            Title = "Report of periodic examination",
            Law = "",
            ShortLaw = "",
            Examination = "periodic examination",
            Keys = null,
            DutyNow = "The item must not be used before a competent person has confirmed that the defect is rectified.",
            DutyLater = "After the time stated the item must not be used until the defect is rectified.",
            NoticeLead =
                "The periodic examination found a defect that is, or could become, a danger to persons. This "
                + "notice notifies the employer or keeper.",
            Bases = new Dictionary<Basis, string>
            {
                [Basis.SixMonth] = "within an interval of 6 months",
                [Basis.TwelveMonth] = "within an interval of 12 months",
                [Basis.Scheme] = "in accordance with a written scheme",
                [Basis.Exceptional] = "after exceptional circumstances",
                [Basis.FirstUse] = "first examination, before the item is first put into service",
                [Basis.Installation] = "first examination after installation or assembly in a new position",
            },
            BasesByName = new Dictionary<Basis, string>
            {
                [Basis.SixMonth] = "interval of 6 months",
                [Basis.TwelveMonth] = "interval of 12 months",
                [Basis.Scheme] = "written scheme",
            },
        };

    protected override RegimeWording Europe =>
        Periodic with
        {
            Law =
                "EN 365:2004, clause 4.4, for personal protective equipment against falls "
                + "from a height. The law of the country may ask for more",
            ShortLaw = "EN 365:2004",
            SignsEachEntry = true,
        };

    protected override RegimeWording Germany =>
        Periodic with
        {
            Law = "Betriebssicherheitsverordnung, section 14; PSA-Benutzungsverordnung; DGUV Regel 112-198",
            ShortLaw = "BetrSichV sec 14, DGUV Regel 112-198",
            DutyNow =
                "The item must not be used before a competent person (sachkundige Person) has confirmed that the defect is rectified.",
            SignsEachEntry = true,
            ForTheKeeper =
            [
                "Where the place of use changes, proof of the last test must be at hand where the item is used (BetrSichV sec 14(7)).",
                "Where this document is passed on only electronically, it needs an electronic signature (BetrSichV sec "
                    + "14(7), TRBS 1201 8.3.1).",
                "The employer sets the interval (BetrSichV sec 14(2)); the date given here is the latest. There are no "
                    + "two months of grace.",
            ],
        };

    protected override RegimeWording France =>
        Periodic with
        {
            Title = "Report of general periodic verification",
            Law = "Arrêté of 19 March 1993, article 1, and arrêté of 1 March 2004, articles 23 and 24",
            ShortLaw = "arrêtés of 19 March 1993 and 1 March 2004",
            Examination = "general periodic verification",
            ForTheKeeper =
            [
                "Annex this to the safety register (Code du travail R4323-101 and R4323-102).",
                "Keep the reports for five years, and always the last two (Code du travail D4711-3).",
                "The labour inspector may shorten the interval.",
            ],
            PassingOn =
                "In France second-hand protective equipment may not be handed on freely (Code du travail R4312-8): ask a lawyer before "
                + "it is sold, hired out or lent. This statement is not the certificate that such a transfer needs.",
            NoticeLead =
                "The general periodic verification found a defect that is, or could become, a danger to persons. This "
                + "notice notifies the employer or keeper.",
        };

    protected override RegimeWording AustraliaNewZealand =>
        Periodic with
        {
            Title = "Report of periodic inspection",
            Law = "AS/NZS 1891.4:2009, section 9",
            ShortLaw = "AS/NZS 1891.4:2009",
            Examination = "periodic inspection",
            NoticeLead =
                "The periodic inspection found a defect that is, or could become, a danger to persons. This "
                + "notice notifies the employer or keeper.",
        };

    protected override RegimeWording UnitedStates =>
        Periodic with
        {
            Title = "Report of periodic inspection",
            Law = "29 CFR 1910.140(c)(17) and (18), ANSI/ASSP Z359.2 and California Title 8",
            ShortLaw = "29 CFR 1910.140, ANSI/ASSP Z359.2",
            Examination = "periodic inspection",
            NoticeLead =
                "The periodic inspection found a defect that is, or could become, a danger to persons. This "
                + "notice notifies the employer or keeper.",
        };

    protected override RegimeWording Unnamed =>
        WorkAtHeight with
        {
            Title = "Report of examination",
            Law = "The law this examination was made under is not recorded",
            ShortLaw = CommonPhrases.Languages.English.NotRecorded,
            Examination = "examination",
            DutyNow = "The item must not be used before the defect is rectified.",
            NoticeLead =
                "The examination found a defect that is, or could become, a danger to persons. This notice notifies " + "the employer.",
        };

    protected override RegimeWording Added(Regime regime, string file) =>
        Periodic with
        {
            Law =
                $"{string.Join("; ", regime.Laws.InForce(null).Select(l => l.Cited))}. "
                + $"{LawAndSourcesPhrases.Languages.English.Added(file)}",
            ShortLaw = $"{regime.Name} ({LawAndSourcesPhrases.Languages.English.AddedShort(file)})",
            UsersOwn = LawAndSourcesPhrases.Languages.English.UsersOwn,
        };
}

using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;

namespace ExamDocs.Templates.Shared.Wording.Regimes;

// Great Britain and Northern Ireland.
internal sealed partial class English
{
    protected override RegimeWording Loler =>
        new()
        {
            Title = "Report of thorough examination",
            Law = "Lifting Operations and Lifting Equipment Regulations 1998 (SI 1998/2307), regulation 10(1)(b) and Schedule 1",
            ShortLaw = "SI 1998/2307",
            Examination = "thorough examination",
            Keys = "Small boxed numbers give the paragraph of Schedule 1 to SI 1998/2307 that asks for the particular.",
            DutyNow = "The item must not be used before the defect is rectified: regulation 10(3)(a) of SI 1998/2307.",
            DutyLater =
                "After the time stated the item must not be used until the defect is rectified: regulation 10(3)(b) of SI 1998/2307.",
            NoticeLead =
                "A person making a thorough examination must notify the employer forthwith of any defect which in that "
                + "person's opinion is, or could become, a danger to persons: regulation 10(1)(a) of the Lifting "
                + "Operations and Lifting Equipment Regulations "
                + "1998 (SI 1998/2307).",
            Authorities = new Dictionary<Recipient, string>
            {
                [Recipient.HealthAndSafetyExecutive] =
                    "Health and Safety Executive (the item is hired or leased: regulation 10(4) of SI 1998/2307)",
                [Recipient.AuthorityForThePremises] =
                    "Enforcing authority for the premises where the item was examined (regulation 10(4) of SI 1998/2307)",
            },
            Bases = new Dictionary<Basis, string>
            {
                [Basis.SixMonth] = "within an interval of 6 months (regulation 9(3)(a)(i))",
                [Basis.TwelveMonth] = "within an interval of 12 months (regulation 9(3)(a)(ii))",
                [Basis.Scheme] = "in accordance with an examination scheme (regulation 9(3)(a)(iii))",
                [Basis.Exceptional] = "after exceptional circumstances (regulation 9(3)(a)(iv))",
                [Basis.FirstUse] = "first thorough examination, before the item is first put into service (regulation 9(1))",
                [Basis.Installation] =
                    "first thorough examination after installation, or after assembly at a new site or in a new location "
                    + "(regulation 9(2))",
            },
            BasesByName = new Dictionary<Basis, string>
            {
                [Basis.SixMonth] = "interval of 6 months (regulation 9(3)(a)(i))",
                [Basis.TwelveMonth] = "interval of 12 months (regulation 9(3)(a)(ii))",
                [Basis.Scheme] = "examination scheme (regulation 9(3)(a)(iii))",
            },
        };

    protected override RegimeWording LolerNorthernIreland =>
        Loler with
        {
            Law =
                "Lifting Operations and Lifting Equipment Regulations (Northern Ireland) 1999 (SR 1999/304), regulation "
                + "10 and Schedule 2",
            ShortLaw = "SR 1999/304",
            Keys =
                "Small boxed numbers give the paragraph of Schedule 2 to SR 1999/304 that asks for the particular; after "
                + "8(a) the numbers were not checked against the original.",
            DutyNow = "The item must not be used before the defect is rectified: regulation 10(3) of SR 1999/304.",
            DutyLater = "After the time stated the item must not be used until the defect is rectified: regulation 10(3) of SR 1999/304.",
            NoticeLead =
                "A person making a thorough examination must notify the employer forthwith of any defect which in that "
                + "person's opinion is, or could become, a danger to persons: regulation 10 of the Lifting Operations "
                + "and Lifting Equipment Regulations "
                + "(Northern Ireland) 1999 (SR 1999/304).",
            Authorities = new Dictionary<Recipient, string>
            {
                [Recipient.EnforcingAuthority] =
                    "The enforcing authority (regulation 10 of SR 1999/304; which authority it is was not confirmed)",
            },
        };

    protected override RegimeWording WorkAtHeight =>
        new()
        {
            Title = "Report of periodic inspection",
            Law =
                "Work at Height Regulations 2005 (SI 2005/735), regulation 12. For this equipment the law prescribes a "
                + "record, not its contents: the particulars here are the issuer's choice",
            ShortLaw = "SI 2005/735",
            Examination = "inspection",
            Keys = null,
            DutyNow =
                "The item must not be used before the defect is rectified. Personal protective equipment has to be kept "
                + "in an efficient state, in efficient working order and in good repair: regulation 7 of SI 1992/2966.",
            DutyLater = "After the time stated the item must not be used until the defect is rectified.",
            NoticeLead =
                "The inspection found a defect that is, or could become, a danger to persons. This notice notifies " + "the employer.",
            Bases = new Dictionary<Basis, string>
            {
                [Basis.SixMonth] = "within an interval of 6 months",
                [Basis.TwelveMonth] = "within an interval of 12 months",
                [Basis.Scheme] = "in accordance with a written scheme",
                [Basis.Exceptional] = "after exceptional circumstances (regulation 12(3))",
                [Basis.FirstUse] = "first inspection, before the item is first put into service",
                [Basis.Installation] = "first inspection after installation or assembly in a new position",
            },
            BasesByName = new Dictionary<Basis, string>
            {
                [Basis.SixMonth] = "interval of 6 months",
                [Basis.TwelveMonth] = "interval of 12 months",
                [Basis.Scheme] = "written scheme",
            },
        };
}

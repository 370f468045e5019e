using ExamDocs.Core.Records;

namespace ExamDocs.Templates.Wording;

public static partial class English
{
    private static readonly RegimeWording Loler = new()
    {
        Title = "Report of thorough examination",
        Law = "Lifting Operations and Lifting Equipment Regulations 1998 (SI 1998/2307), regulation 10(1)(b) and Schedule 1",
        ShortLaw = "SI 1998/2307",
        Examination = "thorough examination",
        Keys = "Small boxed numbers give the paragraph of Schedule 1 to SI 1998/2307 that asks for the particular.",
        DutyNow = "The item must not be used before the defect is rectified: regulation 10(3)(a) of SI 1998/2307.",
        DutyLater = "The item must not be used after the time stated, and before the defect is rectified: regulation 10(3)(b) of SI 1998/2307.",
        NoticeLead = "Whoever makes a thorough examination tells the employer forthwith of a defect that is, or could become, a danger to persons: regulation 10(1)(a) of the Lifting Operations and Lifting Equipment Regulations 1998 (SI 1998/2307).",
        AuthorityWhenHired = "Health and Safety Executive (the item is hired or leased: regulation 10(4) of SI 1998/2307)",
        AuthorityWhenOwned = "Enforcing authority for the premises where the item was examined (regulation 10(4) of SI 1998/2307)",
        Bases = new Dictionary<Basis, string>
        {
            [Basis.SixMonth] = "within an interval of 6 months (regulation 9(3)(a)(i))",
            [Basis.TwelveMonth] = "within an interval of 12 months (regulation 9(3)(a)(ii))",
            [Basis.Scheme] = "in accordance with an examination scheme (regulation 9(3)(a)(iii))",
            [Basis.Exceptional] = "after exceptional circumstances (regulation 9(3)(a)(iv))",
            [Basis.FirstUse] = "first thorough examination, before the item is first put into service (regulation 9(1))",
            [Basis.Installation] = "first thorough examination after installation, or after assembly at a new site or in a new location (regulation 9(2))",
        },
    };

    private static readonly RegimeWording WorkAtHeight = new()
    {
        Title = "Report of periodic inspection",
        Law = "Work at Height Regulations 2005 (SI 2005/735), regulation 12. For this equipment the law prescribes a record, not its contents: the particulars here are the issuer's choice",
        ShortLaw = "SI 2005/735",
        Examination = "inspection",
        Keys = null,
        DutyNow = "The item must not be used before the defect is put right. Personal protective equipment has to be kept in an efficient state, in efficient working order and in good repair: regulation 7 of SI 1992/2966.",
        DutyLater = "The item must not be used after the time stated, and before the defect is put right.",
        NoticeLead = "The inspection found a defect that is, or could become, a danger to persons. The employer is told of it by this notice.",
        AuthorityWhenHired = null,
        AuthorityWhenOwned = null,
        Bases = new Dictionary<Basis, string>
        {
            [Basis.SixMonth] = "within an interval of 6 months",
            [Basis.TwelveMonth] = "within an interval of 12 months",
            [Basis.Scheme] = "in accordance with a written scheme",
            [Basis.Exceptional] = "after exceptional circumstances (regulation 12(3))",
            [Basis.FirstUse] = "first inspection, before the item is first put into service",
            [Basis.Installation] = "first inspection after installation or assembly in a new position",
        },
    };

    private static readonly RegimeWording Unnamed = WorkAtHeight with
    {
        Title = "Report of examination",
        Law = "The law this examination was made under is not recorded",
        ShortLaw = NotRecorded,
        Examination = "examination",
        DutyNow = "The item must not be used before the defect is put right.",
        NoticeLead = "The examination found a defect that is, or could become, a danger to persons. The employer is told of it by this notice.",
    };

    private static readonly Dictionary<string, RegimeWording> Regimes = new(StringComparer.Ordinal)
    {
        ["gb-loler"] = Loler,
        ["gb-wah"] = WorkAtHeight,
    };

    /// <summary>The wording of this regime; a wording that claims no law where the regime is unknown.</summary>
    public static RegimeWording Regime(string? id) => id is not null && Regimes.TryGetValue(id, out var found) ? found : Unnamed;
}

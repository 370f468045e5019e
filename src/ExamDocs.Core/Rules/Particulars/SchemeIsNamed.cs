using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class SchemeIsNamed : ExaminationRule
{
    public SchemeIsNamed()
        : base(
            new RuleInfo(
                "PAR019",
                Severity.Error,
                "An examination under a scheme names the scheme",
                "Only a scheme drawn up by a competent person sets intervals of its own.",
                $"Type the scheme's reference, its author and its interval in months.",
                "SI 1998/2307 regs 2(1) and 9(3)(a)(iii)"
            )
        )
    {
        Forbid(
            e => IsScheme(e.Examination) && e.Examination.Scheme?.Reference is null,
            "/scheme/reference",
            _ => $"the reference of the examination scheme is missing"
        );
        Forbid(
            e => IsScheme(e.Examination) && e.Examination.Scheme?.Author is null,
            "/scheme/author",
            _ => $"the author of the examination scheme is missing"
        );
        Forbid(
            e => IsScheme(e.Examination) && e.Examination.Scheme?.Months is null,
            "/scheme/months",
            _ => $"the interval of the examination scheme is missing"
        );
    }

    private static bool IsScheme(Examination examination) => examination.Basis is Basis.Scheme;
}

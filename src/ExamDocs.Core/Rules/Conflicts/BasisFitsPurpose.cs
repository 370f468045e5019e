using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class BasisFitsPurpose : RegimeRule
{
    public BasisFitsPurpose()
        : base(
            new RuleInfo(
                "CON006",
                Severity.Error,
                "The basis fits the purpose",
                "Kit that lifts persons, and accessories, are examined every 6 months: a 12-month basis is not open to them.",
                $"Type six-month, or correct the purpose.",
                "SI 1998/2307 reg 9(3)(a)(i) and (ii)"
            )
        ) => Forbid(DoesNotFit, "/basis", Words);

    private static bool DoesNotFit(ExaminationCase e) =>
        e.Examination.Basis is Basis.TwelveMonth && e.Regimes.Any(r => r.MonthsFor(e.Item?.Item.Purpose, e.On) < TwelveMonths);

    private const int TwelveMonths = 12;

    private static Message Words(ExaminationCase e) =>
        e.Item?.Item.Purpose is { } purpose
            ? (Message)$"the basis twelve-month does not fit the purpose {Records.Words.Purposes.WordFor(purpose)}"
            : $"the basis twelve-month does not fit an item whose purpose is not stated";
}

using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class UnobtainableIsExplained : Rule<RowCase<MakersLimits>>
{
    public UnobtainableIsExplained()
        : base(
            new RuleInfo(
                "PAR031",
                Severity.Error,
                "Unobtainable instructions say where they were sought and how long the item may serve",
                "Where the maker can no longer be asked, the examiner takes the decision and its grounds upon themselves.",
                $"Say where the instructions were sought, and type the last day of use that you set yourself.",
                "common practice, no source"
            )
        )
    {
        Forbid(
            l => l.Row.Unobtainable is { Sought: null },
            "/unobtainable/sought",
            _ => $"where the instructions were sought is not recorded"
        );
        Forbid(
            l => l.Row.Unobtainable is { UseUntil: null },
            "/unobtainable/useUntil",
            _ => $"the examiner's own end of service is missing"
        );
    }
}

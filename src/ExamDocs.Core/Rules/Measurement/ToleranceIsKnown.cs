using ExamDocs.Core.Findings;
using ExamDocs.Core.Measurement;

namespace ExamDocs.Core.Rules.Measurement;

public sealed class ToleranceIsKnown : ExaminationRule
{
    public ToleranceIsKnown()
        : base(
            new RuleInfo(
                "MEA004",
                Severity.Warning,
                "Diameters measured can be compared with the maker's",
                "Without the maker's nominal diameter and tolerance a profile only compares the rope with itself; no limit is made up.",
                $"Record the nominal diameter and the tolerance from the maker's instructions.",
                "common practice, no source"
            )
        ) =>
        Forbid(
            e =>
                e.Examination.Diameters.Count > 0
                && (e.Item is not { Limits.All: { Count: > 0 } limits } || limits.Any(l => DiameterBand.Of(l) is null)),
            "/diameters",
            _ => $"diameters were measured, and the maker's nominal diameter or tolerance is not recorded"
        );
}

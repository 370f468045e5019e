using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Determination.Undetermined;

/// <summary>U3. Errors of a whole never reach its parts; see <see cref="FindingReach"/>.</summary>
internal sealed class RecordHasErrors : IItemRule
{
    public OutcomeRuleInfo Info { get; } =
        new(
            "U3",
            "The record has an error that reaches it",
            "A record that contradicts itself or lacks what the law asks for cannot carry a decision.",
            "the rule named in the finding"
        );

    public IEnumerable<Reason> Reasons(ItemCase item, Verdicts verdicts) =>
        from finding in verdicts[item].Findings.Where(f => f.Severity is Severity.Error).DistinctBy(f => (f.Code, f.Message))
        select Info.Because(w => w.Reasons.RecordError(finding), finding.Source);
}

using ExamDocs.Core.Cases;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Determination.Withdraw;

/// <summary>W2. In doubt, take it out.</summary>
internal sealed class CriterionIsInDoubt : IExaminationRule
{
    public OutcomeRuleInfo Info { get; } =
        new(
            "W2",
            "A criterion is in doubt",
            "An item may stay in service only when it can be said with authority that it is safe.",
            "EN 365:2004 (as quoted elsewhere): withdraw at once if in doubt"
        );

    public IEnumerable<WithdrawalReason> Reasons(ItemCase item, ExaminationCase examination) =>
        from o in examination.ObservedOn(item)
        where o.Observation.State is ObservedState.Doubt
        select new WithdrawalReason(
            Info.Because(w => w.Reasons.InDoubt(w.Observed(o.Observation, o.Criterion?.Question))),
            o.Criterion?.NeverReleasable is true
        );
}

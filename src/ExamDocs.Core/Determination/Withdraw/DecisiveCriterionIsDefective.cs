using ExamDocs.Core.Cases;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Determination.Withdraw;

/// <summary>W1. A defect against a criterion that the catalogue does not know counts as decisive.</summary>
internal sealed class DecisiveCriterionIsDefective : IExaminationRule
{
    public OutcomeRuleInfo Info { get; } =
        new(
            "W1",
            "A decisive criterion is defective",
            "Hard reject criteria come first: nothing else about the item can outweigh one.",
            "common practice, no source; where the criterion has one, its source stands with it in the catalogue"
        );

    public IEnumerable<WithdrawalReason> Reasons(ItemCase item, ExaminationCase examination) =>
        from o in examination.ObservedOn(item)
        where o.Observation.State is ObservedState.Defect && o.Criterion?.Class is null or CriterionClass.Decisive
        select new WithdrawalReason(
            Info.Because(w => w.Reasons.Defective(w.Observed(o.Observation, o.Criterion?.Question)), o.Criterion?.Source ?? Info.Source),
            o.Criterion?.NeverReleasable is true
        );
}

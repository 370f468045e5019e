using ExamDocs.Core.Cases;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Determination.Undetermined;

/// <summary>U2. An answer without a state, and a state that the criterion does not allow, are no answers.</summary>
internal sealed class AnswerIsNotAllowed : IItemRule
{
    public OutcomeRuleInfo Info { get; } =
        new(
            "U2",
            "An answer is not one that the criterion allows",
            "A misspelt answer, or one that dodges a question which must be answered, is no answer.",
            "record format examdocs/1 and the criteria catalogue"
        );

    public IEnumerable<Reason> Reasons(ItemCase item, Verdicts verdicts) =>
        from examination in item.Deciding
        from o in examination.ObservedOn(item)
        where IsRefused(o.Observation, o.Criterion)
        select Info.Because(w => w.Reasons.AnswerNotAllowed(o.Observation.StateAsTyped, o.Observation.Criterion));

    private static bool IsRefused(Observation observation, Criterion? criterion) =>
        observation.State is not { } state || (criterion is not null && !criterion.Allows(state));
}

using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class CriterionBelongsToCategory : Rule<ExaminationCase>
{
    public CriterionBelongsToCategory()
        : base(
            new RuleInfo(
                "CON015",
                Severity.Error,
                "Every criterion answered is one of the category's",
                "An answer under a wrong criterion leaves the right criterion without one.",
                $"Type a criterion of the item's category; examdocs criteria lists them.",
                "criteria catalogue"
            )
        ) =>
        Each(e =>
            e.Category is null
                ? []
                : e
                    .Observations.Where(o => o.Criterion is null)
                    .Select(o => new Fault(
                        $"{o.Path[e.Path.Length..]}/criterion",
                        o.Observation.Criterion is { } typed
                            ? (Message)$"'{typed}' is not a criterion of {e.Category.Id}"
                            : $"the criterion of this answer is missing",
                        o.Observation.Criterion is { } t && SpellingSuggestion.Of(t, e.Category.Criteria.Select(c => c.Id)) is { } near
                            ? (Message)$"Did you mean '{near}'?"
                            : null
                    ))
        );
}

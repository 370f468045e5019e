using ExamDocs.Core.Cases;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class DefectMatchesObservation : ExaminationRule
{
    public DefectMatchesObservation()
        : base(
            new RuleInfo(
                "CON019",
                Severity.Error,
                "A defect and the observation it belongs to agree",
                "A criterion cannot be clear and have a defect that is a danger; on a decisive criterion any defect ends the "
                    + "service, whenever it becomes a danger.",
                $"Name the criterion that has the defect, and answer it with defect.",
                "record format examdocs/1"
            )
        ) =>
        Each(e =>
            e.Category is null
                ? []
                : e
                    .Examination.Defects.Select(
                        (d, i) =>
                            Problem(d, e) is { } problem
                                ? new Fault($"/defects/{Index.Of(i)}/criterion", problem, Cause: CauseOf(d, e))
                                : null
                    )
                    .OfType<Fault>()
        );

    /// <summary>That its answer stands under a misspelt criterion.</summary>
    private static PossibleCause? CauseOf(Defect defect, ExaminationCase e)
    {
        if (e.Category?.Find(defect.Criterion) is not { } criterion)
            return null;
        var astray = e.Observations.FirstOrDefault(o =>
            o is { Criterion: null, Observation.Criterion: { } typed } && SpellingSuggestion.Of(typed, [criterion.Id]) is not null
        );
        return astray.Path is null ? null : new PossibleCause($"{astray.Path}/criterion", "CON015");
    }

    private static Message? Problem(Defect defect, ExaminationCase e)
    {
        if (defect.Criterion is null)
            return null;
        if (e.Category!.Find(defect.Criterion) is not { } criterion)
            return $"'{defect.Criterion}' is not a criterion of {e.Category.Id}";
        if (criterion.Class is not CriterionClass.Decisive && defect is { Danger: Danger.Later, ImminentRisk: not true })
            return null;
        var answers = e
            .Examination.Observations.Where(o => string.Equals(o.Criterion, defect.Criterion, StringComparison.Ordinal))
            .ToList();
        return answers.Exists(o => o.State is ObservedState.Defect or ObservedState.Doubt or null) ? null
            : answers.Select(o => o.StateAsTyped).FirstOrDefault() is { } answer
                ? (Message)$"{defect.Criterion} has a defect, but its answer is {answer}"
            : $"{defect.Criterion} has a defect, but its answer is not recorded";
    }
}

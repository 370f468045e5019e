using ExamDocs.Core.Cases;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class LaterDefectIsNotClear : ExaminationRule
{
    public LaterDefectIsNotClear()
        : base(
            new RuleInfo(
                "CON033",
                Severity.Warning,
                "A criterion with a defect that could become a danger is answered with noted or defect",
                "A report that calls a criterion clear, or not examined, and enters a defect for it says two things; the entry holds.",
                $"Answer the criterion with noted or defect; or correct the criterion that the entry names.",
                "common practice, no source"
            )
        ) =>
        Each(e =>
            e.Defects.Where(d => d.Defect is { Danger: Danger.Later, ImminentRisk: not true })
                .Select(d => Problem(d.Defect, e) is { } problem ? new Fault($"{d.Path[e.Path.Length..]}/criterion", problem) : null)
                .OfType<Fault>()
        );

    /// <summary>What contradicts; null where nothing does. Decisive criteria are left out: there it is an error of another rule.</summary>
    private static Message? Problem(Defect defect, ExaminationCase e)
    {
        if (e.Category?.Find(defect.Criterion) is not { Class: not CriterionClass.Decisive } criterion)
            return null;
        var answers = criterion.AnswersIn(e.Examination).ToList();
        return answers.Exists(o => o.State is ObservedState.Defect or ObservedState.Doubt or ObservedState.Noted or null) ? null
            : answers.Select(o => o.StateAsTyped).FirstOrDefault() is { } answer
                ? (Message)$"{criterion.Id} has a defect that could become a danger, but its answer is {answer}"
            : $"{criterion.Id} has a defect that could become a danger, but its answer is not recorded";
    }
}

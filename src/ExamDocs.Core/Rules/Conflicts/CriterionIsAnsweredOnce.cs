using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class CriterionIsAnsweredOnce : Rule<ExaminationCase>
{
    public CriterionIsAnsweredOnce()
        : base(
            new RuleInfo(
                "CON007",
                Severity.Error,
                "Every criterion is answered once in an examination",
                "Two answers to one question contradict each other; the worse holds until one is taken out.",
                $"Keep the answer that is right.",
                "record format examdocs/1"
            )
        ) =>
        Each(e =>
            e.Observations.DistinctBy(o => o.Observation.Criterion, StringComparer.Ordinal).Count() < e.Observations.Count ? Faults(e) : []
        );

    private static IEnumerable<Fault> Faults(ExaminationCase e) =>
        e
            .Observations.Where(o => o.Observation.Criterion is not null)
            .GroupBy(o => o.Observation.Criterion, StringComparer.Ordinal)
            .SelectMany(g => g.Skip(1))
            .Select(o => new Fault($"{o.Path[e.Path.Length..]}/criterion", $"{o.Observation.Criterion} is answered more than once"));
}

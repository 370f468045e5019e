using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Measurement;

public sealed class ReadingsAreCrossed : ExaminationRule
{
    public ReadingsAreCrossed()
        : base(
            new RuleInfo(
                "MEA003",
                Severity.Note,
                "Every station has two readings at right angles",
                "A rope that has become oval hides it from a single reading.",
                $"Measure each place in two directions at right angles.",
                "EN 892:2012 5.3.1 (unofficial copy)"
            )
        ) =>
        Each(e =>
            e.Stations.Where(s => s.Station.ReadingsMm.Count == 1)
                .Select(s => new Fault(s.Path[e.Path.Length..], $"the station has a single reading"))
        );
}

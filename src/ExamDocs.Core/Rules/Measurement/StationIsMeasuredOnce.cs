using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Rules.Measurement;

public sealed class StationIsMeasuredOnce : Rule<ExaminationCase>
{
    public StationIsMeasuredOnce()
        : base(
            new RuleInfo(
                "MEA002",
                Severity.Error,
                "Every station is in the profile once",
                "Two sets of readings at one place contradict each other, or one of them belongs elsewhere.",
                $"Put all readings of one place into one station.",
                "record format examdocs/1"
            )
        ) =>
        Each(e =>
            e.Stations.Where(s => s.Station.PositionMm is not null)
                .GroupBy(s => s.Station.PositionMm)
                .SelectMany(g => g.Skip(1))
                .Select(s => new Fault(
                    s.Path[e.Path.Length..],
                    $"the place at {s.Station.PositionMm!.Value} mm is measured more than once"
                ))
        );
}

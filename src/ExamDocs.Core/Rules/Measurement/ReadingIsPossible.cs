using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Measurement;

public sealed class ReadingIsPossible : Rule<ExaminationCase>
{
    public ReadingIsPossible()
        : base(
            new RuleInfo(
                "MEA001",
                Severity.Error,
                "Every station has a position and readings",
                "A mean without its readings, or a reading nobody can place, measures nothing.",
                $"Type the distance from the reference end and at least one reading, both in millimetres.",
                "EN 892:2012 5.3.1 (unofficial copy): readings at several levels"
            )
        ) =>
        Each(e =>
            e.Stations.Where(s => s.Station.PositionMm is null || s.Station.ReadingsMm.Count == 0)
                .Select(s => new Fault(
                    s.Path[e.Path.Length..],
                    s.Station.PositionMm is null ? (Message)$"the station has no position" : $"the station has no reading"
                ))
        );
}

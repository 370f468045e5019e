using System.Text;
using ExamDocs.Core;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Arrays;

/// <summary>Rope bridges answered as rows say, made from one record without going through text each time.</summary>
internal sealed class SixByTemplate
{
    private readonly ExaminationRecord _record;
    private readonly List<Observation?[]> _answers;
    private readonly List<Defect> _defects;

    public SixByTemplate(int items)
    {
        var kind = Kinds.All["rope-bridge"];
        _record = Read([.. Enumerable.Repeat(new int[kind.Criteria.Count], items)]);
        _answers =
        [
            .. kind.Criteria.Values.Select(
                (_, c) => ArrayVisit.Levels.Select((level, l) => level == "" ? null : One(kind, c, l).Observations[c]).ToArray()
            ),
        ];
        _defects = [.. kind.Criteria.Values.Select((_, c) => One(kind, c, 3).Defects[0])];
    }

    public IReadOnlyList<DeterminedItem> Determined(int[][] rows)
    {
        var examinations = _record.Examinations.Zip(rows, (examination, row) =>
            examination with
            {
                Observations = [.. row.Select((level, c) => _answers[c][level]).OfType<Observation>()],
                Defects =
                [
                    .. row.Select(
                            (level, c) =>
                                level == 3 ? _defects[c] with { BecomesDangerOn = _record.Visit.ExaminedOn!.Value.PlusDays(730) } : null
                        )
                        .OfType<Defect>(),
                ],
            }
        );
        return Determine
            .Visit(_record with { Examinations = [.. examinations] }, [], History.None, _record.Visit.ExaminedOn!.Value.PlusDays(3))
            .Items;
    }

    private static Examination One(Kind kind, int criterion, int level)
    {
        var row = new int[kind.Criteria.Count];
        row[criterion] = level;
        return Read([row]).Examinations[0];
    }

    private static ExaminationRecord Read(int[][] rows) =>
        JsonRecordReader.Read(Encoding.UTF8.GetBytes(ArrayVisit.Of("rope-bridge", rows).Json()), "record.json").Record!;
}

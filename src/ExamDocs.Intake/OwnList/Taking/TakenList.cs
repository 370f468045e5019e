using ExamDocs.Core.Records;
using ExamDocs.Intake.OwnList.Mapping;

namespace ExamDocs.Intake.OwnList.Taking;

/// <summary>What became of a list.</summary>
/// <param name="Record">Its items, and what it has as out of use as earlier withdrawals. Nothing in it is examined.</param>
/// <param name="LeftOut">Every filled row that became no item.</param>
/// <param name="Remarks">What has to be known about the rest, a sentence each.</param>
public sealed record TakenList(ExaminationRecord Record, IReadOnlyList<RowLeftOut> LeftOut, IReadOnlyList<string> Remarks)
{
    /// <summary>How many items come in withdrawn or destroyed.</summary>
    public int Held { get; init; }
}

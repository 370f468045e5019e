using ExamDocs.Core.Recalls;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Recalling;
using ExamDocs.Workbench.Desk;

namespace ExamDocs.Workbench.Pages;

/// <summary>Where a safety notice is dropped or typed.</summary>
/// <param name="Kept">Notices that were looked up before.</param>
/// <param name="Typed">What stands in the form.</param>
/// <param name="Faults">What is wrong with the notice; empty for nothing.</param>
/// <param name="RegisterMissing">That the register is not there; null where it is.</param>
/// <param name="Words">The language of the page.</param>
public sealed record RecallModel(
    IReadOnlyList<KeptNotice> Kept,
    NoticeTyped Typed,
    IReadOnlyList<string> Faults,
    string? RegisterMissing,
    WorkbenchWords Words
);

/// <summary>What a safety notice says of the items of the register, and what is done about them.</summary>
/// <param name="Kept">The notice.</param>
/// <param name="Items">Every item, the affected first; empty while papers are made.</param>
/// <param name="Run">Its latest sweep; null where there was none since the program started.</param>
/// <param name="RegisterMissing">That the register is not there; null where it is.</param>
/// <param name="Words">The language of the page.</param>
public sealed record RecalledModel(
    KeptNotice Kept,
    IReadOnlyList<PlannedItem> Items,
    LongRun<SweepResult>? Run,
    string? RegisterMissing,
    WorkbenchWords Words
)
{
    /// <summary>Whether nobody has said who works here, who would sign.</summary>
    public bool IsUnknown { get; init; }

    public bool IsAtWork => Run is { IsAtWork: true };

    /// <summary>The worst standing first.</summary>
    public IReadOnlyList<PlannedItem> Of(RecallVerdict verdict) =>
        [
            .. Items
                .Where(i => i.Item.Verdict == verdict)
                .OrderByDescending(i => i.IsNew)
                .ThenByDescending(i => i.Item.Standing)
                .ThenBy(i => i.Item.Item.Id, StringComparer.OrdinalIgnoreCase),
        ];

    public int Withdraw => Items.Count(i => i.Action is SweepAction.Withdraw);

    public int Hold => Items.Count(i => i.Action is SweepAction.Hold);
}

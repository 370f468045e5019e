using ExamDocs.Core.Cases;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Determination.Withdraw;

/// <summary>W4. The day a defect becomes a danger is already a day of danger.</summary>
internal sealed class DefectIsDangerNow : IExaminationRule
{
    public OutcomeRuleInfo Info { get; } = new("W4", "A recorded defect is a danger now",
        "An item with a defect that is a danger may not be used before the defect is put right.",
        "SI 1998/2307 reg 10(3)");

    public IEnumerable<WithdrawalReason> Reasons(ItemCase item, ExaminationCase examination)
    {
        foreach (var (defect, _) in examination.Defects)
        {
            var what = defect.Description ?? (defect.Criterion is { } id ? Say.Criterion(id) : "defect not described");
            if (defect.ImminentRisk is true)
                yield return Because($"existing or imminent risk of serious personal injury: {what}", defect, item);
            else if (defect.Danger is Danger.Now)
                yield return Because($"a danger now: {what}", defect, item);
            else if (defect.Danger is Danger.Later && defect.BecomesDangerOn is null)
                yield return Because($"could become a danger, and the time by which is not recorded: {what}", defect, item);
            else if (defect.Danger is Danger.Later && !(defect.BecomesDangerOn > examination.On))
                yield return Because($"could become a danger by {Say.Day(defect.BecomesDangerOn!.Value)}, which is not after the day examined: {what}", defect, item);
        }
    }

    private WithdrawalReason Because(string text, Defect defect, ItemCase item) =>
        new(Info.Because(text), item.Category?.Find(defect.Criterion)?.NeverReleasable is true);
}

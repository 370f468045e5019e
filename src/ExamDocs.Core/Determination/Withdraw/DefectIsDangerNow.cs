using ExamDocs.Core.Cases;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Determination.Withdraw;

/// <summary>W4. On the day on which a defect becomes a danger, it is one already.</summary>
internal sealed class DefectIsDangerNow : IExaminationRule
{
    public OutcomeRuleInfo Info { get; } =
        new(
            "W4",
            "A recorded defect is a danger now",
            "An item with a defect that is a danger may not be used before the defect is put right.",
            "SI 1998/2307 reg 10(3)"
        );

    public IEnumerable<WithdrawalReason> Reasons(ItemCase item, ExaminationCase examination)
    {
        foreach (var (defect, _) in examination.Defects)
        {
            if (defect.ImminentRisk is true)
                yield return Because(w => w.Reasons.ImminentRisk(w.What(defect)), defect, item);
            else if (defect.Danger is Danger.Now)
                yield return Because(w => w.Reasons.DangerNow(w.What(defect)), defect, item);
            else if (defect.Danger is Danger.Later && defect.BecomesDangerOn is null)
                yield return Because(w => w.Reasons.DangerWithoutTime(w.What(defect)), defect, item);
            else if (defect is { Danger: Danger.Later, BecomesDangerOn: { } by } && !(by > examination.On))
                yield return Because(w => w.Reasons.DangerNotAfterExamination(by, w.What(defect)), defect, item);
        }
    }

    private WithdrawalReason Because(Func<SentenceBook, string> say, Defect defect, ItemCase item) =>
        new(Info.Because(say), item.Category?.Find(defect.Criterion)?.NeverReleasable is true);
}

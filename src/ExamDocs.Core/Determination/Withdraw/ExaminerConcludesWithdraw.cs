using ExamDocs.Core.Cases;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Determination.Withdraw;

/// <summary>W6. The program is never kinder than the examiner.</summary>
internal sealed class ExaminerConcludesWithdraw : IExaminationRule
{
    public OutcomeRuleInfo Info { get; } =
        new(
            "W6",
            "The examiner concludes that it must be withdrawn",
            "The competent person's stricter judgement stands, whatever the rules find.",
            "SI 1998/2307 reg 10(1): a defect that in the examiner's opinion is or could become a danger"
        );

    public IEnumerable<WithdrawalReason> Reasons(ItemCase item, ExaminationCase examination)
    {
        if (examination.Examination.Conclusion is Conclusion.Withdraw)
            yield return new(Info.Because(w => w.Reasons.ExaminerWithdraws));
    }
}

using ExamDocs.Core.Cases;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Determination.Withdraw;

/// <summary>W3. Only a defect with a remedy and a day still to come leaves the item in use, until the day before.</summary>
internal sealed class JudgedDefectHasNoLaterDate : IExaminationRule
{
    public OutcomeRuleInfo Info { get; } =
        new(
            "W3",
            "A judged or advisory criterion is defective without a later date and a remedy",
            "A defect that is not yet a danger may stay only where the report says by when it could become one and what must be done.",
            "SI 1998/2307 Schedule 1 para 8(c)"
        );

    public IEnumerable<WithdrawalReason> Reasons(ItemCase item, ExaminationCase examination) =>
        from o in examination.ObservedOn(item)
        where
            o.Observation.State is ObservedState.Defect
            && o.Criterion?.Class is CriterionClass.Judged or CriterionClass.Advisory
            && !IsPutOff(o.Observation, examination)
        select new WithdrawalReason(
            Info.Because(w => w.Reasons.DefectWithoutLaterDate(w.Observed(o.Observation, o.Criterion?.Question))),
            o.Criterion?.NeverReleasable is true
        );

    private static bool IsPutOff(Observation observation, ExaminationCase examination)
    {
        var entries = examination
            .Examination.Defects.Where(d => string.Equals(d.Criterion, observation.Criterion, StringComparison.Ordinal))
            .ToList();
        return entries.Count > 0
            && entries.TrueForAll(d => d.Danger is Danger.Later && d.BecomesDangerOn > examination.On && d.Remedy is not null);
    }
}

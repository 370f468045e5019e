using ExamDocs.Core.Cases;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using NodaTime;

namespace ExamDocs.Core.Determination.FitUntil;

/// <summary>D1. The day before the day of danger is the last day of use.</summary>
internal sealed class DefectBecomesDanger : IUntilRule
{
    public OutcomeRuleInfo Info { get; } =
        new(
            "D1",
            "A defect could become a danger by a stated time",
            "The item may not be used after the stated time until the defect is put right.",
            "SI 1998/2307 reg 10(3)(b) and Schedule 1 para 8(c)"
        );

    public IEnumerable<(LocalDate LastDay, Reason Reason)> Days(ItemCase item, Verdicts verdicts) =>
        from examination in item.Deciding
        from d in examination.Defects
        where d.Defect.Danger is Danger.Later && d.Defect.BecomesDangerOn is not null
        let last = d.Defect.BecomesDangerOn!.Value.PlusDays(-1)
        select (last, Info.Because(w => w.Reasons.NotAfterDanger(last, d.Defect.BecomesDangerOn!.Value, w.What(d.Defect))));
}

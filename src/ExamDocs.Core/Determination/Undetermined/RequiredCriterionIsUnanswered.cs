using ExamDocs.Core.Cases;

namespace ExamDocs.Core.Determination.Undetermined;

/// <summary>U1. A question left out counts like one that could not be answered.</summary>
internal sealed class RequiredCriterionIsUnanswered : IItemRule
{
    public OutcomeRuleInfo Info { get; } =
        new(
            "U1",
            "A required criterion has no answer or was not examined",
            "A thorough examination leaves out nothing that could end the item's service.",
            "SI 1998/2307 reg 2(1): thorough examination"
        );

    public IEnumerable<Reason> Reasons(ItemCase item, Verdicts verdicts) =>
        from examination in item.Deciding
        from criterion in item.Category?.Criteria ?? []
        where criterion.IsMissingIn(examination.Examination)
        let isAnswered = criterion.AnswersIn(examination.Examination).Any()
        select Info.Because(w =>
            isAnswered
                ? w.Reasons.CriterionNotExamined(criterion.Id, criterion.Question)
                : w.Reasons.NoAnswer(criterion.Id, criterion.Question)
        );
}

using ExamDocs.Core.Cases;
using NodaTime;

namespace ExamDocs.Core.Determination.FitUntil;

/// <summary>D2. Nobody will examine it again before its service ends.</summary>
internal sealed class ServiceEndsBeforeNextExamination : IUntilRule
{
    public OutcomeRuleInfo Info { get; } =
        new(
            "D2",
            "Its end of service falls before the next examination is due",
            "The limit would pass unnoticed between two examinations.",
            "the maker's instructions recorded in the limits"
        );

    public IEnumerable<(LocalDate LastDay, Reason Reason)> Days(ItemCase item, Verdicts verdicts)
    {
        if (item.Life.GoverningLimit is { } limit && item.NextBy is { } next && limit.LastDay < next)
            yield return (limit.LastDay, Info.Because(w => w.Reasons.NotAfterService(limit.LastDay, limit.Sentence.In(w))));
    }
}

using ExamDocs.Core.Cases;

namespace ExamDocs.Core.Determination.Withdraw;

/// <summary>W5. The last day of a limit is inside it.</summary>
internal sealed class ServiceHasEnded : IExaminationRule
{
    public OutcomeRuleInfo Info { get; } =
        new(
            "W5",
            "The end of service has passed, or it was stored too long or cleaned too often",
            "The maker's limit overrides the examiner's favourable view, never the unfavourable one.",
            "the maker's instructions recorded in the limits; that they override is common practice, no source"
        );

    public IEnumerable<WithdrawalReason> Reasons(ItemCase item, ExaminationCase examination)
    {
        if (examination.On is { } on && item.Life.GoverningLimit is { } limit && on > limit.LastDay)
            yield return new(Info.Because(w => w.Reasons.ServiceEnded(limit.LastDay, limit.Sentence.In(w))), NeverReleasable: true);
        if (item.Life.StoredTooLong is { } stored)
            yield return new(Info.Because(stored), NeverReleasable: true);
        if (item.Life.CleanedTooOften is { } cleaned && item.Deciding.Contains(examination))
            yield return new(Info.Because(cleaned), NeverReleasable: true);
    }
}

using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class DestroyedKitIsNotFit : ExaminationRule
{
    public DestroyedKitIsNotFit()
        : base(
            new RuleInfo(
                "CON018",
                Severity.Error,
                "What is lost, quarantined or not presented is not concluded fit",
                "Nobody can examine what was not there.",
                $"Correct the status or the disposal, or the examination. A quarantine ends with a release.",
                "common practice, no source"
            )
        ) => Forbid(e => e.Examination.Conclusion is Conclusion.Fit && IsGone(e), "/conclusion", e => How(e)!);

    private static bool IsGone(ExaminationCase e) => How(e) is not null;

    private static Message? How(ExaminationCase e) =>
        e.Item?.Item.Status switch
        {
            ItemStatus.Lost => $"the conclusion is fit, but the item is recorded as lost",
            ItemStatus.NotPresented => $"the conclusion is fit, but the item is recorded as not presented",
            _ => e.Context.Disposals.Of(e.ItemId).Any(d => StillHolds(d.Row, e))
                ? (Message)$"the conclusion is fit, but the item is recorded as quarantined or sent for repair"
            : Before(e).FirstOrDefault() is { } before
                ? (Message)
                    $"the conclusion is fit, but an earlier record put the item in quarantine on {before.On}, and no release is recorded"
            : null,
        };

    /// <summary>
    /// True where the disposal still contradicts a fit conclusion. A repair sent off before the examination may be over; a quarantine
    /// also needs a release. Destroyed kit is left to W11.
    /// </summary>
    private static bool StillHolds(Disposal disposal, ExaminationCase e) =>
        disposal.Action is null
        || (disposal.Action is not DisposalAction.Destroyed && (disposal.On is null || disposal.On >= e.On))
        || (disposal.Action is DisposalAction.Quarantined && !IsReleased(disposal, e));

    /// <summary>Quarantines in other records, which none of this record ends.</summary>
    private static IEnumerable<Disposal> Before(ExaminationCase e) =>
        e.Context.History.Quarantines.Where(q =>
            string.Equals(q.Item, e.ItemId, StringComparison.Ordinal) && !(q.On > e.On) && !IsReleased(q, e)
        );

    private static bool IsReleased(Disposal disposal, ExaminationCase e) =>
        e.Item is { } item && item.Releases.Any(r => r.Row.On >= disposal.On);
}

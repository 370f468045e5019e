using ExamDocs.Core.Cases;
using ExamDocs.Core.Determination.Withdraw;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Known;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class ReleaseNamesAWithdrawal : Rule<RowCase<Release>>
{
    public ReleaseNamesAWithdrawal()
        : base(
            new RuleInfo(
                "CON040",
                Severity.Error,
                "A release names a withdrawal that is known",
                "A release of something that nobody withdrew may be meant for another item, or for a withdrawal that this "
                    + "record and the register do not know.",
                $"Type the number on the quarantine label, the notice or the report; or the day under withdrawnOn. The "
                    + $"register that was asked must be the one that knows of it.",
                "record format examdocs/1"
            )
        ) =>
        Each(r =>
            r.Context.ItemsWithId(r.Row.Item)
                .Where(item =>
                    !IsOfQuarantine(r, item)
                    && EarlierWithdrawals.Of(item).All(w => EarlierWithdrawals.EffectOf(item, r.Row, w) is ReleaseEffect.OfAnother)
                )
                .Select(item => new Fault(Member(r.Row), Words(r.Row, item)))
                .Take(1)
        );

    /// <summary>True where the release ends a quarantine of this record or an earlier one: then it needs no withdrawal to name.</summary>
    private static bool IsOfQuarantine(RowCase<Release> release, ItemCase item) =>
        release.Row.Document is null
        && item.Disposals.Select(d => d.Row)
            .Concat(item.Context.History.Quarantines.Where(q => string.Equals(q.Item, item.Item.Id, StringComparison.Ordinal)))
            .Any(d =>
                d.Action is DisposalAction.Quarantined
                && d.On <= release.Row.On
                && (release.Row.WithdrawnOn is null || release.Row.WithdrawnOn == d.On)
            );

    private static string Member(Release release) =>
        release switch
        {
            { Document: not null } => "/document",
            { WithdrawnOn: not null } => "/withdrawnOn",
            _ => "",
        };

    private static Message Words(Release release, ItemCase item)
    {
        var known = EarlierWithdrawals
            .Of(item)
            .Select(w => w.Document is null ? (Message)$"{w.On}" : $"{w.Document} of {w.On}")
            .Distinct()
            .ToList();
        var which =
            known.Count == 0
                ? (Message)$"no withdrawal of the item is known"
                : $"withdrawals known of the item: {Message.Join(", ", known.Take(3))}";
        return release switch
        {
            { Document: { } number } => $"no document {number} withdrew {item.ItemId}; {which}",
            { WithdrawnOn: { } day } => $"{item.ItemId} was not withdrawn on {day}; {which}",
            _ => $"the release says neither which document withdrew {item.ItemId} nor on which day; {which}",
        };
    }
}

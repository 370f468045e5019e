using ExamDocs.Core.Cases;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Determination.Withdraw;

/// <summary>W8. Part numbers are compared letter by letter.</summary>
internal sealed class PartIsNotPermitted : IItemRule
{
    public OutcomeRuleInfo Info { get; } =
        new(
            "W8",
            "It is fitted to an item whose maker does not permit it",
            "A part that the maker has not tried on the item changes how the whole holds.",
            "the maker's instructions recorded in the limits of the item it is fitted to"
        );

    public IEnumerable<Reason> Reasons(ItemCase item, Verdicts verdicts) =>
        item
            .Wholes.SelectMany(whole =>
                whole.Limits.All.Select(l => (Id: whole.ItemId, Name: (Func<SentenceBook, string>)(w => w.Name(whole.Item)), Limits: l))
            )
            .Concat(
                item.Context.WholesElsewhereOf(item.ItemId)
                    .SelectMany(whole =>
                        whole.Limits.Select(l => (Id: (string?)whole.Id, Name: (Func<SentenceBook, string>)(_ => whole.Id), Limits: l))
                    )
            )
            .Where(on => on.Limits.Permits(item.Item.PartNumber) is false)
            .Select(on =>
                Info.Because(w =>
                    w.Reasons.PartNotPermitted(item.Item.PartNumber, on.Name(w), string.Join(", ", on.Limits.PermittedParts!), on.Limits)
                ) with
                {
                    Other = on.Id,
                }
            );
}

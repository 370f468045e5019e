using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class ItemReferredToExists : Rule<VisitCase>
{
    /// <summary>Only so many unknown ids get a hint: each is compared with every id of the record.</summary>
    private const int MostCompared = 200;

    public ItemReferredToExists()
        : base(
            new RuleInfo(
                "CON002",
                Severity.Error,
                "Every item referred to is in the record",
                "What a row says about an item that is not in the record is lost. Only the item that a part is fitted "
                    + "to may be in another record.",
                $"Type the id of an item of this record.",
                "record format examdocs/1"
            )
        ) =>
        Each(v =>
            References(v.Context)
                .Where(r =>
                    r.Id is not null
                    && !v.Context.KnowsItem(r.Id)
                    && !(r.MayBeElsewhere && v.Context.History.Elsewhere.Contains(r.Id, StringComparer.Ordinal))
                )
                .SelectMany((r, n) => Missing(r, v.Context, compared: n < MostCompared))
        );

    /// <summary>Empty, because the faults have whole pointers: the rule goes through every list.</summary>
    protected override string PathOf(VisitCase subject) => "";

    /// <summary>
    /// One fault; or one for each item that the id may mean and that must therefore be held: all those whose spelling is nearest.
    /// </summary>
    private static IEnumerable<Fault> Missing(
        (string Path, string? Id, string? About, bool MayMean, bool MayBeElsewhere) reference,
        RecordContext context,
        bool compared
    )
    {
        if (reference.Id is "")
            return [new Fault(reference.Path, $"the row names no item")];
        var spelt = context.ItemsSpeltLike(reference.Id).Select(i => i.ItemId!).Distinct(StringComparer.Ordinal).ToList();
        var near =
            spelt.Count > 0 ? spelt
            : compared ? SpellingSuggestion.AllOf(reference.Id!, context.ItemIds)
            : [];
        Message message = $"there is no item '{reference.Id}' in this record";
        var hint = near.Count == 0 ? null : (Message)$"Did you mean {Or(near)}?";
        var held = spelt.Count > 0 || (reference.About is null && reference.MayMean) ? near : [];
        return
        [
            .. held.Append(reference.About)
                .DefaultIfEmpty(null)
                .Where(id => id is not null || held.Count == 0)
                .Distinct(StringComparer.Ordinal)
                .Select(id => new Fault(reference.Path, message, hint, id, LostId(context))),
        ];
    }

    /// <summary>An item whose id was typed and not read may be the one that is meant.</summary>
    private static PossibleCause? LostId(RecordContext context) => context.WithoutId is { } item ? new($"{item.Path}/id") : null;

    private static Message Or(IReadOnlyList<string> ids) =>
        ids is [var only] ? Message.AsIs($"'{only}'") : $"'{string.Join("', '", ids.SkipLast(1))}' or '{ids[^1]}'";

    /// <summary>
    /// Every reference: its place, its id, another item that it is about, whether the item that it may mean must be held (a part may
    /// be on it, or it may be gone), and whether that item may be in another record.
    /// </summary>
    private static IEnumerable<(string Path, string? Id, string? About, bool MayMean, bool MayBeElsewhere)> References(RecordContext c) =>
        c
            .Items.Select(i => ($"{i.Path}/fittedTo", i.Item.FittedTo, (string?)null, true, true))
            .Concat(c.Examinations.Select(e => ($"{e.Path}/item", e.ItemId, (string?)null, false, false)))
            .Concat(
                c.Renewals.SelectMany(r =>
                    new[]
                    {
                        ($"{r.Path}/item", r.Row.Item, null, false, true),
                        ($"{r.Path}/removedPart", r.Row.RemovedPart, r.Row.Item, false, true),
                        ($"{r.Path}/fittedPart", r.Row.FittedPart, r.Row.Item, false, true),
                    }
                )
            )
            .Concat(c.Remedies.Select(r => ($"{r.Path}/item", (string?)(r.Row.Item ?? ""), (string?)null, true, false)))
            .Concat(c.Releases.Select(r => ($"{r.Path}/item", r.Row.Item, (string?)null, true, false)))
            .Concat(c.Disposals.Select(r => ($"{r.Path}/item", (string?)(r.Row.Item ?? ""), (string?)null, true, false)));
}

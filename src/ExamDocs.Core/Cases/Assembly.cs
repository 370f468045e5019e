using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Cases;

/// <summary>Works out which part is on which item now. Ids count in any spelling: a slip must not take a part off.</summary>
public static class Assembly
{
    /// <summary>
    /// What the part is fitted to: by its own row, by a renewal, or by what other records said last; without what a renewal took it
    /// off.
    /// </summary>
    public static IEnumerable<ItemCase> WholesOf(ItemCase part)
    {
        var (id, context) = (part.Item.Id, part.Context);
        if (id is null)
            return context.ItemsSpeltLike(part.Item.FittedTo);
        var fitted = context.Record.Renewals.Where(r => context.Ids.Same(r.FittedPart, id)).Select(r => r.Item);
        var known = context
            .History.Fittings.Where(f => f.Word is FittingWord.StillOn && string.Equals(f.Part, id, StringComparison.Ordinal))
            .Select(f => f.Whole);
        return fitted
            .Prepend(part.Item.FittedTo)
            .Concat(known)
            .OfType<string>()
            .DistinctBy(context.Ids.Of, StringComparer.Ordinal)
            .SelectMany(whole =>
                context.ItemsSpeltLike(whole).Where(item => !IsRemoved(context, id, whole) || MayBeAnother(context, id, item))
            );
    }

    /// <summary>
    /// True where two items of the record have one id, and the renewals that took the part off name the other one letter by letter.
    /// Then the part may still be on this one, and a wrong guess would hide it.
    /// </summary>
    private static bool MayBeAnother(RecordContext context, string part, ItemCase whole)
    {
        var removals = context
            .Record.Renewals.Where(r => context.Ids.Same(r.Item, whole.ItemId) && context.Ids.Same(r.RemovedPart, part))
            .Select(r => r.Item)
            .ToHashSet(StringComparer.Ordinal);
        return removals.Count > 0
            && !removals.Contains(whole.ItemId)
            && context.ItemsSpeltLike(whole.ItemId).Any(other => removals.Contains(other.ItemId));
    }

    /// <summary>
    /// True where a renewal took the part off and no renewal put it back on that day or later. Without a date, putting back counts: the
    /// part is then looked at as one that is on.
    /// </summary>
    public static bool IsRemoved(RecordContext context, string part, string whole) => IsRemoved(context.Record, context.Ids, part, whole);

    /// <inheritdoc cref="IsRemoved(RecordContext, string, string)"/>
    public static bool IsRemoved(ExaminationRecord record, FoldedIds ids, string part, string whole)
    {
        var renewals = record.Renewals.Where(r => ids.Same(r.Item, whole)).ToList();
        var removals = renewals.FindAll(r => ids.Same(r.RemovedPart, part));
        return removals.Count > 0
            && !renewals.Exists(r =>
                ids.Same(r.FittedPart, part)
                && removals.TrueForAll(removal => r.DoneOn is null || removal.DoneOn is null || r.DoneOn >= removal.DoneOn)
            );
    }
}

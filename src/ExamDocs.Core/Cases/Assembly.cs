using ExamDocs.Core.Records;

namespace ExamDocs.Core.Cases;

/// <summary>Works out which part is on which item now.</summary>
public static class Assembly
{
    /// <summary>
    /// What the part is fitted to: where it says so itself, a renewal does, or the latest word of other records; less where a
    /// renewal took it off.
    /// </summary>
    public static IEnumerable<ItemCase> WholesOf(ItemCase part)
    {
        var id = part.Item.Id;
        if (id is null)
            return part.Context.ItemsWithId(part.Item.FittedTo);
        var fitted = part.Context.Record.Renewals.Where(r => Same(r.FittedPart, id)).Select(r => r.Item);
        var known = part.Context.History.Fittings.Where(f => Same(f.Part, id) && f.Word is FittingWord.StillOn).Select(f => f.Whole);
        return fitted.Prepend(part.Item.FittedTo).Concat(known).OfType<string>().Distinct(StringComparer.Ordinal)
            .Where(whole => !IsRemoved(part.Context.Record, id, whole))
            .SelectMany(part.Context.ItemsWithId);
    }

    /// <summary>Taken off by a renewal, and not put back by a later one.</summary>
    public static bool IsRemoved(ExaminationRecord record, string part, string whole)
    {
        var removals = record.Renewals.Where(r => Same(r.Item, whole) && Same(r.RemovedPart, part)).ToList();
        return removals.Count > 0 && !record.Renewals.Any(r => Same(r.Item, whole) && Same(r.FittedPart, part)
            && removals.TrueForAll(removal => r.DoneOn is null || removal.DoneOn is null || r.DoneOn >= removal.DoneOn));
    }

    private static bool Same(string? one, string? other) => string.Equals(one, other, StringComparison.Ordinal);
}

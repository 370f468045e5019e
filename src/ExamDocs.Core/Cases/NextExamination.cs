using ExamDocs.Core.Calendar;
using NodaTime;

namespace ExamDocs.Core.Cases;

/// <summary>
/// Latest date for the next examination: the earliest of the regime's interval, the maker's and the examiner's own date.
/// Months by the corresponding date from the day examined, never rolled past a weekend.
/// </summary>
internal static class NextExamination
{
    /// <summary>What <see cref="ItemCase.NextBy"/> is.</summary>
    public static LocalDate? LatestFor(ItemCase item)
    {
        if (item.ExaminedOn is null)
            return null;
        var dates = item.Deciding.SelectMany(e => DatesOf(item, e)).ToList();
        return dates.Count == 0 || item.Deciding.Any(e => e.Regime is null) ? null : dates.Min();
    }

    /// <summary>
    /// Latest date for an item together with everything fitted to it, over any depth, inclusive: an assembly is due when its first
    /// part is due. Null where the item itself has no date.
    /// </summary>
    public static LocalDate? LatestForAssembly(ItemCase item)
    {
        if (item.NextBy is not { } own)
            return null;
        HashSet<ItemCase> seen = [];
        own = item.PartsElsewhere.Select(p => p.NextBy).OfType<LocalDate>().Append(own).Min();
        var open = new Stack<ItemCase>(item.Parts);
        while (open.TryPop(out var part))
        {
            if (!seen.Add(part))
                continue;
            own = LocalDate.Min(own, part.NextBy ?? own);
            own = part.PartsElsewhere.Select(p => p.NextBy).OfType<LocalDate>().Append(own).Min();
            foreach (var below in part.Parts)
                open.Push(below);
        }
        return own;
    }

    private static IEnumerable<LocalDate> DatesOf(ItemCase item, ExaminationCase examination)
    {
        if (examination.On is not { } on)
            yield break;
        if (examination.IntervalFrom(on) is { } interval)
            yield return interval.LastDay(on);
        foreach (var months in item.Limits.All.Select(l => l.IntervalMonths).OfType<int>())
            yield return CorrespondingDate.AddMonths(on, months);
        if (examination.Examination.NextBy is { } by)
            yield return by;
    }
}

using ExamDocs.Core.Calendar;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using NodaTime;

namespace ExamDocs.Core.Service;

/// <summary>Works out the last day of each limit of an entry, and of the obsolescence date marked on the item.</summary>
internal static class TimeLimits
{
    /// <summary>The obsolescence date marked on the item; where only a month or a year is marked, its first day.</summary>
    public static IEnumerable<CountedLimit> Marked(Item item)
    {
        if (item.ObsoleteOn is { } obsolete)
            yield return new(obsolete.Earliest, new(w => w.Service.Obsolescence(obsolete)));
    }

    /// <summary>The limits of use, age and storage, and the examiner's own end of service.</summary>
    public static IEnumerable<CountedLimit> Of(Item item, MakersLimits limits)
    {
        if (limits.MaxUseYears is { } use && UseCountsFrom(item) is { } start)
            yield return new(
                AddYears(start.Date, use),
                new(w =>
                    start.IsFirstUse
                        ? w.Service.UseFromFirstUse(use, start.Date, limits)
                        : w.Service.UseFromManufacture(use, start.Date, limits)
                )
            );
        if (limits.MaxAgeYears is { } age && item.Manufactured is { } made)
            yield return new(AddYears(made, age), new(w => w.Service.AgeFromManufacture(age, made, limits)));
        if (item.NeverUsed is true && limits.MaxStorageYears is { } storage && item.Manufactured is { } stored)
            yield return new(
                AddYears(stored, storage),
                new(w => w.Service.StorageFromManufacture(storage, stored, limits)),
                OfStorage: true
            );
        if (limits.Unobtainable?.UseUntil is { } until)
            yield return new(until, new(w => w.Service.InstructionsUnobtainable));
    }

    /// <summary>Service ends the day before an event that ends it: on the day itself it may not be used.</summary>
    public static IEnumerable<CountedLimit> EndedBy(IEnumerable<EventInService> events, MakersLimits limits) =>
        limits.EventEndsService
            ? events.Select(e => new CountedLimit(e.On.PlusDays(-1), new(w => w.Service.RetiredByEvent(e.On, e.What, limits))))
            : [];

    /// <summary>
    /// A sentence where the item was first used after the longest storage. Where only a month or a year is recorded, the worst of its
    /// days counts: the first for manufacture, the last for first use.
    /// </summary>
    public static Sentence? StoredTooLong(Item item, MakersLimits limits)
    {
        if (limits.MaxStorageYears is not { } storage || item.Manufactured is not { } made || item.FirstUsed is not { } first)
            return null;
        var last = AddYears(made, storage);
        return first.Latest > last ? new(w => w.Service.StoredTooLong(first, storage, made, last, limits)) : null;
    }

    /// <summary>A sentence where it was cleaned more often than allowed; the greatest number allowed is inside the limit.</summary>
    public static Sentence? CleanedTooOften(Item item, MakersLimits limits) =>
        item.Cleanings is { } times && limits.MaxCleanings is { } allowed && allowed < times
            ? new(w => w.Service.CleanedTooOften(times, allowed, limits))
            : null;

    private static (PartialDate Date, bool IsFirstUse)? UseCountsFrom(Item item)
    {
        if (item.FirstUsed is { } first)
            return (first, true);
        if (item.NeverUsed is true || item.Manufactured is not { } made)
            return null;
        return (made, false);
    }

    private static LocalDate AddYears(PartialDate from, int years) => CorrespondingDate.AddYears(from.Earliest, years);
}

/// <summary>
/// Limits that are recorded but cannot be counted, because the date or number that they count from is missing. Such a limit must not
/// be skipped: the item may be past it already, so it leaves the item undetermined (U4).
/// </summary>
/// <remarks>
/// A missing first use alone is no gap: time in use then counts from manufacture, which is the worse day. Kit that was never used has
/// no time in use to count.
/// </remarks>
internal static class UncountableLimits
{
    public static IEnumerable<Sentence> Of(Item item, MakersLimits limits)
    {
        if (limits.MaxAgeYears is not null && item.Manufactured is null)
            yield return new(w => w.Service.AgeCannotBeCounted);
        if (limits.MaxStorageYears is not null && item.Manufactured is null)
            yield return new(w => w.Service.StorageCannotBeCounted);
        if (limits.MaxUseYears is not null && item is { FirstUsed: null, Manufactured: null } && item.NeverUsed is not true)
            yield return new(w => w.Service.UseCannotBeCounted);
        if (limits.MaxCleanings is not null && item.Cleanings is null)
            yield return new(w => w.Service.CleaningsCannotBeCounted);
    }
}

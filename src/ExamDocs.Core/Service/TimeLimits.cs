using ExamDocs.Core.Calendar;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using NodaTime;

namespace ExamDocs.Core.Service;

/// <summary>Counts out the limits of one entry of the maker's, and what the item itself bears.</summary>
internal static class TimeLimits
{
    /// <summary>The obsolescence date marked on the item; of a month or a year its first day.</summary>
    public static IEnumerable<CountedLimit> Marked(Item item)
    {
        if (item.ObsoleteOn is { } obsolete)
            yield return new(obsolete.Earliest, new(w => w.Service.Obsolescence(obsolete)));
    }

    /// <summary>Use, age and storage, and the examiner's own end of service.</summary>
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

    /// <summary>First used after the longest storage; counted from the worst of the days that a month or year can mean.</summary>
    public static Sentence? StoredTooLong(Item item, MakersLimits limits)
    {
        if (limits.MaxStorageYears is not { } storage || item.Manufactured is not { } made || item.FirstUsed is not { } first)
            return null;
        var last = AddYears(made, storage);
        return first.Latest > last ? new(w => w.Service.StoredTooLong(first, storage, made, last, limits)) : null;
    }

    /// <summary>The greatest number of cleanings is inside the limit.</summary>
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

/// <summary>Limits that are recorded and cannot be counted, because what they count is not.</summary>
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

using System.Globalization;
using ExamDocs.Core.Calendar;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Service;

/// <summary>Counts out the limits of one entry of the maker's, and what the item itself bears.</summary>
internal static class TimeLimits
{
    /// <summary>The obsolescence date marked on the item; of a month or a year its first day.</summary>
    public static IEnumerable<CountedLimit> Marked(Item item)
    {
        if (item.ObsoleteOn is { } obsolete)
            yield return new(obsolete.Earliest, $"obsolescence {Say.When(obsolete)}, as marked on the item");
    }

    /// <summary>Use, age and storage, and the examiner's own end of service.</summary>
    public static IEnumerable<CountedLimit> Of(Item item, MakersLimits limits)
    {
        if (limits.MaxUseYears is { } use && UseCountsFrom(item) is { } start)
            yield return new(AddYears(start.Date, use), $"{Years(use)} in use from {start.What}{By(limits)}");
        if (limits.MaxAgeYears is { } age && item.Manufactured is { } made)
            yield return new(AddYears(made, age), $"{Years(age)} from manufacture {Say.When(made)}{By(limits)}");
        if (item.NeverUsed is true && limits.MaxStorageYears is { } storage && item.Manufactured is { } stored)
            yield return new(AddYears(stored, storage), $"{Years(storage)} of storage from manufacture {Say.When(stored)}{By(limits)}", OfStorage: true);
        if (limits.Unobtainable?.UseUntil is { } until)
            yield return new(until, "the examiner's own end of service, the maker's instructions being unobtainable");
    }

    /// <summary>Service ends the day before an event that ends it: on the day itself it may not be used.</summary>
    public static IEnumerable<CountedLimit> EndedBy(IEnumerable<EventInService> events, MakersLimits limits) =>
        limits.EventEndsService
            ? events.Select(e => new CountedLimit(e.On.PlusDays(-1), $"the maker retires it after an exceptional event, and {Say.Day(e.On)} brought one, {e.What}{By(limits)}"))
            : [];

    /// <summary>First used after the longest storage; counted from the worst of the days that a month or year can mean.</summary>
    public static string? StoredTooLong(Item item, MakersLimits limits)
    {
        if (limits.MaxStorageYears is not { } storage || item.Manufactured is not { } made || item.FirstUsed is not { } first)
            return null;
        var last = AddYears(made, storage);
        return first.Latest > last
            ? $"first used {Say.When(first)}, after {Years(storage)} of storage from manufacture {Say.When(made)} had ended on {Say.Day(last)}{By(limits)}"
            : null;
    }

    /// <summary>The greatest number of cleanings is inside the limit.</summary>
    public static string? CleanedTooOften(Item item, MakersLimits limits) => limits.MaxCleanings < item.Cleanings
        ? string.Create(CultureInfo.InvariantCulture, $"cleaned {item.Cleanings} times, and the maker allows {limits.MaxCleanings}{By(limits)}")
        : null;

    private static (PartialDate Date, string What)? UseCountsFrom(Item item)
    {
        if (item.FirstUsed is { } first)
            return (first, $"first use {Say.When(first)}");
        if (item.NeverUsed is true || item.Manufactured is not { } made)
            return null;
        return (made, $"manufacture {Say.When(made)}, first use not being recorded");
    }

    private static LocalDate AddYears(PartialDate from, int years) => CorrespondingDate.AddYears(from.Earliest, years);

    private static string Years(int years) => years == 1 ? "1 year" : string.Create(CultureInfo.InvariantCulture, $"{years} years");

    private static string By(MakersLimits limits) => LimitsSourceText.Beside(limits);
}

/// <summary>Limits that are recorded and cannot be counted, because what they count is not.</summary>
internal static class UncountableLimits
{
    public static IEnumerable<string> Of(Item item, MakersLimits limits)
    {
        if (limits.MaxAgeYears is not null && item.Manufactured is null)
            yield return "the greatest age cannot be counted without the date of manufacture";
        if (limits.MaxStorageYears is not null && item.Manufactured is null)
            yield return "the longest storage cannot be counted without the date of manufacture";
        if (limits.MaxUseYears is not null && item is { FirstUsed: null, Manufactured: null } && item.NeverUsed is not true)
            yield return "the time in use cannot be counted without the date of first use or of manufacture";
        if (limits.MaxCleanings is not null && item.Cleanings is null)
            yield return "the greatest number of cleanings cannot be held against a count that is not recorded";
    }
}

using System.Globalization;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Service;

/// <summary>One time limit counted out.</summary>
/// <param name="LastDay">The last day inside it.</param>
/// <param name="Sentence">How it was counted, in words.</param>
public sealed record CountedLimit(LocalDate LastDay, string Sentence);

/// <summary>
/// How long an item may serve by the limits recorded. Years are counted by the corresponding date; the last day of a
/// limit is inside it; a month or year alone counts from whichever of its days is worse.
/// </summary>
public sealed class ServiceLife
{
    private ServiceLife(IReadOnlyList<CountedLimit> limits, IReadOnlyList<string> uncountable, string? storedTooLong) =>
        (Limits, Uncountable, StoredTooLong) = (limits, uncountable, storedTooLong);

    public IReadOnlyList<CountedLimit> Limits { get; }

    /// <summary>The limit that ends first; null where none can be counted.</summary>
    public CountedLimit? Biting => Limits.MinBy(l => l.LastDay);

    /// <summary>Last day of service, inclusive; null where no limit can be counted.</summary>
    public LocalDate? End => Biting?.LastDay;

    /// <summary>Limits that are recorded and cannot be counted, each in words.</summary>
    public IReadOnlyList<string> Uncountable { get; }

    /// <summary>Says so where it was first used after the longest storage allowed; else null.</summary>
    public string? StoredTooLong { get; }

    /// <param name="item">The item whose life is counted.</param>
    /// <param name="limits">The entries that apply: one where the record is sound; of several each binds.</param>
    public static ServiceLife Of(Item item, IReadOnlyList<MakersLimits> limits) => new(
        [.. limits.SelectMany(l => Count(item, l)), .. Marked(item)],
        [.. limits.SelectMany(l => FindUncountable(item, l)).Distinct(StringComparer.Ordinal)],
        limits.Select(l => FindStoredTooLong(item, l)).FirstOrDefault(s => s is not null));

    private static IEnumerable<CountedLimit> Marked(Item item)
    {
        if (item.ObsoleteOn is { } obsolete)
            yield return new(obsolete.Earliest, $"obsolescence {Say.When(obsolete)}, as marked on the item");
    }

    private static IEnumerable<CountedLimit> Count(Item item, MakersLimits limits)
    {
        if (limits.MaxUseYears is { } use && UseCountsFrom(item) is { } start)
            yield return new(AddYears(start.Date, use), $"{Years(use)} in use from {start.What}{By(limits)}");
        if (limits.MaxAgeYears is { } age && item.Manufactured is { } made)
            yield return new(AddYears(made, age), $"{Years(age)} from manufacture {Say.When(made)}{By(limits)}");
        if (item.NeverUsed is true && limits.MaxStorageYears is { } storage && item.Manufactured is { } stored)
            yield return new(AddYears(stored, storage), $"{Years(storage)} of storage from manufacture {Say.When(stored)}{By(limits)}");
        if (limits.Unobtainable?.UseUntil is { } until)
            yield return new(until, "the examiner's own end of service, the maker's instructions being unobtainable");
    }

    private static (PartialDate Date, string What)? UseCountsFrom(Item item)
    {
        if (item.FirstUsed is { } first)
            return (first, $"first use {Say.When(first)}");
        if (item.NeverUsed is true || item.Manufactured is not { } made)
            return null;
        return (made, $"manufacture {Say.When(made)}, first use not being recorded");
    }

    private static IEnumerable<string> FindUncountable(Item item, MakersLimits limits)
    {
        if (limits.MaxAgeYears is not null && item.Manufactured is null)
            yield return "the greatest age cannot be counted without the date of manufacture";
        if (limits.MaxStorageYears is not null && item.Manufactured is null)
            yield return "the longest storage cannot be counted without the date of manufacture";
        if (limits.MaxUseYears is not null && item is { FirstUsed: null, Manufactured: null } && item.NeverUsed is not true)
            yield return "the time in use cannot be counted without the date of first use or of manufacture";
    }

    private static string? FindStoredTooLong(Item item, MakersLimits limits)
    {
        if (limits.MaxStorageYears is not { } storage || item.Manufactured is not { } made || item.FirstUsed is not { } first)
            return null;
        var last = AddYears(made, storage);
        return first.Latest > last
            ? $"first used {Say.When(first)}, after {Years(storage)} of storage from manufacture {Say.When(made)} had ended on {Say.Day(last)}{By(limits)}"
            : null;
    }

    private static LocalDate AddYears(PartialDate from, int years) => from.Earliest.PlusYears(years);

    private static string Years(int years) => years == 1 ? "1 year" : string.Create(CultureInfo.InvariantCulture, $"{years} years");

    private static string By(MakersLimits limits) => $" ({LimitsSourceText.Of(limits)})";
}

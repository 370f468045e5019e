using System.Globalization;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Service;

/// <summary>One time limit counted out.</summary>
/// <param name="LastDay">The last day inside it.</param>
/// <param name="Sentence">How it was counted, in words.</param>
/// <param name="OfStorage">It runs only as long as the item is not used.</param>
public sealed record CountedLimit(LocalDate LastDay, string Sentence, bool OfStorage = false);

/// <summary>Something that happened to an item and called for an examination.</summary>
/// <param name="What">In the examiner's words.</param>
/// <param name="On">The day; where that is not recorded, the day of the examination that it called for.</param>
public sealed record EventInService(string What, LocalDate On);

/// <summary>
/// How long an item may serve by the limits recorded. Years are counted by the corresponding date; the last day of a
/// limit is inside it; a month or year alone counts from whichever of its days is worse.
/// </summary>
public sealed class ServiceLife
{
    private readonly IReadOnlyList<MakersLimits> _applying;

    private ServiceLife(Item item, IReadOnlyList<MakersLimits> applying, IEnumerable<EventInService> events)
    {
        _applying = applying;
        Limits = [.. applying.SelectMany(l => TimeLimits.Of(item, l)), .. applying.SelectMany(l => TimeLimits.EndedBy(events, l)), .. TimeLimits.Marked(item)];
        Uncountable = [.. applying.SelectMany(l => UncountableLimits.Of(item, l)).Distinct(StringComparer.Ordinal)];
        StoredTooLong = applying.Select(l => TimeLimits.StoredTooLong(item, l)).FirstOrDefault(s => s is not null);
        CleanedTooOften = applying.Select(l => TimeLimits.CleanedTooOften(item, l)).FirstOrDefault(s => s is not null);
        UseHasNotBegun = item.NeverUsed is true && applying.Any(l => l.MaxUseYears is not null);
    }

    public IReadOnlyList<CountedLimit> Limits { get; }

    /// <summary>The limit that ends first; null where none can be counted.</summary>
    public CountedLimit? Biting => Limits.MinBy(l => l.LastDay);

    /// <summary>Last day of service, inclusive; null where no limit can be counted.</summary>
    public LocalDate? End => Biting?.LastDay;

    /// <summary>Limits that are recorded and cannot be counted, each in words.</summary>
    public IReadOnlyList<string> Uncountable { get; }

    /// <summary>Says so where it was first used after the longest storage allowed; else null.</summary>
    public string? StoredTooLong { get; }

    /// <summary>Says so where it was cleaned more often than the maker allows; else null.</summary>
    public string? CleanedTooOften { get; }

    /// <summary>It was never used, and a limit counts from first use.</summary>
    public bool UseHasNotBegun { get; }

    /// <summary>Which limit bites, and which would come later, in one sentence with dates and sources; no full stop.</summary>
    public string Sentence
    {
        get
        {
            if (Biting is { } biting)
                return $"End of service {Say.Day(biting.LastDay)}{(biting.OfStorage ? " unless taken into use before" : "")}: {biting.Sentence}{Later(biting)}";
            if (UseHasNotBegun)
                return $"Never used: the time in use has not begun{LimitsSourceText.Beside(_applying[0])}";
            return _applying.FirstOrDefault(l => l.NoLimit) is { } unlimited
                ? $"The maker states that there is no time limit{LimitsSourceText.Beside(unlimited)}"
                : "No time limit of the maker's is recorded";
        }
    }

    /// <param name="item">The item whose life is counted.</param>
    /// <param name="limits">The entries that apply: one where the record is sound; of several each binds.</param>
    /// <param name="events">What happened to it, as its examinations tell.</param>
    public static ServiceLife Of(Item item, IReadOnlyList<MakersLimits> limits, IEnumerable<EventInService> events) => new(item, limits, events);

    private string Later(CountedLimit biting)
    {
        var others = Limits.Where(l => l != biting).OrderBy(l => l.LastDay).Select(l => $"{Say.Day(l.LastDay)}, {l.Sentence}").ToList();
        return others.Count == 0 ? "" : $"; later would be {string.Join(", and ", others)}";
    }
}

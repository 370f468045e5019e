using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using NodaTime;

namespace ExamDocs.Core.Service;

/// <summary>One time limit with the day on which it ends.</summary>
/// <param name="LastDay">The last day inside it.</param>
/// <param name="Sentence">How it was counted, in words.</param>
/// <param name="OfStorage">True where it counts only as long as the item is not used.</param>
public sealed record CountedLimit(LocalDate LastDay, Sentence Sentence, bool OfStorage = false);

/// <summary>Something that happened to an item and called for an examination.</summary>
/// <param name="What">In the examiner's words.</param>
/// <param name="On">The day; where that is not recorded, the day of the examination that it called for.</param>
public sealed record EventInService(string What, LocalDate On)
{
    /// <summary>The event that an examination names; null where it names none, or where no day is known.</summary>
    public static EventInService? Of(Records.Examination examination, LocalDate? examinedOn) =>
        examination?.Event is { } happened && (happened.On ?? examinedOn) is { } day
            ? new(happened.What ?? "an event not described", day)
            : null;
}

/// <summary>
/// How long an item may serve by the limits recorded. Years are counted by the corresponding date; the last day of a
/// limit is inside it. Where only a month or a year is recorded, the worse of its days counts.
/// </summary>
public sealed class ServiceLife
{
    private readonly IReadOnlyList<MakersLimits> _applying;

    private ServiceLife(Item item, IReadOnlyList<MakersLimits> applying, IEnumerable<EventInService> events)
    {
        _applying = applying;
        Limits =
        [
            .. applying.SelectMany(l => TimeLimits.Of(item, l)),
            .. applying.SelectMany(l => TimeLimits.EndedBy(events, l)),
            .. TimeLimits.Marked(item),
        ];
        Uncountable = [.. applying.SelectMany(l => UncountableLimits.Of(item, l)).Distinct()];
        StoredTooLong = applying.Select(l => TimeLimits.StoredTooLong(item, l)).FirstOrDefault(s => s is not null);
        CleanedTooOften = applying.Select(l => TimeLimits.CleanedTooOften(item, l)).FirstOrDefault(s => s is not null);
        UseHasNotBegun = item.NeverUsed is true && applying.Any(l => l.MaxUseYears is not null);
    }

    public IReadOnlyList<CountedLimit> Limits { get; }

    /// <summary>The limit that ends first; null where none can be counted.</summary>
    public CountedLimit? GoverningLimit => Limits.MinBy(l => l.LastDay);

    /// <summary>Last day of service, inclusive; null where no limit can be counted.</summary>
    public LocalDate? End => GoverningLimit?.LastDay;

    /// <summary>Limits that are recorded but cannot be counted, each in words.</summary>
    public IReadOnlyList<Sentence> Uncountable { get; }

    /// <summary>A sentence where it was first used after the longest storage allowed; else null.</summary>
    public Sentence? StoredTooLong { get; }

    /// <summary>A sentence where it was cleaned more often than the maker allows; else null.</summary>
    public Sentence? CleanedTooOften { get; }

    /// <summary>True where it was never used and a limit counts from first use.</summary>
    public bool UseHasNotBegun { get; }

    /// <summary>Which limit ends first, and which would end later, in one sentence with dates and sources; no full stop.</summary>
    public Sentence Sentence
    {
        get
        {
            if (GoverningLimit is { } governing)
                return new(w =>
                    w.Service.EndOfService(governing.LastDay, governing.OfStorage, governing.Sentence.In(w), Later(governing, w))
                );
            if (UseHasNotBegun)
                return new(w => w.Service.UseNotBegun(_applying.First(l => l.MaxUseYears is not null)));
            return _applying.Count > 0 && _applying.All(l => l.NoLimit)
                ? new(w => w.Service.Unlimited(_applying[0]))
                : new(w => w.Service.NoLimitRecorded);
        }
    }

    /// <param name="item">The item whose life is counted.</param>
    /// <param name="limits">The entries that apply; of several, each binds.</param>
    /// <param name="events">What happened to it, from its examinations.</param>
    public static ServiceLife Of(Item item, IReadOnlyList<MakersLimits> limits, IEnumerable<EventInService> events) =>
        new(item, limits, events);

    private List<(LocalDate On, string Limit)> Later(CountedLimit governing, SentenceBook words) =>
        [.. Limits.Where(l => l != governing).OrderBy(l => l.LastDay).Select(l => (l.LastDay, l.Sentence.In(words)))];
}

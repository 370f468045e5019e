using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Measurement;

/// <summary>
/// Where the diameters of an item are heading over its examinations. The day that it projects is a proposal: it binds only when
/// the examiner enters it among the defects, and changes no outcome by itself.
/// </summary>
/// <remarks>
/// It follows the smallest and the largest mean of each day, not the average: one thin place must not be averaged away.
/// </remarks>
public sealed class DiameterTrend
{
    /// <summary>Least number of earlier days with diameters; with fewer nothing is projected.</summary>
    public const int LeastEarlier = 3;

    /// <summary>Only the latest days count, so many at most: the number of pairs grows with the square of the days.</summary>
    private const int MostDays = 500;

    private DiameterTrend(TrendSeries smallest, TrendSeries largest, MakersLimits? limits) =>
        (Smallest, Largest, Limits) = (smallest, largest, limits);

    /// <summary>The smallest station mean of each examination.</summary>
    public TrendSeries Smallest { get; }

    /// <summary>The largest station mean of each examination.</summary>
    public TrendSeries Largest { get; }

    /// <summary>Where the limits come from; null where none are recorded.</summary>
    public MakersLimits? Limits { get; }

    /// <summary>The series that reaches its limit first; null where neither reaches one.</summary>
    public TrendSeries? Governing => new[] { Smallest, Largest }.Where(s => s.Reaches is not null).MinBy(s => s.Reaches);

    /// <summary>The proposed time by which it could become a danger; null where nothing approaches a limit.</summary>
    public LocalDate? Proposed => Governing?.Reaches;

    /// <summary>Null where there are fewer than three earlier days with diameters, or none now.</summary>
    /// <param name="profiles">Every profile of the item with its day, in any order; the latest day is the one examined now.</param>
    /// <param name="limits">The maker's limits that apply.</param>
    public static DiameterTrend? Of(IEnumerable<DatedProfile> profiles, MakersLimits? limits)
    {
        var days = profiles
            .SelectMany(p => p.Stations.Select(StationMean.Of).OfType<StationMean>().Select(m => new TrendPoint(p.On, m.Millimetres)))
            .GroupBy(p => p.On)
            .OrderBy(day => day.Key)
            .TakeLast(MostDays)
            .ToList();
        if (days.Count <= LeastEarlier)
            return null;
        var band = DiameterBand.Of(limits);
        // More than three days with finite means: there is always a line.
        var smallest = TrendSeries.Of([.. days.Select(d => new TrendPoint(d.Key, d.Min(p => p.Mm)))], isSmallest: true, band?.Least);
        var largest = TrendSeries.Of([.. days.Select(d => new TrendPoint(d.Key, d.Max(p => p.Mm)))], isSmallest: false, band?.Most);
        return new DiameterTrend(smallest!, largest!, limits);
    }
}

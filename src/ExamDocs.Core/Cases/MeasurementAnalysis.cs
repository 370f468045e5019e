using ExamDocs.Core.Measurement;
using ExamDocs.Core.Sentences;
using NodaTime;

namespace ExamDocs.Core.Cases;

/// <summary>Everything that is calculated from the diameters of one item, once for all rules and documents.</summary>
public sealed class MeasurementAnalysis
{
    private MeasurementAnalysis(MeasuredProfile profile, DiameterTrend? trend, LocalDate? endOfService) =>
        (Profile, Trend, Sentences) = (profile, trend, [.. ProfileSentences.Of(profile), .. TrendSentences.Of(trend, endOfService)]);

    public MeasuredProfile Profile { get; }

    /// <summary>Null with fewer than three earlier days on which diameters were measured.</summary>
    public DiameterTrend? Trend { get; }

    /// <summary>
    /// In the order in which an examiner argues: what was measured, the maker's limits, the rope against itself, the change since then,
    /// the trend.
    /// </summary>
    public IReadOnlyList<MeasurementSentence> Sentences { get; }

    /// <summary>Null where the deciding examination has no diameters.</summary>
    internal static MeasurementAnalysis? Of(ItemCase item)
    {
        if (item.Examination is not { Examination.Diameters: { Count: > 0 } stations })
            return null;
        var limits = item.Limits.OfDiameter;
        var earlier = Measured(item.Before.Select(e => new DatedProfile(e.On, e.Examination.Diameters))).ToList();
        var now = Measured(item.Deciding.Where(e => e.On is not null).Select(e => new DatedProfile(e.On!.Value, e.Examination.Diameters)));
        var profile = MeasuredProfile.Of(stations, limits, earlier.MinBy(p => p.On))!;
        return new MeasurementAnalysis(
            profile,
            item.ExaminedOn is null ? null : DiameterTrend.Of(earlier.Concat(now), limits),
            item.Life.End
        );
    }

    /// <summary>Without days on which no reading can be read: an empty profile must not count as the first one measured.</summary>
    private static IEnumerable<DatedProfile> Measured(IEnumerable<DatedProfile> profiles) =>
        profiles.Where(p => p.Stations.Any(s => StationMean.Of(s) is not null));
}

using ExamDocs.Core.Records;

namespace ExamDocs.Core.Measurement;

/// <summary>
/// Everything calculated from the diameters of one examination: how they compare with the maker's limits, and how the rope
/// compares with itself. It sets no limit. Lengths in millimetres.
/// </summary>
public sealed class MeasuredProfile
{
    private MeasuredProfile(IReadOnlyList<DiameterStation> recorded, MakersLimits? limits, DatedProfile? first)
    {
        (Limits, Band) = (limits, DiameterBand.Of(limits));
        ResolutionMm = CalliperResolution.InferFrom([.. recorded.SelectMany(s => s.ReadingsMm).OfType<decimal>()]);
        Scatter = PooledScatter.Of(recorded.Select(s => s.ReadingsMm.OfType<decimal>().ToList()));
        var means = recorded.Select(StationMean.Of).OfType<StationMean>().Select(m => m.Millimetres).ToList();
        var spread = means.Count == 0 ? null : new RobustSpread(means, (double)ResolutionMm);
        MedianMm = spread?.Median;
        Stations = [.. recorded.Select((s, i) => Calculate(s, i, means.Count < 3 ? null : spread))];
        InOrder = [.. Stations.Where(s => s.Mean is not null && s.PositionMm is not null).OrderBy(s => s.PositionMm)];
        LongestRun = MedianMm is { } median ? StationRun.Longest(InOrder, median) : null;
        MiddleAgainstEnds = MiddleAgainstEnds.Of(InOrder);
        SinceFirst = first is null ? null : ChangeSinceFirst.Between(first.On, first.Stations, Stations);
    }

    /// <summary>All stations, in the order recorded.</summary>
    public IReadOnlyList<ProfileStation> Stations { get; }

    /// <summary>Stations with a mean and a position, by position.</summary>
    public IReadOnlyList<ProfileStation> InOrder { get; }

    /// <summary>The maker's limits that apply; null where none are recorded.</summary>
    public MakersLimits? Limits { get; }

    /// <summary>Null where the maker's nominal diameter or tolerance is not recorded.</summary>
    public DiameterBand? Band { get; }

    /// <summary>The calliper's step, inferred from the readings.</summary>
    public decimal ResolutionMm { get; }

    /// <summary>The scatter of readings about the mean of their station.</summary>
    public PooledScatter Scatter { get; }

    /// <summary>The median of the means over the whole length; null where there is no mean.</summary>
    public double? MedianMm { get; }

    /// <summary>The longest run; null where there is none.</summary>
    public StationRun? LongestRun { get; }

    /// <summary>The middle against the ends; null where one of the two has no station.</summary>
    public MiddleAgainstEnds? MiddleAgainstEnds { get; }

    /// <summary>The change since the first profile; null where no earlier one is recorded.</summary>
    public ChangeSinceFirst? SinceFirst { get; }

    /// <summary>The station with the smallest mean; null where there is no mean.</summary>
    public ProfileStation? Thinnest => Stations.Where(s => s.Mean is not null).MinBy(s => s.MeanMm);

    /// <summary>The station with the largest mean; null where there is no mean.</summary>
    public ProfileStation? Thickest => Stations.Where(s => s.Mean is not null).MaxBy(s => s.MeanMm);

    /// <summary>The station whose readings differ most; null where none has two.</summary>
    public ProfileStation? MostOval => Stations.Where(s => s.OvalityMm is not null).MaxBy(s => s.OvalityMm);

    /// <summary>Null where no diameters were recorded.</summary>
    /// <param name="recorded">The stations of the examination.</param>
    /// <param name="limits">The maker's limits that apply.</param>
    /// <param name="first">The first earlier profile of the item, with its day; null where there is none.</param>
    public static MeasuredProfile? Of(IReadOnlyList<DiameterStation> recorded, MakersLimits? limits, DatedProfile? first) =>
        recorded.Count == 0 ? null : new MeasuredProfile(recorded, limits, first);

    private ProfileStation Calculate(DiameterStation station, int index, RobustSpread? spread)
    {
        var readings = station.ReadingsMm.OfType<decimal>().ToList();
        if (StationMean.Of(station) is not { } mean)
            return new ProfileStation { Recorded = station, Index = index };
        var uncertainty = MeanUncertainty.Of(Scatter, mean.Count, ResolutionMm);
        var holds = Band?.Holds(mean);
        return new ProfileStation
        {
            Recorded = station,
            Index = index,
            Mean = mean,
            OvalityMm = readings.Count < 2 ? null : readings.Max() - readings.Min(),
            Uncertainty = uncertainty,
            ModifiedZ = spread?.ModifiedZ(mean.Millimetres),
            StandsOut = spread?.IsOutlying(mean.Millimetres) is true,
            IsOutside = holds is false,
            IsTooCloseToCall = holds is true && !Band!.Value.Clears(mean, uncertainty.ExpandedMm),
        };
    }
}

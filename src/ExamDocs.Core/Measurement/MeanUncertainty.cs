using System.Collections.Concurrent;
using MathNet.Numerics.Distributions;

namespace ExamDocs.Core.Measurement;

/// <summary>
/// How far the mean of a station may lie from what a better measurement would give, by JCGM 100:2008 (the GUM):
/// u² = s²/n + δ²/12, where s is the scatter within stations pooled over the profile (4.2.3, 4.2.4), n the readings of
/// the station and δ the calliper's step, rectangular (F.2.2.1); U = k u, where k is Student's t for 95.45 % and the
/// effective degrees of freedom of Welch and Satterthwaite, cut to a whole number (G.3, G.4). k is 2 where the step is
/// the only contribution, and larger for few readings.
/// </summary>
/// <param name="StandardMm">u, millimetres.</param>
/// <param name="CoverageFactor">k.</param>
public sealed record MeanUncertainty(double StandardMm, double CoverageFactor)
{
    /// <summary>What ± 2 standard deviations of a normal distribution hold; GUM table G.2 has a column for it.</summary>
    public const double Coverage = 0.9545;

    private const double AsGoodAsNormal = 10_000;

    /// <summary>Factors calculated before, at most ten thousand: each takes a search, and most profiles share a few.</summary>
    private static readonly ConcurrentDictionary<int, double> Known = new();

    /// <summary>U, millimetres to either side of the mean.</summary>
    public double ExpandedMm => StandardMm * CoverageFactor;

    /// <param name="scatter">The scatter within the stations of the profile.</param>
    /// <param name="readings">Number of readings in the mean; at least one.</param>
    /// <param name="resolutionMm">The calliper's step, millimetres.</param>
    public static MeanUncertainty Of(PooledScatter scatter, int readings, decimal resolutionMm)
    {
        var ofReadings = scatter.Variance / readings;
        var ofStep = (double)(resolutionMm * resolutionMm) / 12;
        var both = ofReadings + ofStep;
        var freedom = ofReadings <= 0 ? double.PositiveInfinity : both * both * scatter.DegreesOfFreedom / (ofReadings * ofReadings);
        return new MeanUncertainty(Math.Sqrt(both), CoverageFor(freedom));
    }

    /// <summary>k for 95.45 %, two-sided.</summary>
    /// <param name="degreesOfFreedom">At least one; cut to a whole number.</param>
    public static double CoverageFor(double degreesOfFreedom) =>
        degreesOfFreedom > AsGoodAsNormal ? 2 : Known.GetOrAdd((int)Math.Max(1, Math.Floor(degreesOfFreedom)), Calculated);

    private static double Calculated(int degreesOfFreedom) => StudentT.InvCDF(0, 1, degreesOfFreedom, (1 + Coverage) / 2);
}

/// <summary>The variance of readings about the mean of their own station, pooled over a profile (JCGM 100:2008 4.2.4).</summary>
/// <param name="Variance">Square millimetres; zero where no station has two readings.</param>
/// <param name="DegreesOfFreedom">Number of readings minus number of stations, of the stations with two readings or more.</param>
public sealed record PooledScatter(double Variance, int DegreesOfFreedom)
{
    /// <param name="stations">The readings of each station, millimetres.</param>
    public static PooledScatter Of(IEnumerable<IReadOnlyList<decimal>> stations)
    {
        var (squares, freedom) = (0m, 0);
        foreach (var readings in stations.Where(r => r.Count > 0))
        {
            var mean = readings.Sum() / readings.Count;
            squares += readings.Sum(r => Square(r - mean));
            freedom += readings.Count - 1;
        }
        return freedom == 0 ? new PooledScatter(0, 0) : new PooledScatter((double)squares / freedom, freedom);

        static decimal Square(decimal length) => length * length;
    }
}

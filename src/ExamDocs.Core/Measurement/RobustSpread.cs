using MathNet.Numerics.Statistics;

namespace ExamDocs.Core.Measurement;

/// <summary>
/// Median and median absolute deviation, and the modified z of Iglewicz and Hoaglin (How to Detect and Handle Outliers,
/// 1993): 0.6745 (x - median) / MAD, outlying where it is above 3.5 in size. The MAD counts as no less than the
/// calliper's step: where more than half of the values are equal it would be zero, and any other value would be outlying.
/// </summary>
public sealed class RobustSpread
{
    /// <summary>Greatest modified z, in size, that is not outlying; inclusive.</summary>
    public const double Limit = 3.5;

    private const double QuartileOfNormal = 0.6745;

    private readonly double _spread;

    /// <param name="values">At least one, in any order.</param>
    /// <param name="floor">The least that the MAD counts as; more than zero.</param>
    public RobustSpread(IReadOnlyCollection<double> values, double floor)
    {
        Median = values.Median();
        MedianAbsoluteDeviation = values.Select(v => Math.Abs(v - Median)).Median();
        _spread = Math.Max(MedianAbsoluteDeviation, floor);
    }

    public double Median { get; }

    /// <summary>The MAD itself, without the floor.</summary>
    public double MedianAbsoluteDeviation { get; }

    public double ModifiedZ(double value) => QuartileOfNormal * (value - Median) / _spread;

    public bool IsOutlying(double value) => Math.Abs(ModifiedZ(value)) > Limit;
}

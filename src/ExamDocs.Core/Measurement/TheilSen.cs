using MathNet.Numerics.Statistics;

namespace ExamDocs.Core.Measurement;

/// <summary>
/// A line that a few wild values do not move: the slope is the median of the slopes between all pairs of points
/// (Sen 1968, Journal of the American Statistical Association 63, 1379-1389), the intercept the median of y - slope x.
/// </summary>
/// <param name="Intercept">Value at x = 0.</param>
/// <param name="Slope">Change of y for each unit of x.</param>
public sealed record TheilSen(double Intercept, double Slope)
{
    public double At(double x) => Intercept + (Slope * x);

    /// <summary>Null where no two points differ in x, or a number is not finite.</summary>
    /// <exception cref="ArgumentException">The two lists differ in length.</exception>
    public static TheilSen? Through(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        if (x.Count != y.Count)
            throw new ArgumentException("as many x as y are needed", nameof(y));
        if (!x.All(double.IsFinite) || !y.All(double.IsFinite))
            return null;
        var slopes = Slopes(x, y).ToList();
        if (slopes.Count == 0)
            return null;
        var slope = slopes.Median();
        return new TheilSen(x.Zip(y, (at, value) => value - (slope * at)).Median(), slope);
    }

    private static IEnumerable<double> Slopes(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        for (var i = 0; i < x.Count; i++)
        {
            for (var j = i + 1; j < x.Count; j++)
            {
                var run = x[j] - x[i];
                if (run != 0)
                    yield return (y[j] - y[i]) / run;
            }
        }
    }
}

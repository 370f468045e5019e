using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearRegression;

namespace ExamDocs.Core.Measurement;

/// <summary>
/// The line of least squares, with the band in which the next single value is expected with 95 % confidence:
/// a + b x ± t s √(1 + 1/n + (x - x̄)²/Sxx), Student's t for n - 2 (NIST/SEMATECH e-Handbook of Statistical Methods,
/// section 4.5.1, from memory).
/// </summary>
public sealed class LeastSquares
{
    private const double Upper = 0.975;

    private readonly int _n;
    private readonly double _meanX;
    private readonly double _spreadX;
    private readonly double _t;

    private LeastSquares(double[] x, double[] y)
    {
        _n = x.Length;
        _meanX = x.Average();
        _spreadX = x.Sum(at => Math.Pow(at - _meanX, 2));
        (Intercept, Slope) = SimpleRegression.Fit(x, y);
        var meanY = y.Average();
        ResidualSquares = x.Zip(y, (at, value) => value - At(at)).Sum(r => r * r);
        RegressionSquares = x.Sum(at => Math.Pow(At(at) - meanY, 2));
        ResidualDeviation = Math.Sqrt(ResidualSquares / (_n - 2));
        _t = StudentT.InvCDF(0, 1, _n - 2, Upper);
    }

    /// <summary>Value at x = 0.</summary>
    public double Intercept { get; }

    /// <summary>Change of y for each unit of x.</summary>
    public double Slope { get; }

    /// <summary>Sum of the squares of the residuals, n - 2 degrees of freedom.</summary>
    public double ResidualSquares { get; }

    /// <summary>Sum of the squares that the line explains.</summary>
    public double RegressionSquares { get; }

    /// <summary>Standard deviation of the values about the line.</summary>
    public double ResidualDeviation { get; }

    public double SlopeDeviation => ResidualDeviation / Math.Sqrt(_spreadX);

    public double InterceptDeviation => ResidualDeviation * Math.Sqrt((1.0 / _n) + (_meanX * _meanX / _spreadX));

    public double At(double x) => Intercept + (Slope * x);

    /// <summary>Half the width of the 95 % prediction band at x.</summary>
    public double HalfBandAt(double x) => _t * ResidualDeviation * Math.Sqrt(1 + (1.0 / _n) + ((x - _meanX) * (x - _meanX) / _spreadX));

    /// <summary>Null with fewer than three points, with all x equal, or where a number is not finite.</summary>
    /// <exception cref="ArgumentException">The two lists differ in length.</exception>
    public static LeastSquares? Through(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        if (x.Count != y.Count)
            throw new ArgumentException("as many x as y are needed", nameof(y));
        var usable = x.Count >= 3 && x.All(double.IsFinite) && y.All(double.IsFinite) && x.Any(at => at != x[0]);
        return usable ? new LeastSquares([.. x], [.. y]) : null;
    }
}

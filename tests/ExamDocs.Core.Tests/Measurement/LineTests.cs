using ExamDocs.Core.Measurement;
using MathNet.Numerics.Statistics;

namespace ExamDocs.Core.Tests.Measurement;

/// <summary>Compares both lines with published answers, and tries data that have no line.</summary>
public sealed class LineTests
{
    /// <summary>NIST StRD, linear least squares, Norris: certified values.</summary>
    [Fact]
    public void Least_squares_give_the_certified_values_of_Norris()
    {
        var fit = LeastSquares.Through(ReferenceData.NorrisX, ReferenceData.NorrisY)!;

        Near(-0.262323073774029, fit.Intercept, 1e-11);
        Near(1.00211681802045, fit.Slope, 1e-13);
        Near(0.232818234301152, fit.InterceptDeviation, 1e-12);
        Near(0.000429796848199937, fit.SlopeDeviation, 1e-12);
        Near(0.884796396144373, fit.ResidualDeviation, 1e-12);
        Near(26.6173985294224, fit.ResidualSquares, 1e-12);
        Near(4255954.13232369, fit.RegressionSquares, 1e-13);
        Near(0.999993745883712, fit.RegressionSquares / (fit.RegressionSquares + fit.ResidualSquares), 1e-14);
        Near(5436385.54079785, fit.RegressionSquares / (fit.ResidualDeviation * fit.ResidualDeviation), 1e-12);
    }

    /// <summary>Calculated by definition from the certified values: Student's t for 34 degrees 2.0322, residual s.d. 0.884796396.</summary>
    [Fact]
    public void The_prediction_band_is_narrowest_at_the_mean_and_widens_by_its_formula()
    {
        var (x, y) = (ReferenceData.NorrisX, ReferenceData.NorrisY);
        var fit = LeastSquares.Through(x, y)!;
        var spread = x.Sum(at => (at - x.Mean()) * (at - x.Mean()));

        Assert.Equal(2.0322 * 0.884796396 * Math.Sqrt(1 + (1 / 36.0)), fit.HalfBandAt(x.Mean()), 0.0001);
        Assert.Equal(2.0322 * 0.884796396 * Math.Sqrt(1 + (1 / 36.0) + (700.0 * 700 / spread)), fit.HalfBandAt(x.Mean() + 700), 0.0001);
    }

    /// <summary>
    /// Sen, Journal of the American Statistical Association 63 (1968), example: 21 slopes, median 4. The intercept here
    /// is median(y - 4x) = 6; median(y) - 4 median(x) would be 4.
    /// </summary>
    [Fact]
    public void Theil_Sen_gives_the_slope_of_the_example()
    {
        var line = TheilSen.Through([1, 2, 3, 4, 10, 12, 18], [9, 15, 19, 20, 45, 55, 78])!;

        Assert.Equal(4, line.Slope, 1e-12);
        Assert.Equal(6, line.Intercept, 1e-12);
    }

    [Fact]
    public void One_wild_value_moves_least_squares_and_not_Theil_Sen()
    {
        double[] x = [0, 1, 2, 3, 4];
        double[] y = [10, 9, 8, 7, 60];

        Assert.Equal(-1, TheilSen.Through(x, y)!.Slope, 1e-12);
        Assert.True(LeastSquares.Through(x, y)!.Slope > 1);
    }

    [Fact]
    public void Points_without_a_line_give_none()
    {
        Assert.Null(TheilSen.Through([], []));
        Assert.Null(TheilSen.Through([1], [1]));
        Assert.Null(TheilSen.Through([5, 5, 5], [1, 2, 3]));
        Assert.Null(TheilSen.Through([1, 2, 3], [1, double.NaN, 3]));
        Assert.Null(TheilSen.Through([1, 2, double.PositiveInfinity], [1, 2, 3]));
        Assert.Null(LeastSquares.Through([1, 2], [1, 2]));
        Assert.Null(LeastSquares.Through([5, 5, 5], [1, 2, 3]));
        Assert.Null(LeastSquares.Through([1, 2, 3], [1, double.NaN, 3]));
        Assert.Throws<ArgumentException>(() => TheilSen.Through([1, 2], [1]));
        Assert.Throws<ArgumentException>(() => LeastSquares.Through([1, 2, 3], [1]));
    }

    [Fact]
    public void Theil_Sen_skips_pairs_with_equal_x() => Assert.Equal(2, TheilSen.Through([0, 0, 1, 2], [0, 0, 2, 4])!.Slope, 1e-12);

    private static void Near(double certified, double found, double relative) =>
        Assert.InRange(Math.Abs((found - certified) / certified), 0, relative);
}

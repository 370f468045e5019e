using System.Globalization;
using ExamDocs.Core.Measurement;

namespace ExamDocs.Core.Tests.Measurement;

public sealed class UncertaintyTests
{
    /// <summary>JCGM 100:2008, table G.2, column for p = 95.45 % (from memory).</summary>
    [Theory]
    [InlineData(1, 13.97)]
    [InlineData(2, 4.53)]
    [InlineData(3, 3.31)]
    [InlineData(5, 2.65)]
    [InlineData(10, 2.28)]
    [InlineData(20, 2.13)]
    [InlineData(100, 2.025)]
    [InlineData(double.PositiveInfinity, 2.000)]
    public void The_coverage_factor_is_that_of_the_guide(double freedom, double k) =>
        Assert.Equal(k, MeanUncertainty.CoverageFor(freedom), 0.005);

    [Fact]
    public void Part_degrees_of_freedom_are_cut_off() => Assert.Equal(MeanUncertainty.CoverageFor(5), MeanUncertainty.CoverageFor(5.99));

    /// <summary>JCGM 100:2008 F.2.2.1: with the step alone, u is 0.29 of the step.</summary>
    [Fact]
    public void A_single_reading_has_the_step_of_the_calliper_only()
    {
        var uncertainty = MeanUncertainty.Of(
            PooledScatter.Of([
                [11.0m],
                [10.9m],
            ]),
            1,
            0.1m
        );

        Assert.Equal(0.029, uncertainty.StandardMm, 0.0005);
        Assert.Equal(2 * 0.1 / Math.Sqrt(12), uncertainty.ExpandedMm, 1e-12);
    }

    /// <summary>By hand: squares 0.005 + 0 + 0.02 over three degrees, s² = 0.025/3.</summary>
    [Fact]
    public void Scatter_is_pooled_over_the_stations()
    {
        var scatter = PooledScatter.Of([
            [11.0m, 10.9m],
            [10.9m, 10.9m],
            [10.8m, 11.0m],
            [9.0m],
            [],
        ]);

        Assert.Equal(3, scatter.DegreesOfFreedom);
        Assert.Equal(0.025 / 3, scatter.Variance, 1e-15);
        var u = MeanUncertainty.Of(scatter, 2, 0.1m);
        Assert.Equal(Math.Sqrt((0.025 / 6) + (0.01 / 12)), u.StandardMm, 1e-12);
        // (0.005)² · 3 / (0.0041667)² = 4.32: four degrees, 2.87 in table G.2.
        Assert.Equal(2.87, u.CoverageFactor, 0.005);
    }

    [Theory]
    [InlineData("11.0 10.9", "0.1")]
    [InlineData("11 10.85", "0.01")]
    [InlineData("11 12", "1")]
    [InlineData("11.0 11.0 11.0 11.0 11.0 11.0", "0.1")]
    [InlineData("11.05 10.9 10.95 11.0 11.0 10.9", "0.05")]
    [InlineData("11.05 10.9 10.95 11.0 11.0", "0.01")]
    [InlineData("11.05 10.9 10.95 11.0 11.0 10.92", "0.01")]
    [InlineData("10.850000000001 10.9", "0.01")]
    public void The_step_is_inferred_from_the_finest_digit(string readings, string step) =>
        Assert.Equal(Parse(step), CalliperResolution.InferFrom([.. readings.Split(' ').Select(Parse)]));

    private static decimal Parse(string number) => decimal.Parse(number, CultureInfo.InvariantCulture);
}

public sealed class RobustSpreadTests
{
    /// <summary>The example of a rope of six readings: the modified z of 12.6 is 10.792, the others stay within 0.6745.</summary>
    [Fact]
    public void Only_the_value_that_stands_out_is_found()
    {
        double[] values = [10.9, 11.0, 11.1, 11.0, 10.9, 12.6];
        var spread = new RobustSpread(values, 0.1);

        Assert.Equal(11.0, spread.Median, 1e-12);
        Assert.Equal(10.792, spread.ModifiedZ(12.6), 1e-9);
        Assert.Equal([12.6], values.Where(spread.IsOutlying));
        Assert.All(values[..5], v => Assert.InRange(Math.Abs(spread.ModifiedZ(v)), 0, 0.6745 + 1e-9));
    }

    [Fact]
    public void Where_more_than_half_are_equal_the_step_counts_as_the_spread()
    {
        var spread = new RobustSpread([11.0, 11.0, 11.0, 11.0, 10.5], 0.1);

        Assert.Equal(0, spread.MedianAbsoluteDeviation);
        Assert.Equal(-3.3725, spread.ModifiedZ(10.5), 1e-9);
        Assert.False(spread.IsOutlying(10.5));
        Assert.True(spread.IsOutlying(10.4));
        Assert.False(spread.IsOutlying(11.0));
    }
}

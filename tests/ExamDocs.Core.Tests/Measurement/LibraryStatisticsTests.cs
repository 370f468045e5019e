using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;

namespace ExamDocs.Core.Tests.Measurement;

/// <summary>The functions that we use of the statistics library give published values.</summary>
public sealed class LibraryStatisticsTests
{
    /// <summary>NIST StRD, univariate summary statistics: certified mean and sample standard deviation.</summary>
    [Theory]
    [InlineData("Michelso", 100, 299.852400000000, 0.0790105478190518, 1e-12)]
    [InlineData("Mavro", 50, 2.00185600000000, 0.000429123454003053, 1e-12)]
    [InlineData("Lew", 200, -177.435000000000, 277.332168044316, 1e-13)]
    [InlineData("NumAcc1", 3, 10000002, 1, 1e-15)]
    [InlineData("NumAcc2", 1001, 1.2, 0.1, 1e-13)]
    [InlineData("NumAcc3", 1001, 1000000.2, 0.1, 1e-8)] // the data themselves are no closer to .1 in binary
    [InlineData("NumAcc4", 1001, 10000000.2, 0.1, 1e-7)]
    public void Mean_and_standard_deviation_of_the_reference_sets(string set, int n, double mean, double deviation, double relative)
    {
        var data = ReferenceData.Of(set);

        Assert.Equal(n, data.Length);
        Assert.InRange(Math.Abs(data.Mean() - mean) / Math.Abs(mean), 0, 1e-14);
        Assert.InRange(Math.Abs(data.StandardDeviation() - deviation) / deviation, 0, relative);
    }

    /// <summary>NIST StRD: certified lag-1 autocorrelation.</summary>
    [Theory]
    [InlineData("Michelso", 0.535199668621283)]
    [InlineData("Mavro", 0.937989183438248)]
    [InlineData("Lew", -0.307304800605679)]
    [InlineData("NumAcc1", -0.5)]
    [InlineData("NumAcc2", -0.999)]
    [InlineData("NumAcc3", -0.999)]
    [InlineData("NumAcc4", -0.999)]
    public void Lag_one_autocorrelation_of_the_reference_sets(string set, double certified)
    {
        var data = ReferenceData.Of(set);
        var mean = data.Mean();
        var lagged = data.Zip(data.Skip(1), (now, next) => (now - mean) * (next - mean)).Sum();

        Assert.Equal(certified, lagged / data.Sum(v => (v - mean) * (v - mean)), 1e-8);
    }

    /// <summary>10 CFR part 429, subpart B, appendix A; the rows for 30 and 34 degrees and the column 0.995 recomputed.</summary>
    [Theory]
    [InlineData(1, 6.3138, 12.7062, 63.6567)]
    [InlineData(2, 2.9200, 4.3027, 9.9248)]
    [InlineData(5, 2.0150, 2.5706, 4.0321)]
    [InlineData(10, 1.8125, 2.2281, 3.1693)]
    [InlineData(30, 1.6973, 2.0423, 2.7500)]
    [InlineData(34, 1.6909, 2.0322, 2.7284)]
    public void Upper_points_of_Student(int freedom, double at95, double at975, double at995)
    {
        Assert.Equal(at95, StudentT.InvCDF(0, 1, freedom, 0.95), 0.00005);
        Assert.Equal(at975, StudentT.InvCDF(0, 1, freedom, 0.975), 0.00005);
        Assert.Equal(at995, StudentT.InvCDF(0, 1, freedom, 0.995), 0.00005);
    }

    /// <summary>Wilson's interval, 95 %, of the examples in Newcombe, Statistics in Medicine 17:857-872 (1998).</summary>
    [Theory]
    [InlineData(81, 263, 0.2553, 0.3662)]
    [InlineData(15, 148, 0.0624, 0.1605)]
    [InlineData(0, 20, 0.0000, 0.1611)]
    [InlineData(1, 29, 0.0061, 0.1718)]
    [InlineData(29, 29, 0.8830, 1.0000)]
    public void The_normal_quantile_gives_the_interval_of_Wilson(int k, int n, double low, double high)
    {
        var z = Normal.InvCDF(0, 1, 0.975);
        var p = (double)k / n;
        var centre = (p + (z * z / (2 * n))) / (1 + (z * z / n));
        var half = z * Math.Sqrt((p * (1 - p) / n) + (z * z / (4.0 * n * n))) / (1 + (z * z / n));

        Assert.Equal(low, centre - half, 0.00005);
        Assert.Equal(high, centre + half, 0.00005);
    }

    /// <summary>The exact interval of Clopper and Pearson, 95 %, of the same examples.</summary>
    [Theory]
    [InlineData(81, 263, 0.2527, 0.3676)]
    [InlineData(15, 148, 0.0578, 0.1617)]
    [InlineData(1, 29, 0.0009, 0.1776)]
    public void The_beta_quantile_gives_the_interval_of_Clopper_and_Pearson(int k, int n, double low, double high)
    {
        Assert.Equal(low, Beta.InvCDF(k, n - k + 1, 0.025), 0.00005);
        Assert.Equal(high, Beta.InvCDF(k + 1, n - k, 0.975), 0.00005);
    }

    [Fact]
    public void The_beta_quantile_of_none_in_twenty() => Assert.Equal(0.1684, Beta.InvCDF(1, 20, 0.975), 0.00005);

    /// <summary>NIST/SEMATECH e-Handbook of Statistical Methods 6.3.2.2: individuals chart of the flow data; d2 of two is 1.128.</summary>
    [Fact]
    public void The_limits_of_the_individuals_chart()
    {
        double[] flow = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
        var range = flow.Zip(flow.Skip(1), (now, next) => Math.Abs(next - now)).Mean();

        Assert.Equal(50.81, flow.Mean(), 1e-9);
        Assert.Equal(1.8778, range, 0.00005);
        Assert.Equal(45.8159, flow.Mean() - (3 * range / 1.128), 0.0001);
        Assert.Equal(55.8041, flow.Mean() + (3 * range / 1.128), 0.0001);
    }

    /// <summary>The ten slopes of the worked example on statisticshowto.com, Sen's slope.</summary>
    [Fact]
    public void The_median_of_ten_published_slopes() =>
        Assert.Equal(756.5, new double[] { -340, 130, 496, 561, 713, 800, 851, 952, 1184, 1327 }.Median());
}

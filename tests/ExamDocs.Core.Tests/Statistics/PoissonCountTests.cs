using ExamDocs.Core.Statistics;

namespace ExamDocs.Core.Tests.Statistics;

public sealed class PoissonCountTests
{
    /// <summary>Exact 95 % interval, Garwood, Biometrika 28:437-442 (1936), recomputed.</summary>
    [Theory]
    [InlineData(0, 0, 3.6888795)]
    [InlineData(1, 0.025317808, 5.5716434)]
    [InlineData(5, 1.6234864, 11.668332)]
    [InlineData(10, 4.7953887, 18.390356)]
    [InlineData(100, 81.363991, 121.62679)]
    public void Garwoods_interval_is_as_published(int count, double low, double high)
    {
        var interval = PoissonCount.Garwood(count);

        Assert.InRange(Math.Abs(interval.Low - low), 0, 1e-7 * Math.Max(low, 1));
        Assert.InRange(Math.Abs(interval.High - high), 0, 1e-7 * high);
    }

    [Fact]
    public void A_negative_count_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => PoissonCount.Garwood(-1));
}

using ExamDocs.Core.Statistics;

namespace ExamDocs.Core.Tests.Statistics;

public sealed class ProportionTests
{
    /// <summary>Wilson's interval, 95 %, of the examples in Newcombe, Statistics in Medicine 17:857-872 (1998), recomputed.</summary>
    [Theory]
    [InlineData(81, 263, 0.25528852, 0.36620958)]
    [InlineData(15, 148, 0.0623864, 0.16048724)]
    [InlineData(0, 20, 0, 0.16112516)]
    [InlineData(1, 29, 0.0061132143, 0.17175522)]
    public void Wilsons_interval_is_as_published(int count, int total, double low, double high)
    {
        var proportion = new Proportion(count, total);

        Assert.Equal((double)count / total, proportion.Value, 1e-15);
        Assert.Equal(low, proportion.Wilson.Low, 5e-9);
        Assert.Equal(high, proportion.Wilson.High, 5e-9);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(29)]
    [InlineData(100000)]
    public void None_and_all_mirror_each_other_and_reach_the_end_exactly(int total)
    {
        var (none, all) = (new Proportion(0, total).Wilson, new Proportion(total, total).Wilson);

        Assert.Equal(0d, none.Low);
        Assert.Equal(1d, all.High);
        Assert.Equal(1 - none.High, all.Low, 1e-12);
        Assert.InRange(none.High, 1e-6, 0.999);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(-1, 5)]
    [InlineData(6, 5)]
    [InlineData(0, -1)]
    public void No_proportion_of_nothing_or_of_more_than_all(int count, int total) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Proportion(count, total));
}

using ExamDocs.Core.Statistics;

namespace ExamDocs.Core.Tests.Statistics;

public sealed class LogRankTests
{
    /// <summary>Freireich et al., Blood 21:699-716 (1963); computed with R 4.2.2, package survival 3.5-3.</summary>
    [Fact]
    public void Two_treatments_differ_as_published()
    {
        var test = LogRank.Of(PublishedLifetimes.Mercaptopurine, PublishedLifetimes.Placebo)!;

        Assert.Equal((9, 21), (test.Observed, test.ObservedOther));
        Assert.Equal(19.250501, test.Expected, 5e-7);
        Assert.Equal(10.749499, test.ExpectedOther, 5e-7);
        Assert.Equal(16.792941, test.Statistic, 5e-7);
        Assert.Equal(4.16881e-05, test.Probability, 5e-11);
    }

    /// <summary>Miller 1997, the data set aml of R's package survival.</summary>
    [Fact]
    public void A_second_published_set()
    {
        var test = LogRank.Of(PublishedLifetimes.Maintained, PublishedLifetimes.NotMaintained)!;

        Assert.Equal(3.3963887, test.Statistic, 5e-8);
        Assert.Equal(.0653393, test.Probability, 5e-8);
    }

    /// <summary>
    /// Computed with statsmodels 0.13.5: survdiff(time, status, group, entry=entry). R and statsmodels are asked anew where they are
    /// installed (StatisticsTests of the tests of interchange).
    /// </summary>
    [Fact]
    public void Groups_of_which_some_are_watched_only_later()
    {
        Lifetime[] one = [Life(0, 4), Life(2, 6), Life(5, 6, false), Life(0, 9), Life(9, 12), Life(9, 15, false), Life(3, 18)];
        Lifetime[] other = [Life(0, 5), Life(0, 6), Life(5, 8), Life(6, 12), Life(2, 12, false), Life(12, 20), Life(0, 22, false)];

        var test = LogRank.Of(one, other)!;

        Assert.Equal(0.5027837694383901, test.Statistic, 1e-12);
        Assert.Equal(0.4782795052070482, test.Probability, 1e-12);

        static Lifetime Life(double entry, double time, bool isEvent = true) => new(time, isEvent, entry);
    }

    [Fact]
    public void Which_group_comes_first_makes_no_difference()
    {
        var (there, back) = (
            LogRank.Of(PublishedLifetimes.Mercaptopurine, PublishedLifetimes.Placebo)!,
            LogRank.Of(PublishedLifetimes.Placebo, PublishedLifetimes.Mercaptopurine)!
        );

        Assert.Equal(there.Statistic, back.Statistic, 1e-9);
        Assert.Equal(there.Expected, back.ExpectedOther, 1e-9);
    }

    [Fact]
    public void A_group_does_not_differ_from_itself()
    {
        var test = LogRank.Of(PublishedLifetimes.Placebo, PublishedLifetimes.Placebo)!;

        Assert.Equal(0, test.Statistic, 1e-9);
        Assert.Equal(1, test.Probability, 1e-4);
    }

    [Theory]
    [InlineData("3+ 4+", "5+ 6+")] // no event
    [InlineData("1 2", "0.5+ 0.5+")] // the other was no longer watched
    [InlineData("4", "4")] // all at once
    public void Where_nothing_can_be_compared_there_is_no_result(string one, string other) =>
        Assert.Null(LogRank.Of(PublishedLifetimes.Of(one), PublishedLifetimes.Of(other)));

    [Fact]
    public void An_empty_group_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => LogRank.Of([], PublishedLifetimes.Placebo));
}

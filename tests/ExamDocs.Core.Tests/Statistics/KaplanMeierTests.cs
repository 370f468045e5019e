using ExamDocs.Core.Statistics;

namespace ExamDocs.Core.Tests.Statistics;

public sealed class KaplanMeierTests
{
    /// <summary>Freireich et al., Blood 21:699-716 (1963); the values were computed with R 4.2.2, package survival 3.5-3.</summary>
    [Theory]
    [InlineData(0, 6, 21, 3, .85714286, .076360355, .61971796, .95155175)]
    [InlineData(1, 7, 17, 1, .80672269, .086935285, .56314656, .92280902)]
    [InlineData(2, 10, 15, 1, .75294118, .096349653, .50319951, .88936184)]
    [InlineData(3, 13, 12, 1, .69019608, .106814708, .43161022, .84906596)]
    [InlineData(4, 16, 11, 1, .62745098, .114053865, .36751086, .80491219)]
    [InlineData(5, 22, 7, 1, .53781513, .128233752, .26777894, .74679072)]
    [InlineData(6, 23, 6, 1, .44817927, .134591457, .18805201, .68014263)]
    public void Share_error_and_interval_are_as_published(
        int step,
        double age,
        int atRisk,
        int events,
        double share,
        double error,
        double low,
        double high
    )
    {
        var curve = new KaplanMeier(PublishedLifetimes.Mercaptopurine);
        var found = curve.Steps[step];

        Assert.Equal(7, curve.Steps.Count);
        Assert.Equal((age, atRisk, events), (found.Age, found.AtRisk, found.Events));
        Assert.Equal(share, found.Share, 5e-9);
        Assert.Equal(error, found.StandardError!.Value, 5e-9);
        Assert.Equal(low, found.Interval!.Low, 5e-9);
        Assert.Equal(high, found.Interval.High, 5e-9);
    }

    /// <summary>Freireich et al. 1963: medians of 23 and 8 weeks.</summary>
    [Fact]
    public void Medians_are_as_published()
    {
        var (drug, placebo) = (new KaplanMeier(PublishedLifetimes.Mercaptopurine), new KaplanMeier(PublishedLifetimes.Placebo));

        Assert.Equal((23d, 8d), (drug.Median, placebo.Median));
        // By the published interval, whose lower end is .4316 at 13 and whose upper end stays above .68.
        Assert.Equal((13d, (double?)null), drug.MedianInterval);
        Assert.Equal((9, 12, 21), (drug.Events, drug.Censored.Count, drug.Things));
    }

    /// <summary>Miller 1997, the data set aml of R's package survival: the maintained group.</summary>
    [Fact]
    public void Shares_of_a_second_published_set()
    {
        var curve = new KaplanMeier(PublishedLifetimes.Maintained);

        Assert.Equal([9, 13, 18, 23, 31, 34, 48], curve.Steps.Select(s => s.Age));
        double[] published = [.909091, .818182, .715909, .613636, .490909, .368182, .184091];
        Assert.All(published.Index(), p => Assert.Equal(p.Item, curve.Steps[p.Index].Share, 5e-7));
    }

    [Fact]
    public void Without_censoring_the_share_is_the_part_that_is_left()
    {
        var curve = new KaplanMeier(PublishedLifetimes.Placebo);

        Assert.Equal(12 / 21d, curve.At(5), 1e-12);
        Assert.Equal(1d, curve.At(0.9));
        Assert.Equal(8 / 21d, curve.At(10.9), 1e-12);
        Assert.Equal(0d, curve.At(23));
    }

    [Fact]
    public void Where_none_is_left_no_error_and_no_interval_are_given()
    {
        var last = new KaplanMeier(PublishedLifetimes.Placebo).Steps[^1];

        Assert.Equal((0d, (double?)null, (ConfidenceInterval?)null), (last.Share, last.StandardError, last.Interval));
    }

    [Fact]
    public void Where_all_are_censored_all_are_left()
    {
        var curve = new KaplanMeier(PublishedLifetimes.Of("3+ 3+ 8+"));

        Assert.Empty(curve.Steps);
        Assert.Equal((1d, null, 0), (curve.At(8), curve.Median, curve.Events));
        Assert.Equal([3, 3, 8], curve.Censored);
    }

    [Fact]
    public void One_censored_at_the_age_of_an_event_counts_as_at_risk_there()
    {
        var step = Assert.Single(new KaplanMeier(PublishedLifetimes.Of("5 5+ 5+ 5")).Steps);

        Assert.Equal((4, 2, 0.5), (step.AtRisk, step.Events, step.Share));
    }

    [Fact]
    public void A_share_of_one_half_reaches_the_median() => Assert.Equal(3d, new KaplanMeier(PublishedLifetimes.Of("1 2 3 4 5 6")).Median);

    [Fact]
    public void What_is_watched_only_later_is_not_at_risk_before()
    {
        Lifetime[] lives =
        [
            new(2, isEvent: true),
            new(5, isEvent: false),
            new(4, isEvent: true, entry: 2),
            new(6, isEvent: false, entry: 3),
        ];

        var curve = new KaplanMeier(lives);

        Assert.Equal([(2d, 2), (4d, 3)], curve.Steps.Select(s => (s.Age, s.AtRisk)));
        Assert.Equal(0.5 * 2 / 3, curve.At(4), 1e-12);
    }

    [Fact]
    public void An_event_at_the_age_at_which_watching_begins_says_nothing()
    {
        var curve = new KaplanMeier([new Lifetime(4, isEvent: true, entry: 4), new Lifetime(9, isEvent: false)]);

        Assert.Equal((1d, 0), (curve.At(9), curve.Events));
    }

    [Fact]
    public void Lifetimes_are_needed_and_must_make_sense()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new KaplanMeier([]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Lifetime(-1, isEvent: true));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Lifetime(double.NaN, isEvent: true));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Lifetime(3, isEvent: true, entry: 4));
    }
}

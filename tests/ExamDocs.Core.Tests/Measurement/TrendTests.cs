using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Tests.Measurement;

public sealed class TrendTests
{
    private static readonly LocalDate Start = new(2024, 1, 1);

    private static readonly MakersLimits Eleven = new() { NominalDiameterMm = 11.0m, DiameterTolerancePercent = 10 };

    /// <summary>0.1 mm in 100 days from 11.0 mm: 9.9 mm is reached on day 1100 exactly, and both methods agree.</summary>
    [Fact]
    public void A_straight_fall_reaches_the_limit_on_exactly_its_day()
    {
        var trend = Trend((0, 11.0m), (100, 10.9m), (200, 10.8m), (300, 10.7m))!;

        Assert.Equal(Start.PlusDays(1100), trend.Smallest.ByLine);
        Assert.Equal(Start.PlusDays(1100), trend.Smallest.ByBand);
        Assert.Equal(Start.PlusDays(1100), trend.Proposed);
        Assert.True(trend.Governing!.IsSmallest);
        Assert.Null(trend.Largest.Reaches);
    }

    /// <summary>0.3 mm in 100 days: 9.9 mm after 366.67 days, cut to 366.</summary>
    [Fact]
    public void Part_days_are_cut_off() =>
        Assert.Equal(Start.PlusDays(366), Trend((0, 11.0m), (100, 10.7m), (200, 10.4m), (300, 10.1m))!.Proposed);

    [Fact]
    public void A_straight_growth_reaches_the_upper_limit()
    {
        var trend = Trend((0, 11.0m), (100, 11.1m), (200, 11.2m), (300, 11.3m))!;

        Assert.Equal(Start.PlusDays(1100), trend.Proposed);
        Assert.False(trend.Governing!.IsSmallest);
        Assert.Equal(12.1m, trend.Governing.LimitMm);
        Assert.Null(trend.Smallest.Reaches);
    }

    [Fact]
    public void A_level_series_reaches_no_limit()
    {
        var trend = Trend((0, 11.0m), (100, 11.0m), (200, 11.0m), (300, 11.0m))!;

        Assert.Null(trend.Proposed);
        Assert.Equal(0, trend.Smallest.Line.Slope);
    }

    [Fact]
    public void Without_a_tolerance_nothing_is_projected()
    {
        var trend = DiameterTrend.Of(
            Profiles((0, 11.0m), (100, 10.9m), (200, 10.8m), (300, 10.7m)),
            new MakersLimits { NominalDiameterMm = 11 }
        )!;

        Assert.Null(trend.Proposed);
        Assert.Null(trend.Smallest.LimitMm);
    }

    [Fact]
    public void Three_earlier_days_are_needed()
    {
        Assert.Null(Trend((0, 11.0m), (100, 10.9m), (200, 10.8m)));
        Assert.Null(Trend((0, 11.0m), (100, 10.9m), (100, 10.9m), (200, 10.8m)));
        Assert.NotNull(Trend((0, 11.0m), (100, 10.9m), (150, 10.8m), (200, 10.8m)));
    }

    [Fact]
    public void Of_two_profiles_on_one_day_the_worse_counts()
    {
        var trend = Trend((0, 11.0m), (100, 10.9m), (200, 10.8m), (300, 10.7m), (300, 10.2m))!;

        Assert.Equal(4, trend.Smallest.Points.Count);
        Assert.Equal(10.2, trend.Smallest.Points[^1].Mm, 1e-12);
        Assert.Equal(10.7, trend.Largest.Points[^1].Mm, 1e-12);
    }

    [Fact]
    public void A_profile_without_readings_does_not_count() =>
        Assert.Null(
            DiameterTrend.Of(
                [
                    .. Profiles((0, 11.0m), (100, 10.9m), (300, 10.7m)),
                    new DatedProfile(Start.PlusDays(200), [new DiameterStation { PositionMm = 50 }]),
                ],
                Eleven
            )
        );

    /// <summary>
    /// The answers by hand: x̄ 150, Sxx 50,000, slope -0.001, residuals +, -, -, + 0.05: s² = 0.01/2, t for two degrees
    /// 4.3027. The lower bound meets 9.9 where 11.05 - 0.001 x - 9.9 = t s √(1.25 + (x - 150)²/50000).
    /// </summary>
    [Fact]
    public void With_scatter_the_bound_comes_first_on_the_day_of_the_formula()
    {
        var trend = Trend((0, 11.1m), (100, 10.9m), (200, 10.8m), (300, 10.8m))!;
        var x = Start.PlusDays(0);
        var days = Period.DaysBetween(x, trend.Smallest.ByBand!.Value);

        Assert.Equal(trend.Smallest.ByBand, trend.Proposed);
        Assert.True(trend.Smallest.ByBand < trend.Smallest.ByLine);
        Assert.True(Lower(days) >= 9.9);
        Assert.True(Lower(days + 1) < 9.9);

        static double Lower(double at) =>
            11.05 - (0.001 * at) - (4.302653 * Math.Sqrt(0.01 / 2) * Math.Sqrt(1.25 + ((at - 150) * (at - 150) / 50000)));
    }

    [Fact]
    public void A_bound_already_at_the_limit_gives_the_day_of_the_last_examination()
    {
        var trend = Trend((0, 11.0m), (100, 9.95m), (200, 10.6m), (300, 9.95m))!;

        Assert.Equal(Start.PlusDays(300), trend.Proposed);
    }

    [Fact]
    public void No_day_is_given_beyond_the_calendar() =>
        Assert.Null(Trend((0, 11.0m), (1000, 11.0m), (2000, 10.9999m), (3000, 10.9999m), (4000, 10.9999m))!.Smallest.ByLine);

    [Fact]
    public void One_wild_examination_does_not_move_the_line()
    {
        var trend = Trend((0, 11.0m), (100, 10.9m), (200, 10.8m), (300, 13.0m), (400, 10.6m), (500, 10.5m))!;

        Assert.Equal(-0.001, trend.Smallest.Line.Slope, 0.0002);
        Assert.InRange(trend.Smallest.ByLine!.Value, Start.PlusDays(1000), Start.PlusDays(1200));
    }

    [Fact]
    public void No_proposal_lies_before_the_last_examination_or_after_either_method()
    {
        var random = new Random(20260511);
        for (var i = 0; i < 2000; i++)
        {
            var points = Enumerable
                .Range(0, 4 + random.Next(5))
                .Select(n => (n * (1 + random.Next(200)), 9.5m + (random.Next(300) / 100m)))
                .ToArray();
            if (Trend(points) is not { } trend)
                continue;
            foreach (var series in new[] { trend.Smallest, trend.Largest }.Where(s => s.Reaches is not null))
            {
                Assert.True(series.Reaches >= series.Points[^1].On);
                Assert.True(series.ByLine is null || series.Reaches <= series.ByLine);
                Assert.True(series.ByBand is null || series.Reaches <= series.ByBand);
                Assert.True(trend.Proposed <= series.Reaches);
            }
        }
    }

    private static DiameterTrend? Trend(params (int Day, decimal Mm)[] points) => DiameterTrend.Of(Profiles(points), Eleven);

    private static IEnumerable<DatedProfile> Profiles(params (int Day, decimal Mm)[] points) =>
        points.Select(p => new DatedProfile(Start.PlusDays(p.Day), [new DiameterStation { PositionMm = 50, ReadingsMm = [p.Mm, p.Mm] }]));
}

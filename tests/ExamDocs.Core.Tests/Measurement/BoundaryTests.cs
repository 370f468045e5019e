using System.Text.Json.Nodes;
using ExamDocs.Core.Cases;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using ExamDocs.Core.Tests.Determination;
using ExamDocs.Intake.Json;
using NodaTime;

namespace ExamDocs.Core.Tests.Measurement;

/// <summary>Calculations exactly at a boundary, with numbers that are exact in binary.</summary>
public sealed class BoundaryTests
{
    private static readonly LocalDate Start = new(2024, 1, 1);

    /// <summary>A line from 10 that falls by 1 a day reaches zero on day 10; the last day given is inclusive.</summary>
    [Theory]
    [InlineData(0, 10, 10)]
    [InlineData(0, 9, null)]
    [InlineData(12, 20, 12)]
    public void A_line_reaches_its_limit_from_the_first_to_the_last_day_inclusive(int from, int to, int? day) =>
        Assert.Equal(day, new Approach(0, Falls: true, from, to).DayOf(new TheilSen(10, -1)));

    /// <summary>Points exactly on a line have no scatter, so the band is the line itself.</summary>
    [Theory]
    [InlineData(0, 20, 10)]
    [InlineData(0, 5, null)]
    [InlineData(0, 10, null)]
    [InlineData(10, 20, 10)]
    [InlineData(10, 10, 10)]
    [InlineData(15, 15, 15)]
    public void A_band_without_width_reaches_its_limit_with_the_line(int from, int to, int? day) =>
        Assert.Equal(day, new Approach(0, Falls: true, from, to).DayOf(Fit((0, 10), (1, 9), (2, 8))));

    [Theory]
    [InlineData(true, -1e-10, null)]
    [InlineData(true, -2e-10, 5)]
    [InlineData(false, 1e-10, null)]
    [InlineData(false, 2e-10, 5)]
    [InlineData(true, 1, null)]
    [InlineData(false, -1, null)]
    public void A_slope_that_is_only_rounding_reaches_no_limit(bool falls, double slope, int? day) =>
        Assert.Equal(day, new Approach(10 + (falls ? -1e-9 : 1e-9), falls, 0, 1000).DayOf(new TheilSen(10, slope)));

    /// <summary>The day found is the last on which the nearer bound has not passed the limit.</summary>
    [Theory]
    [InlineData(true, 10.0, 9.0, 9.4, 8.5, 2.0)]
    [InlineData(false, 10.0, 11.0, 10.6, 11.5, 18.0)]
    public void The_nearer_bound_reaches_the_limit_on_the_day_found(bool falls, double a, double b, double c, double d, double limit)
    {
        var fit = Fit((0, a), (1, b), (2, c), (3, d));
        var day = new Approach(limit, falls, 3, 10_000).DayOf(fit)!.Value;
        Assert.True(day > 3);
        Assert.True(Room(day) >= 0 && Room(day + 1) < 0, $"{Room(day)} {Room(day + 1)}");
        Assert.True(
            day < new Approach(limit, falls, 3, 10_000).DayOf(new TheilSen(fit.Intercept, fit.Slope)),
            "the bound is there before the line"
        );

        double Room(int x) => (falls ? fit.At(x) - limit : limit - fit.At(x)) - fit.HalfBandAt(x);
    }

    [Fact]
    public void A_mean_whose_uncertainty_just_reaches_the_limit_is_not_clear_of_it()
    {
        DiameterBand band = new(10, 20);
        Assert.False(band.Clears(new(8.5m, 1), 0.5));
        Assert.False(band.Clears(new(11.5m, 1), 0.5));
        Assert.True(band.Clears(new(8.5m, 1), 0.25));
        Assert.True(band.Clears(new(11.5m, 1), 0.25));
        Assert.Null(DiameterBand.Of(null));
    }

    [Fact]
    public void A_mean_is_rounded_for_print_half_away_from_zero() =>
        Assert.Equal([10.5m, 10.35m], [new StationMean(31.5m, 3).Rounded, new StationMean(31.035m, 3).Rounded]);

    [Fact]
    public void A_value_at_the_limit_of_the_modified_z_is_not_outlying()
    {
        RobustSpread spread = new([0, 0, 0], 1.349);
        Assert.Equal(3.5, spread.ModifiedZ(7));
        Assert.False(spread.IsOutlying(7));
        Assert.True(spread.IsOutlying(7.001));
        Assert.True(spread.IsOutlying(-7.001));
    }

    /// <summary>Student's t for 10,000 degrees of freedom is a little above that of the normal distribution.</summary>
    [Fact]
    public void The_coverage_factor_is_two_only_beyond_ten_thousand_degrees_of_freedom()
    {
        Assert.InRange(MeanUncertainty.CoverageFor(10_000), 2.00001, 2.001);
        Assert.Equal(2, MeanUncertainty.CoverageFor(10_001));
    }

    /// <summary>11.0 and 11.2 have a variance of 0.02 mm² about their mean; stations with one reading or none add nothing.</summary>
    [Fact]
    public void Scatter_is_pooled_over_stations_with_two_readings()
    {
        var scatter = PooledScatter.Of([
            [11.0m, 11.2m],
            [10.0m],
            [],
            [9.0m, 9.2m],
        ]);
        Assert.Equal((0.02, 2), (Math.Round(scatter.Variance, 12), scatter.DegreesOfFreedom));
    }

    [Fact]
    public void Lines_need_as_many_x_as_y_three_points_and_numbers_that_are_finite()
    {
        Assert.StartsWith(
            "as many x as y are needed",
            Assert.Throws<ArgumentException>(() => LeastSquares.Through([1, 2, 3], [1, 2])).Message,
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            "as many x as y are needed",
            Assert.Throws<ArgumentException>(() => TheilSen.Through([1, 2, 3], [1, 2])).Message,
            StringComparison.Ordinal
        );
        Assert.NotNull(LeastSquares.Through([1, 2, 3], [1, 2, 4]));
        Assert.Null(LeastSquares.Through([1, 2], [1, 2]));
        Assert.Null(LeastSquares.Through([1, 2, double.NaN], [1, 2, 4]));
        Assert.Null(LeastSquares.Through([1, 2, 3], [1, double.PositiveInfinity, 4]));
        Assert.Null(LeastSquares.Through([1, 1, 1], [1, 2, 4]));
        Assert.Equal(7, new TheilSen(1, 2).At(3));
    }

    [Fact]
    public void Three_stations_have_a_middle_and_a_modified_z_and_two_have_neither()
    {
        var three = Profile((0, 11.0m), (200, 10.6m), (400, 11.0m));
        Assert.NotNull(three.MiddleAgainstEnds);
        Assert.All(three.Stations, s => Assert.NotNull(s.ModifiedZ));
        Assert.All(Profile((0, 11.0m), (200, 10.6m)).Stations, s => Assert.Null(s.ModifiedZ));
    }

    /// <summary>From 100 to 500 the quarters end at 200 and 400; both belong to the middle.</summary>
    [Fact]
    public void The_middle_half_begins_a_quarter_of_the_length_after_the_first_station()
    {
        var parts = Profile((100, 11.0m), (199, 12.0m), (200, 10.0m), (400, 10.5m), (401, 12.5m), (500, 11.5m)).MiddleAgainstEnds!;
        Assert.Equal((10.25, 11.75), (parts.MiddleMm, parts.EndsMm));
        Assert.Null(Profile((100, 11.0m), (100, 11.0m), (100, 11.0m)).MiddleAgainstEnds);
    }

    [Fact]
    public void The_most_oval_place_is_that_whose_readings_differ_most()
    {
        var profile = MeasuredProfile.Of([Station(0, 11.0m, 11.1m), Station(100, 11.0m, 11.3m), Station(200, 11.0m)], null, null)!;
        Assert.Equal(100, profile.MostOval!.PositionMm);
        Assert.Null(MeasuredProfile.Of([Station(0, 11.0m)], null, null)!.MostOval);
    }

    [Fact]
    public void What_has_not_changed_is_neither_thinned_nor_thickened()
    {
        var change = Change((0, 11.0m, 11.0m), (100, 11.0m, 10.9m), (200, 11.0m, 10.5m), (300, 11.0m, 11.2m), (400, 11.0m, 11.4m));
        Assert.Equal((200m, 400m), (change.MostThinned!.PositionMm, change.MostThickened!.PositionMm));
        Assert.Null(Change((0, 11.0m, 11.0m)).MostThinned);
        Assert.Null(Change((0, 11.0m, 11.0m)).MostThickened);
    }

    [Fact]
    public void A_run_holds_its_ends_and_what_lies_between()
    {
        StationRun run = new(100, 300, 3, IsThinner: true);
        Assert.Equal([false, true, true, true, false], new[] { 99m, 100m, 200m, 300m, 301m }.Select(at => run.Holds(At(at, 11))));
    }

    /// <summary>A difference equal to the uncertainty is not more than the uncertainty.</summary>
    [Fact]
    public void A_difference_no_larger_than_the_uncertainty_makes_no_run()
    {
        Assert.Null(StationRun.Longest([At(0, 10.5m), At(100, 10.5m), At(200, 10.75m)], 11));
        Assert.Equal(new StationRun(0, 100, 2, IsThinner: true), StationRun.Longest([At(0, 10.25m), At(100, 10.25m), At(200, 10.5m)], 11));
        Assert.Equal(new StationRun(0, 100, 2, IsThinner: false), StationRun.Longest([At(0, 11.75m), At(100, 11.75m), At(200, 11.5m)], 11));
    }

    /// <summary>A wild value moves one of the two lines and not the other, so that only one of them reaches the limit.</summary>
    [Fact]
    public void The_day_comes_from_whichever_method_has_one()
    {
        var band = Series((0, 11.0m), (100, 11.0m), (200, 11.0m), (300, 11.0m), (400, 10.6m));
        Assert.Null(band.ByLine);
        Assert.Equal(band.ByBand, band.Reaches);
        Assert.NotNull(band.Reaches);

        var line = Series((0, 10.6m), (100, 11.4m), (200, 11.3m), (300, 11.2m), (400, 11.1m));
        Assert.True(line.Line.Slope < 0 && line.Fit.Slope > 0, "the methods disagree on the side");
        Assert.Null(line.ByBand);
        Assert.Equal(line.ByLine, line.Reaches);
        Assert.NotNull(line.Reaches);
    }

    [Fact]
    public void The_earlier_of_two_days_counts_and_a_year_has_365_and_a_quarter_days()
    {
        var both = Series((0, 11.0m), (100, 10.9m), (200, 10.85m), (300, 10.7m));
        Assert.True(both.ByBand < both.ByLine);
        Assert.Equal(both.ByBand, both.Reaches);
        Assert.False(both.IsReachedNow);
        Assert.Equal(both.Line.Slope * 365.25, both.MmPerYear, 1e-15);
        Assert.True(Series((0, 10.2m), (100, 10.1m), (200, 10.0m), (300, 9.9m)).IsReachedNow);
        Assert.Null(Series((0, 11.0m), (100, 11.0m), (200, 11.0m), (300, 11.0m)).Reaches);
    }

    [Fact]
    public void An_examination_without_a_readable_date_has_a_profile_and_no_trend()
    {
        var record = GoodRecord.For("rope-bridge");
        foreach (var (on, mm) in new[] { ("2024-05-11", 11.0m), ("2024-11-11", 10.9m), ("2025-05-11", 10.8m), ("2025-11-11", 10.7m) })
            record.Earlier("rope-bridge", on, e =>
                e["diameters"] = new JsonArray(new JsonObject { ["positionMm"] = 50, ["readingsMm"] = new JsonArray(mm) })
            );
        record.Station(50, 10.6m);
        Assert.NotNull(Measured(record)!.Trend);
        record.Exam()["examinedOn"] = "2026-02-30";
        Assert.Null(Measured(record)!.Trend);
        Assert.NotNull(Measured(record)!.Profile);
    }

    private static MeasurementAnalysis? Measured(JsonObject record)
    {
        var read = JsonRecordReader.Read(System.Text.Encoding.UTF8.GetBytes(record.ToJsonString()), "visit.json");
        return new RecordContext(read.Record!, History.None, new LocalDate(2026, 5, 12)).Items[0].Measured;
    }

    private static LeastSquares Fit(params (double X, double Y)[] points) =>
        LeastSquares.Through([.. points.Select(p => p.X)], [.. points.Select(p => p.Y)])!;

    private static TrendSeries Series(params (int Day, decimal Mm)[] points) =>
        TrendSeries.Of([.. points.Select(p => new TrendPoint(Start.PlusDays(p.Day), (double)p.Mm))], isSmallest: true, 9.9m)!;

    private static ProfileStation At(decimal position, decimal mm) =>
        new()
        {
            Recorded = Station(position, mm),
            Index = 0,
            Mean = new StationMean(mm, 1),
            Uncertainty = new MeanUncertainty(0.25, 2),
        };

    private static MeasuredProfile Profile(params (decimal Position, decimal Mm)[] stations) =>
        MeasuredProfile.Of([.. stations.Select(s => Station(s.Position, s.Mm, s.Mm))], null, null)!;

    private static ChangeSinceFirst Change(params (decimal Position, decimal Then, decimal Now)[] stations) =>
        MeasuredProfile
            .Of(
                [.. stations.Select(s => Station(s.Position, s.Now))],
                null,
                new DatedProfile(Start, [.. stations.Select(s => Station(s.Position, s.Then))])
            )!
            .SinceFirst!;

    private static DiameterStation Station(decimal position, params decimal[] readings) =>
        new() { PositionMm = position, ReadingsMm = [.. readings.Select(r => (decimal?)r)] };
}

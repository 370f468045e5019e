using System.Globalization;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Tests.Measurement;

public sealed class ProfileTests
{
    private static readonly MakersLimits Eleven = new() { NominalDiameterMm = 11.0m, DiameterTolerancePercent = 10 };

    [Fact]
    public void No_stations_make_no_profile() => Assert.Null(MeasuredProfile.Of([], Eleven, null));

    [Fact]
    public void Stations_are_kept_as_recorded_and_also_in_order()
    {
        var profile = Profile("190: 10.9 10.7", "50: 11.0 11.0", "330: 11.1 11.0", "?: 11.0", "400:");

        Assert.Equal([190m, 50m, 330m, null, 400m], profile.Stations.Select(s => s.PositionMm));
        Assert.Equal([50m, 190m, 330m], profile.InOrder.Select(s => s.PositionMm!.Value));
        Assert.Equal([0.2m, 0.0m, 0.1m, null, null], profile.Stations.Select(s => s.OvalityMm));
        Assert.Equal(190m, profile.Thinnest!.PositionMm);
        Assert.Equal(330m, profile.Thickest!.PositionMm);
        Assert.Null(profile.Stations[4].Mean);
    }

    [Fact]
    public void Only_the_station_that_stands_out_is_marked()
    {
        var profile = Profile("50: 10.9 10.9", "100: 11.0 11.0", "150: 11.1 11.1", "200: 11.0 11.0", "250: 10.9 10.9", "300: 12.6 12.6");

        Assert.Equal([300m], profile.Stations.Where(s => s.StandsOut).Select(s => s.PositionMm!.Value));
        Assert.Equal(10.792, profile.Stations[5].ModifiedZ!.Value, 1e-9);
    }

    [Fact]
    public void Of_two_stations_neither_stands_out() =>
        Assert.All(Profile("50: 11.0 11.0", "100: 5.0 5.0").Stations, s => Assert.Null(s.ModifiedZ));

    /// <summary>All readings equal at each station, step 0.1: U = 2 · 0.1/√12 = 0.058 mm.</summary>
    [Fact]
    public void The_longest_run_of_thin_neighbours_is_found()
    {
        var profile = Profile(
            "10: 11.0 11.0",
            "20: 10.9 10.9",
            "30: 11.0 11.0",
            "40: 10.8 10.8",
            "50: 10.7 10.7",
            "60: 10.9 10.9",
            "70: 11.0 11.0",
            "80: 11.1 11.1",
            "90: 11.2 11.2",
            "100: 11.0 11.0",
            "110: 11.0 11.0"
        );

        Assert.Equal(new StationRun(40, 60, 3, IsThinner: true), profile.LongestRun);
    }

    [Fact]
    public void A_single_thin_station_is_no_run() =>
        Assert.Null(Profile("10: 11.0 11.0", "20: 10.0 10.0", "30: 11.0 11.0", "40: 11.5 11.5", "50: 11.0 11.0").LongestRun);

    [Fact]
    public void Neighbours_on_different_sides_are_no_run() =>
        Assert.Null(Profile("10: 11.0 11.0", "20: 10.0 10.0", "30: 12.0 12.0", "40: 11.0 11.0", "50: 11.0 11.0").LongestRun);

    [Fact]
    public void The_middle_half_is_compared_with_the_outer_quarters()
    {
        var parts = Profile("0: 11.0 11.0", "100: 10.6 10.6", "200: 10.4 10.4", "300: 10.8 10.8", "400: 11.2 11.2").MiddleAgainstEnds!;

        Assert.Equal(10.6, parts.MiddleMm, 1e-12);
        Assert.Equal(11.1, parts.EndsMm, 1e-12);
        Assert.Equal(-0.5, parts.DifferenceMm, 1e-12);
        Assert.Null(Profile("0: 11.0", "400: 11.0").MiddleAgainstEnds);
        Assert.Null(Profile("0: 11.0", "10: 11.0", "400: 11.0").MiddleAgainstEnds);
    }

    [Fact]
    public void Places_are_matched_with_the_first_profile_by_position()
    {
        var first = new DatedProfile(new LocalDate(2025, 5, 14), Stations("50: 11.2 11.2", "150: 11.2 11.0", "250: 11.0 11.0"));
        var change = MeasuredProfile.Of(Stations("150.0: 10.8 10.8", "50: 11.3 11.3", "260: 11.0 11.0"), Eleven, first)!.SinceFirst!;

        Assert.Equal([50m, 150m], change.Stations.Select(s => s.PositionMm));
        Assert.Equal([250m, 260m], change.UnmatchedMm);
        Assert.Equal(150m, change.MostThinned!.PositionMm);
        Assert.Equal(-0.3, change.MostThinned.DifferenceMm, 1e-12);
        Assert.Equal(50m, change.MostThickened!.PositionMm);
        Assert.Equal(0.1, change.MostThickened.DifferenceMm, 1e-12);
    }

    /// <summary>Limits 9.9 to 12.1 mm; two equal readings everywhere, step 0.01: U = 2 · 0.01/√12 = 0.0058 mm.</summary>
    [Theory]
    [InlineData("9.89", true, false)]
    [InlineData("9.90", false, true)]
    [InlineData("9.91", false, false)]
    [InlineData("12.09", false, false)]
    [InlineData("12.10", false, true)]
    [InlineData("12.11", true, false)]
    public void Too_close_to_call_by_the_last_printed_digit(string reading, bool outside, bool close)
    {
        var station = Profile("50: 11.00 11.00", $"150: {reading} {reading}", "250: 11.00 11.00").Stations[1];

        Assert.Equal(outside, station.IsOutside);
        Assert.Equal(close, station.IsTooCloseToCall);
    }

    [Fact]
    public void Without_a_tolerance_nothing_is_outside_or_close()
    {
        var profile = MeasuredProfile.Of(Stations("50: 8.0 8.0", "100: 11.0 11.0"), new MakersLimits { NominalDiameterMm = 11 }, null)!;

        Assert.Null(profile.Band);
        Assert.All(profile.Stations, s => Assert.False(s.IsOutside || s.IsTooCloseToCall));
    }

    private static MeasuredProfile Profile(params string[] stations) => MeasuredProfile.Of(Stations(stations), Eleven, null)!;

    private static List<DiameterStation> Stations(params string[] stations) => [.. stations.Select(Station)];

    private static DiameterStation Station(string text)
    {
        var parts = text.Split(':');
        return new DiameterStation
        {
            PositionMm = parts[0] is "?" ? null : Number(parts[0]),
            ReadingsMm = [.. parts[1].Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(r => (decimal?)Number(r))],
        };
    }

    private static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}

using System.Globalization;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using NodaTime;

namespace ExamDocs.Core.Tests.Sentences;

/// <summary>Every sentence about diameters, letter by letter: an examiner argues with them and copies their numbers.</summary>
public sealed class MeasurementSentenceTests
{
    private const string Practice = "common practice, no source";
    private const string Gum = "JCGM 100:2008";
    private const string Robust = "modified z above 3.5, Iglewicz and Hoaglin 1993";
    private const string Method =
        "Theil-Sen line (Sen 1968; intercept the median of y - slope x) and least squares with a 95 % prediction band";
    private const string Instructions = "Use and care, revision C, page 7";

    private static readonly LocalDate First = new(2025, 5, 1);

    private static readonly MakersLimits Eleven = new()
    {
        NominalDiameterMm = 11.0m,
        DiameterTolerancePercent = 10,
        Source = new()
        {
            Title = "Use and care",
            Revision = "C",
            Page = "7",
        },
    };

    /// <summary>Equal readings at each station, step 0.1: U = 2 × 0.1/√12 = 0.058 mm, printed 0.06.</summary>
    [Fact]
    public void A_rope_inside_its_limits_that_is_the_same_all_along() =>
        Assert.Equal(
            [
                "mean diameters at 3 stations: the smallest 11.00 mm at 0 mm, the largest 11.00 mm at 0 mm, median 11.00 mm; "
                    + "the calliper's step is taken to be 0.1 mm, as the readings were typed | "
                    + Gum,
                "every mean is inside the maker's 9.9 to 12.1 mm | " + Instructions,
                "the middle half of the length measures the same as the two outer quarters | " + Practice,
            ],
            Said(Eleven, null, "0: 11.0 11.0", "200: 11.0 11.0", "400: 11.0 11.0")
        );

    [Fact]
    public void A_rope_without_limits_is_compared_with_itself_only() =>
        Assert.Equal(
            "the maker's nominal diameter or tolerance is not recorded: the rope is compared with itself only, and no limit is set | "
                + Practice,
            Said(null, null, "0: 11.0", "400: 11.0").ElementAt(1)
        );

    [Fact]
    public void Means_outside_are_all_named() =>
        Assert.Equal(
            "outside the maker's 9.9 to 12.1 mm: 9.00 mm at 0 mm, 13.00 mm at a station without a position | " + Instructions,
            Said(Eleven, null, "0: 9.0 9.0", "200: 11.0 11.0", "?: 13.0 13.0").ElementAt(1)
        );

    [Fact]
    public void Means_too_close_to_call_are_named_with_their_uncertainty() =>
        Assert.Equal(
            "too close to the maker's limit to call: 9.90 mm ± 0.06 mm at 0 mm, 12.10 mm ± 0.06 mm at 400 mm | expanded uncertainty, 95 %, "
                + Gum,
            Said(Eleven, null, "0: 9.9 9.9", "200: 11.0 11.0", "400: 12.1 12.1").ElementAt(2)
        );

    [Fact]
    public void What_stands_out_is_named()
    {
        var said = Said(
            Eleven,
            null,
            "50: 10.9 10.9",
            "100: 11.0 11.0",
            "150: 11.1 11.1",
            "200: 11.0 11.0",
            "250: 10.9 10.9",
            "300: 12.6 12.6",
            "350: 9.0 9.0"
        );
        Assert.Contains("standing out from the rest: 12.60 mm at 300 mm, 9.00 mm at 350 mm | " + Robust, said);
    }

    [Theory]
    [InlineData("10.7", "thinner")]
    [InlineData("11.3", "thicker")]
    public void A_run_is_named_with_its_side(string mm, string side) =>
        Assert.Contains(
            $"2 neighbouring stations from 200 to 300 mm are all {side} than the median by more than the uncertainty of their "
                + $"means | {Practice}; uncertainty by {Gum}",
            Said(
                Eleven,
                null,
                "0: 11.0 11.0",
                "100: 11.0 11.0",
                $"200: {mm} {mm}",
                $"300: {mm} {mm}",
                "400: 11.0 11.0",
                "500: 11.0 11.0",
                "600: 11.0 11.0"
            )
        );

    [Fact]
    public void The_place_whose_readings_differ_most_is_named() =>
        Assert.Contains(
            "readings at one place differ by up to 0.3 mm, at 200 mm | " + Practice,
            Said(Eleven, null, "0: 11.0 11.1", "200: 11.0 11.3", "300: 11.0", "400: 11.0 11.2")
        );

    [Theory]
    [InlineData("10.6", "0.40 mm thinner")]
    [InlineData("11.3", "0.30 mm thicker")]
    public void The_middle_against_the_ends(string middle, string difference) =>
        Assert.Contains(
            $"the middle half of the length is {difference} than the two outer quarters, by position alone | {Practice}",
            Said(Eleven, null, "0: 11.0 11.0", $"200: {middle} {middle}", "400: 11.0 11.0")
        );

    [Fact]
    public void What_has_changed_most_each_way_since_the_first() =>
        Assert.Contains(
            "since the first profile recorded, 1 May 2025, it has become at most 0.40 mm thinner at 200 mm and 0.30 mm thicker at 300 mm | "
                + Practice,
            Said(
                Eleven,
                ["0: 11.0", "100: 11.0", "200: 11.0", "300: 11.0", "400: 11.0"],
                "0: 11.0",
                "100: 10.9",
                "200: 10.6",
                "300: 11.3",
                "400: 11.1"
            )
        );

    [Fact]
    public void No_change_since_the_first() =>
        Assert.Contains(
            "no place has changed since the first profile recorded, 1 May 2025 | " + Practice,
            Said(Eleven, ["0: 11.0", "200: 11.0"], "0: 11.0", "200: 11.0")
        );

    [Fact]
    public void No_place_in_common_with_the_first() =>
        Assert.Contains(
            "no place measured 1 May 2025 was measured again: the change since then cannot be told | " + Practice,
            Said(Eleven, ["10: 11.0"], "0: 11.0", "200: 11.0")
        );

    [Fact]
    public void A_profile_without_a_mean_has_no_sentence_and_no_median()
    {
        var profile = MeasuredProfile.Of([new DiameterStation { PositionMm = 50 }], Eleven, null)!;
        Assert.Null(profile.MedianMm);
        Assert.Empty(ProfileSentences.Of(profile));
    }

    /// <summary>0.1 mm in 100 days from 11.0: 0.365 mm a year, and 9.9 mm on day 1100, 5 January 2027.</summary>
    [Theory]
    [InlineData(null, false)]
    [InlineData("2027-01-05", false)]
    [InlineData("2027-01-06", false)]
    [InlineData("2027-01-04", true)]
    public void A_fall_towards_the_limit_and_the_end_of_service_where_that_comes_first(string? end, bool governs)
    {
        var said = Trend(end, (0, 11.0m), (100, 10.9m), (200, 10.8m), (300, 10.7m));
        List<string> expected =
        [
            "over 4 examinations since 1 Jan 2024 the smallest mean falls by 0.37 mm a year, the largest falls by 0.37 mm a "
                + $"year | {Method}",
            "the smallest mean falls by 0.37 mm a year and would reach the maker's 9.9 mm by 5 Jan 2027: proposed time by "
                + $"which it could become a danger, 5 Jan 2027 | {Method}; limit: {Instructions}",
            .. governs
                ? ["that lies after the last day of its service, 4 Jan 2027, which governs | the limits recorded"]
                : Array.Empty<string>(),
            "it is a proposal: it binds only when the examiner enters it among the defects, and it changes no outcome | " + Practice,
        ];
        Assert.Equal(expected, said);
    }

    [Fact]
    public void Growth_towards_the_upper_limit() =>
        Assert.Equal(
            "the largest mean grows by 0.37 mm a year and would reach the maker's 12.1 mm by 5 Jan 2027: proposed time by "
                + $"which it could become a danger, 5 Jan 2027 | {Method}; limit: {Instructions}",
            Trend(null, (0, 11.0m), (100, 11.1m), (200, 11.2m), (300, 11.3m)).ElementAt(1)
        );

    [Fact]
    public void A_level_series_has_no_projected_day() =>
        Assert.Equal(
            [
                $"over 4 examinations since 1 Jan 2024 the smallest mean keeps level, the largest keeps level | {Method}",
                $"neither is heading for the maker's limit | {Method}",
            ],
            Trend(null, (0, 11.0m), (100, 11.0m), (200, 11.0m), (300, 11.0m))
        );

    [Fact]
    public void Without_a_limit_only_the_slope_is_given() =>
        Assert.Single(
            Texts(TrendSentences.Of(DiameterTrend.Of(Profiles((0, 11.0m), (100, 10.9m), (200, 10.8m), (300, 10.7m)), null), null))
        );

    [Fact]
    public void A_limit_within_the_scatter_counts_as_reached() =>
        Assert.Contains(
            "the smallest mean falls by 0.37 mm a year and, with the scatter of the examinations, the maker's 9.9 mm is "
                + "within its reach already: proposed time by which it could become a danger, 27 Oct 2024",
            Trend(null, (0, 10.2m), (100, 10.1m), (200, 10.0m), (300, 9.9m)).ElementAt(1),
            StringComparison.Ordinal
        );

    [Fact]
    public void Without_a_trend_there_is_no_sentence() => Assert.Empty(TrendSentences.Of(null, null));

    [Fact]
    public void Lengths_that_round_to_zero_count_as_zero()
    {
        Assert.True(StationPlace.IsNothing(0.0049) && StationPlace.IsNothing(-0.0049));
        Assert.False(StationPlace.IsNothing(0.0051) || StationPlace.IsNothing(-0.0051));
    }

    private static IEnumerable<string> Said(MakersLimits? limits, string[]? first, params string[] stations) =>
        Texts(
            ProfileSentences.Of(
                MeasuredProfile.Of(Stations(stations), limits, first is null ? null : new DatedProfile(First, Stations(first)))!
            )
        );

    private static IEnumerable<string> Trend(string? end, params (int Day, decimal Mm)[] points) =>
        Texts(
            TrendSentences.Of(
                DiameterTrend.Of(Profiles(points), Eleven),
                end is null ? null : NodaTime.Text.LocalDatePattern.Iso.Parse(end).Value
            )
        );

    private static IEnumerable<string> Texts(IEnumerable<MeasurementSentence> sentences) => sentences.Select(s => $"{s.Text} | {s.Source}");

    private static IEnumerable<DatedProfile> Profiles(params (int Day, decimal Mm)[] points) =>
        points.Select(p => new DatedProfile(
            new LocalDate(2024, 1, 1).PlusDays(p.Day),
            [new DiameterStation { PositionMm = 50, ReadingsMm = [p.Mm, p.Mm] }]
        ));

    private static List<DiameterStation> Stations(string[] stations) =>
        [
            .. stations
                .Select(text => text.Split(':'))
                .Select(parts => new DiameterStation
                {
                    PositionMm = parts[0] is "?" ? null : decimal.Parse(parts[0], CultureInfo.InvariantCulture),
                    ReadingsMm =
                    [
                        .. parts[1]
                            .Split(' ', StringSplitOptions.RemoveEmptyEntries)
                            .Select(r => (decimal?)decimal.Parse(r, CultureInfo.InvariantCulture)),
                    ],
                }),
        ];
}

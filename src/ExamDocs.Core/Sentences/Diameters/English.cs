using System.Globalization;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Sentences.Basics;
using NodaTime;

namespace ExamDocs.Core.Sentences.Diameters;

/// <inheritdoc />
/// <param name="words">Of the same language.</param>
internal sealed class English(BasicWords words) : DiameterSentences
{
    public override string Measured(int stations, ProfileStation smallest, ProfileStation largest, double medianMm, decimal stepMm) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"mean diameters at {stations} stations: the smallest {Mean(smallest)}, the largest {Mean(largest)}, median "
                + $"{words.Millimetres(medianMm)}; the calliper's step is taken to be {words.Number(stepMm)} mm, as the readings were typed"
        );

    public override string ComparedWithItself =>
        "the maker's nominal diameter or tolerance is not recorded: the rope is compared with itself only, and no limit is set";

    public override string EveryMeanInside(DiameterBand band) => $"every mean is inside the maker's {Range(band)}";

    public override string MeansOutside(DiameterBand band, IReadOnlyList<ProfileStation> outside) =>
        $"outside the maker's {Range(band)}: {string.Join(", ", outside.Select(Mean))}";

    public override string TooCloseToCall(IReadOnlyList<ProfileStation> close) =>
        $"too close to the maker's limit to call: {string.Join(", ", close.Select(MeanAndUncertainty))}";

    public override string StandingOut(IReadOnlyList<ProfileStation> outlying) =>
        $"standing out from the rest: {string.Join(", ", outlying.Select(Mean))}";

    public override string NeighboursDiffer(StationRun run) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{run.Stations} neighbouring stations from {words.Number(run.FromMm)} to {words.Number(run.ToMm)} mm are all "
                + $"{(run.IsThinner ? "thinner" : "thicker")} than the median by more than the uncertainty of their means"
        );

    public override string ReadingsDiffer(decimal byMm, decimal? positionMm) =>
        $"readings at one place differ by up to {words.Number(byMm)} mm, {words.Place(positionMm)}";

    public override string MiddleIsAsEnds => "the middle half of the length measures the same as the two outer quarters";

    public override string MiddleDiffers(double byMm) =>
        $"the middle half of the length is {Change(byMm)} than the two outer quarters, by position alone";

    public override string NothingMeasuredAgain(LocalDate first) =>
        $"no place measured {words.Day(first)} was measured again: the change since then cannot be told";

    public override string NothingHasChanged(LocalDate first) =>
        $"no place has changed since the first profile recorded, {words.Day(first)}";

    public override string HasChanged(LocalDate first, IReadOnlyList<StationChange> most) =>
        $"since the first profile recorded, {words.Day(first)}, it has become at most "
        + $"{string.Join(" and ", most.Select(s => $"{Change(s.DifferenceMm)} at {words.Number(s.PositionMm)} mm"))}";

    public override string Trend(DiameterTrend trend) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"over {trend.Smallest.Points.Count} examinations since {words.Day(trend.Smallest.Points[0].On)} the smallest mean "
                + $"{Slope(trend.Smallest)}, the largest {Slope(trend.Largest)}"
        );

    public override string Projected(TrendSeries series)
    {
        var limit = $"the maker's {words.Number(series.LimitMm!.Value)} mm";
        var how = series.IsReachedNow
            ? $"and, with the scatter of the examinations, {limit} is within its reach already"
            : $"and would reach {limit} by {words.Day(series.Reaches!.Value)}";
        return $"the {(series.IsSmallest ? "smallest" : "largest")} mean {Slope(series)} {how}: proposed time by which it could "
            + $"become a danger, {words.Day(series.Reaches!.Value)}";
    }

    public override string AfterService(LocalDate end) => $"that lies after the last day of its service, {words.Day(end)}, which governs";

    public override string ItIsAProposal =>
        "it is a proposal: it binds only when the examiner enters it among the defects, and it changes no outcome";

    public override string NeitherApproaches => "neither is heading for the maker's limit";

    private string Mean(ProfileStation station) => $"{words.Millimetres(station.MeanMm!.Value)} {words.Place(station.PositionMm)}";

    private string MeanAndUncertainty(ProfileStation station) =>
        $"{words.Millimetres(station.MeanMm!.Value)} {words.Uncertainty(station.Uncertainty!)} {words.Place(station.PositionMm)}";

    private string Range(DiameterBand band) => $"{words.Number(band.Least)} to {words.Number(band.Most)} mm";

    private string Change(double byMm) => $"{words.Millimetres(Math.Abs(byMm))} {(byMm < 0 ? "thinner" : "thicker")}";

    private static string Slope(TrendSeries series) =>
        StationPlace.IsNothing(series.MmPerYear)
            ? "keeps level"
            : string.Create(
                CultureInfo.InvariantCulture,
                $"{(series.MmPerYear < 0 ? "falls" : "grows")} by {Math.Abs(series.MmPerYear):0.00} mm a year"
            );
}

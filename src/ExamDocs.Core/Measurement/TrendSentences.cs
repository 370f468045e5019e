using System.Globalization;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Service;
using NodaTime;

namespace ExamDocs.Core.Measurement;

/// <summary>Puts a trend into the sentences that an examiner argues with.</summary>
internal static class TrendSentences
{
    private const string Method = "Theil-Sen line (Sen 1968; intercept the median of y - slope x) and least squares with a 95 % prediction band";

    public static IEnumerable<MeasurementSentence> Of(DiameterTrend? trend, LocalDate? endOfService)
    {
        if (trend is null)
            yield break;
        yield return new(string.Create(CultureInfo.InvariantCulture,
            $"over {trend.Smallest.Points.Count} examinations since {Say.Day(trend.Smallest.Points[0].On)} the smallest mean {Change(trend.Smallest)}, the largest {Change(trend.Largest)}"), Method);
        if (trend is { Governing: { } governing, Limits: { } limits })
        {
            yield return new(Projected(governing), $"{Method}; limit: {LimitsSourceText.Of(limits)}");
            if (endOfService < governing.Reaches)
                yield return new($"that lies after the last day of its service, {Say.Day(endOfService.Value)}, which governs", "the limits recorded");
            yield return new("it is a proposal: it binds only when the examiner enters it among the defects, and it changes no outcome", "common practice, no source");
        }
        else if (trend.Smallest.LimitMm is not null)
            yield return new("neither is heading for the maker's limit", Method);
    }

    /// <summary>The proposal in words, complete enough for a finding.</summary>
    public static string Projected(TrendSeries series)
    {
        var limit = $"the maker's {Say.Number(series.LimitMm!.Value)} mm";
        var how = series.IsReachedNow
            ? $"and, with the scatter of the examinations, {limit} is within its reach already"
            : $"and would reach {limit} by {Say.Day(series.Reaches!.Value)}";
        return $"the {Name(series)} mean {Change(series)} {how}: proposed time by which it could become a danger, {Say.Day(series.Reaches!.Value)}";
    }

    private static string Change(TrendSeries series)
    {
        var perYear = series.MmPerYear;
        if (StationPlace.IsNothing(perYear))
            return "keeps level";
        return string.Create(CultureInfo.InvariantCulture, $"{(perYear < 0 ? "falls" : "grows")} by {Math.Abs(perYear):0.00} mm a year");
    }

    private static string Name(TrendSeries series) => series.IsSmallest ? "smallest" : "largest";
}

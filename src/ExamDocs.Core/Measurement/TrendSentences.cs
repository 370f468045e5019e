using System.Globalization;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Service;

namespace ExamDocs.Core.Measurement;

/// <summary>Puts a trend into the sentences that an examiner argues with.</summary>
internal static class TrendSentences
{
    private const double DaysOfYear = 365.25;
    private const string Method = "Theil-Sen line (Sen 1968; intercept the median of y - slope x) and least squares with a 95 % prediction band";

    public static IEnumerable<MeasurementSentence> Of(DiameterTrend? trend)
    {
        if (trend is null)
            yield break;
        yield return new(string.Create(CultureInfo.InvariantCulture,
            $"over {trend.Smallest.Points.Count} examinations since {Say.Day(trend.Smallest.Points[0].On)} the smallest mean {Change(trend.Smallest)}, the largest {Change(trend.Largest)}"), Method);
        if (trend is { Governing: { } governing, Limits: { } limits })
        {
            yield return new(Projected(governing), $"{Method}; limit: {LimitsSourceText.Of(limits)}");
            yield return new("it is a proposal: it binds only when the examiner enters it among the defects, and it changes no outcome", "common practice, no source");
        }
        else if (trend.Smallest.LimitMm is not null)
            yield return new("neither is heading for the maker's limit", Method);
    }

    /// <summary>The proposal in words, complete enough for a finding.</summary>
    public static string Projected(TrendSeries series) => string.Create(CultureInfo.InvariantCulture,
        $"the {Name(series)} mean {Change(series)} and would reach the maker's {Say.Number(series.LimitMm!.Value)} mm by {Say.Day(series.Reaches!.Value)}: proposed time by which it could become a danger");

    private static string Change(TrendSeries series)
    {
        var perYear = series.Line.Slope * DaysOfYear;
        if (Math.Abs(perYear) < 0.005)
            return "keeps level";
        return $"{(perYear < 0 ? "falls" : "grows")} by {StationPlace.Mm(Math.Abs(perYear))} a year";
    }

    private static string Name(TrendSeries series) => series.IsSmallest ? "smallest" : "largest";
}

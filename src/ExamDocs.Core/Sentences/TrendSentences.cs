using ExamDocs.Core.Measurement;
using NodaTime;

namespace ExamDocs.Core.Sentences;

/// <summary>Puts a trend into sentences for the argument for service.</summary>
internal static class TrendSentences
{
    private const string Method =
        "Theil-Sen line (Sen 1968; intercept the median of y - slope x) and least squares with a 95 % prediction band";

    public static IEnumerable<MeasurementSentence> Of(DiameterTrend? trend, LocalDate? endOfService)
    {
        if (trend is null)
            yield break;
        yield return new(w => w.Diameters.Trend(trend), Method);
        if (trend is { Governing: { } governing, Limits: { } limits })
        {
            yield return new(w => w.Diameters.Projected(governing), $"{Method}; limit: {LimitsSourceText.Of(limits)}");
            if (endOfService < governing.Reaches)
                yield return new(w => w.Diameters.AfterService(endOfService.Value), "the limits recorded");
            yield return new(w => w.Diameters.ItIsAProposal, "common practice, no source");
        }
        else if (trend.Smallest.LimitMm is not null)
            yield return new(w => w.Diameters.NeitherApproaches, Method);
    }

    /// <summary>The proposal in words, complete enough for a finding.</summary>
    public static string Projected(TrendSeries series) => SentenceBook.English.Diameters.Projected(series);
}

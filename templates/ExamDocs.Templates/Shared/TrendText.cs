using ExamDocs.Core.Determination;
using ExamDocs.Core.Measurement;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Diameters;
using ExamDocs.Templates.Shared.Wording.Items;

namespace ExamDocs.Templates.Shared;

/// <summary>The text under the plot of a trend.</summary>
public static class TrendText
{
    /// <summary>What the plot shows, and where its limits come from.</summary>
    public static string Caption(DiameterTrend trend)
    {
        var source = trend.Limits?.Source;
        return trend.Smallest.LimitMm is { } least && trend.Largest.LimitMm is { } most
            ? DiameterPhrases.Current.TrendLimits(
                Printed.Millimetres(least),
                Printed.Millimetres(most),
                ItemPhrases.Current.Document(source?.Title, source?.Revision, source?.Page)
            )
            : DiameterPhrases.Current.TrendWithoutLimits;
    }

    /// <summary>The proposal with how it came about, or that there is none; empty where there is no trend.</summary>
    public static string Proposal(DeterminedItem item) =>
        item.Trend switch
        {
            null => "",
            { Governing: { LimitMm: { } limit } series } => Proposal(series, limit)
                + (item.EndOfService < series.Reaches ? DiameterPhrases.Current.AfterService(item.EndOfService) : ""),
            { Smallest.LimitMm: null } => DiameterPhrases.Current.NothingProjected,
            _ => DiameterPhrases.Current.NoApproach,
        };

    private static string Proposal(TrendSeries series, decimal limit)
    {
        var perYear = (decimal)Math.Round(Math.Abs(series.MmPerYear), 2);
        return DiameterPhrases.Current.Proposal(
            series.Reaches,
            series.IsSmallest,
            Printed.Millimetres(perYear),
            Printed.Millimetres(limit),
            series.ByBand,
            series.ByLine
        );
    }
}

using System.Globalization;
using ExamDocs.Core.Measurement;

namespace ExamDocs.Core.Sentences;

/// <summary>How a place along the rope and a reckoned length are written in reasons, findings and sentences.</summary>
internal static class StationPlace
{
    /// <summary>For example: at 180 mm.</summary>
    public static string Of(decimal? positionMm) => positionMm is { } mm ? $"at {Say.Number(mm)} mm" : "at a station without a position";

    /// <summary>Nothing to the hundredth of a millimetre, which no calliper shows.</summary>
    public static bool IsNothing(double mm) => Math.Round(mm, 2, MidpointRounding.AwayFromZero) == 0;

    /// <summary>To a thousandth of a millimetre at most, with the unit, so that a mean never looks rounder than it is.</summary>
    public static string Mm(double mm) => string.Create(CultureInfo.InvariantCulture, $"{mm:0.00#} mm");

    /// <summary>Rounded up to a hundredth of a millimetre, with its sign and the unit: never smaller than it is.</summary>
    public static string Uncertainty(MeanUncertainty uncertainty) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"± {Math.Round(uncertainty.ExpandedMm, 2, MidpointRounding.ToPositiveInfinity):0.00} mm"
        );
}

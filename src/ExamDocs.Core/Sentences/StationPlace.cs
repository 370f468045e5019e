using System.Globalization;
using ExamDocs.Core.Measurement;

namespace ExamDocs.Core.Sentences;

/// <summary>Writes places along the rope and calculated lengths for reasons, findings and sentences.</summary>
internal static class StationPlace
{
    /// <summary>For example: at 180 mm.</summary>
    public static string Of(decimal? positionMm) => positionMm is { } mm ? $"at {Say.Number(mm)} mm" : "at a station without a position";

    /// <summary>True where a length rounds to zero hundredths of a millimetre.</summary>
    public static bool IsNothing(double mm) => Math.Round(mm, 2, MidpointRounding.AwayFromZero) == 0;

    /// <summary>With two or three decimals and the unit: a mean must not look rounder than it is.</summary>
    public static string Mm(double mm) => string.Create(CultureInfo.InvariantCulture, $"{mm:0.00#} mm");

    /// <summary>With ± and the unit, rounded up to a hundredth of a millimetre: it must not look smaller than it is.</summary>
    public static string Uncertainty(MeanUncertainty uncertainty) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"± {Math.Round(uncertainty.ExpandedMm, 2, MidpointRounding.ToPositiveInfinity):0.00} mm"
        );
}

using ExamDocs.Core.Records;

namespace ExamDocs.Core.Measurement;

/// <summary>One station of a profile with what was calculated from it; lengths in millimetres.</summary>
public sealed record ProfileStation
{
    /// <summary>As recorded.</summary>
    public required DiameterStation Recorded { get; init; }

    /// <summary>Its place among the stations of the examination, from 0.</summary>
    public required int Index { get; init; }

    /// <summary>Null where it has no reading that can be read.</summary>
    public StationMean? Mean { get; init; }

    /// <summary>Largest reading minus smallest; null with fewer than two readings.</summary>
    public decimal? OvalityMm { get; init; }

    /// <summary>Null where there is no mean.</summary>
    public MeanUncertainty? Uncertainty { get; init; }

    /// <summary>Modified z of its mean among the means of the profile; null with fewer than three means.</summary>
    public double? ModifiedZ { get; init; }

    /// <summary>True where it is thinner or thicker than the rest by more than the limit for the modified z.</summary>
    public bool StandsOut { get; init; }

    /// <summary>True where the mean lies outside the maker's tolerance, calculated without rounding; false without a tolerance.</summary>
    public bool IsOutside { get; init; }

    /// <summary>True where the mean is inside the maker's tolerance, but its uncertainty reaches the limit or beyond.</summary>
    public bool IsTooCloseToCall { get; init; }

    public decimal? PositionMm => Recorded.PositionMm;

    /// <summary>The mean as a number; null where there is none.</summary>
    public double? MeanMm => Mean is { } mean ? mean.Millimetres : null;
}

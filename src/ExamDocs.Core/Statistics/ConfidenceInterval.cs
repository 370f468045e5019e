using MathNet.Numerics.Distributions;

namespace ExamDocs.Core.Statistics;

/// <summary>Where a true value lies with 95 % confidence, both ends inclusive.</summary>
public sealed record ConfidenceInterval(double Low, double High)
{
    /// <summary>The point of the standard normal distribution above which 2.5 % lie.</summary>
    internal static double Z { get; } = Normal.InvCDF(0, 1, 0.975);

    public bool Contains(double value) => Low <= value && value <= High;
}

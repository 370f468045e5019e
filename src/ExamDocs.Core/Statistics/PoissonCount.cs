using MathNet.Numerics.Distributions;

namespace ExamDocs.Core.Statistics;

/// <summary>A count of independent events, with the exact 95 % interval of the expected count (Garwood 1936).</summary>
public static class PoissonCount
{
    private const double Tail = 0.025;

    /// <exception cref="ArgumentOutOfRangeException">The count is negative.</exception>
    public static ConfidenceInterval Garwood(int count)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        return new ConfidenceInterval(count == 0 ? 0 : Gamma.InvCDF(count, 1, Tail), Gamma.InvCDF(count + 1, 1, 1 - Tail));
    }
}

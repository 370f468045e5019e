namespace ExamDocs.Core.Statistics;

/// <summary>So many of so many, with Wilson's 95 % interval without continuity correction (Wilson 1927; Newcombe 1998).</summary>
public sealed class Proportion
{
    /// <param name="count">How many have the property, 0 to <paramref name="total"/>.</param>
    /// <param name="total">How many there are, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are none, or more have the property than there are.</exception>
    public Proportion(int count, int total)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(total, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, total);
        (Count, Total, Value) = (count, total, (double)count / total);
        var z2 = ConfidenceInterval.Z * ConfidenceInterval.Z;
        var middle = count + (z2 / 2);
        var half = ConfidenceInterval.Z * Math.Sqrt((z2 / 4) + (count * (1 - Value)));
        // At the ends the exact bound is 0 or 1; the formula misses it by rounding.
        Wilson = new ConfidenceInterval(
            count == 0 ? 0 : (middle - half) / (total + z2),
            count == total ? 1 : (middle + half) / (total + z2)
        );
    }

    public int Count { get; }

    public int Total { get; }

    /// <summary>From 0 to 1.</summary>
    public double Value { get; }

    public ConfidenceInterval Wilson { get; }
}

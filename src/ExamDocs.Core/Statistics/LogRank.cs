using MathNet.Numerics.Distributions;

namespace ExamDocs.Core.Statistics;

/// <summary>Whether the events of two groups came at ages that differ by more than chance explains (Mantel 1966).</summary>
public sealed class LogRank
{
    private LogRank(int observed, double expected, int observedOther, double expectedOther, double variance)
    {
        (Observed, Expected, ObservedOther, ExpectedOther) = (observed, expected, observedOther, expectedOther);
        Statistic = (observed - expected) * (observed - expected) / variance;
        Probability = 1 - ChiSquared.CDF(1, Statistic);
    }

    /// <summary>Events of the first group.</summary>
    public int Observed { get; }

    /// <summary>Events that the first group would have if both were alike.</summary>
    public double Expected { get; }

    public int ObservedOther { get; }

    public double ExpectedOther { get; }

    /// <summary>Chi-squared with one degree of freedom.</summary>
    public double Statistic { get; }

    /// <summary>How often groups that are alike would differ as much or more, 0 to 1.</summary>
    public double Probability { get; }

    /// <returns>Null where the groups cannot be compared: at no event were things of both at risk.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A group is empty.</exception>
    public static LogRank? Of(IReadOnlyList<Lifetime> one, IReadOnlyList<Lifetime> other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        if (one.Count == 0 || other.Count == 0)
            throw new ArgumentOutOfRangeException(nameof(one), "a group is empty");
        var (observed, expected, all, variance) = (0, 0.0, 0, 0.0);
        foreach (var age in one.Concat(other).Where(l => l.IsEvent).Select(l => l.Time).Distinct())
        {
            var (n1, n2) = ((double)one.Count(l => l.IsAtRiskAt(age)), (double)other.Count(l => l.IsAtRiskAt(age)));
            // Things watched only from that age on are not at risk there, and their events do not count.
            var (d1, d2) = (Events(one, age), Events(other, age));
            var (n, d) = (n1 + n2, d1 + d2);
            if (n == 0)
                continue;
            (observed, all, expected) = (observed + d1, all + d, expected + (d * n1 / n));
            if (n > 1)
                variance += d * (n1 / n) * (n2 / n) * (n - d) / (n - 1);
        }
        return variance > 0 ? new LogRank(observed, expected, all - observed, all - expected, variance) : null;
    }

    private static int Events(IReadOnlyList<Lifetime> group, double age) =>
        group.Count(l => l.IsEvent && l.Time == age && l.IsAtRiskAt(age));
}

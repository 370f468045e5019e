using MathNet.Numerics.RootFinding;

namespace ExamDocs.Core.Measurement;

/// <summary>
/// When a value that falls or rises reaches a limit, in days from the day that x counts from. Never before the day
/// looked from; null where it does not move towards the limit or does not reach it by the last day given.
/// </summary>
/// <param name="Limit">In the unit of y.</param>
/// <param name="Falls">It is reached from above, falling; else from below, rising.</param>
/// <param name="From">The day looked from: no answer comes before it.</param>
/// <param name="To">The last day of which anything is said.</param>
internal readonly record struct Approach(double Limit, bool Falls, double From, double To)
{
    /// <summary>A millionth of a day is noise of the arithmetic.</summary>
    private const double Noise = 1e-6;

    /// <summary>A slope this small, in millimetres a day, is noise of the arithmetic: 1 mm in 27 million years.</summary>
    private const double Level = 1e-10;

    /// <summary>The whole day on which the line reaches the limit; part days are cut off.</summary>
    public int? DayOf(TheilSen line) => WholeDay(Cross(line.Intercept, line.Slope));

    /// <summary>The whole day on which the nearer bound of the prediction band reaches the limit; part days are cut off.</summary>
    public int? DayOf(LeastSquares fit) => WholeDay(CrossBand(fit));

    private double? Cross(double intercept, double slope)
    {
        if (!MovesTowards(slope))
            return null;
        var at = Math.Max(From, (Limit - intercept) / slope);
        return at <= To ? at : null;
    }

    private double? CrossBand(LeastSquares fit)
    {
        if (!MovesTowards(fit.Slope))
            return null;
        if (Room(fit, From) <= 0)
            return From;
        // The bound gets there before the line itself does.
        var last = Math.Min(To, Math.Max(From, (Limit - fit.Intercept) / fit.Slope));
        if (Room(fit, last) >= 0)
            return last < To ? last : null;
        var approach = this;
        return Brent.FindRoot(x => approach.Room(fit, x), From, last, 1e-9, 200);
    }

    /// <summary>What is left between the nearer bound and the limit.</summary>
    private double Room(LeastSquares fit, double x) => (Falls ? fit.At(x) - Limit : Limit - fit.At(x)) - fit.HalfBandAt(x);

    private bool MovesTowards(double slope) => Falls ? slope < -Level : slope > Level;

    private static int? WholeDay(double? x) => x is { } at ? (int)Math.Floor(at + Noise) : null;
}

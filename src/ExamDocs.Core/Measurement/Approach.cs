using MathNet.Numerics.RootFinding;

namespace ExamDocs.Core.Measurement;

/// <summary>
/// Finds when a falling or rising value reaches a limit, in days from x = 0. The answer is never before <c>From</c>. It is null where
/// the value does not move towards the limit, or does not reach it by <c>To</c>.
/// </summary>
/// <param name="Limit">In the unit of y.</param>
/// <param name="Falls">True where the value falls to the limit; false where it rises to it.</param>
/// <param name="From">The first day that can be an answer, inclusive.</param>
/// <param name="To">The last day that can be an answer, inclusive.</param>
internal readonly record struct Approach(double Limit, bool Falls, double From, double To)
{
    /// <summary>A millionth of a day is rounding: without it a crossing on a whole day could be cut to the day before.</summary>
    private const double Noise = 1e-6;

    /// <summary>A slope this small, in millimetres a day, is rounding: 1 mm in 27 million years. A level line has no crossing.</summary>
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
        // The bound reaches the limit before the line itself does, so the root lies between From and the line's crossing.
        var last = Math.Min(To, Math.Max(From, (Limit - fit.Intercept) / fit.Slope));
        if (Room(fit, last) >= 0)
            return last < To ? last : null;
        var approach = this;
        return Brent.FindRoot(x => approach.Room(fit, x), From, last, 1e-9, 200);
    }

    /// <summary>Distance from the nearer bound of the band to the limit; negative where the bound is past it.</summary>
    private double Room(LeastSquares fit, double x) => (Falls ? fit.At(x) - Limit : Limit - fit.At(x)) - fit.HalfBandAt(x);

    private bool MovesTowards(double slope) => Falls ? slope < -Level : slope > Level;

    private static int? WholeDay(double? x) => x is { } at ? (int)Math.Floor(at + Noise) : null;
}

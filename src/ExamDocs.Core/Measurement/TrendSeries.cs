using NodaTime;

namespace ExamDocs.Core.Measurement;

/// <summary>A value on a day.</summary>
/// <param name="On">The day of the examination.</param>
/// <param name="Mm">Millimetres.</param>
public sealed record TrendPoint(LocalDate On, double Mm);

/// <summary>The smallest, or the largest, station mean over the examinations of an item, and where it is heading.</summary>
public sealed class TrendSeries
{
    private static readonly LocalDate LastDay = LocalDate.MaxIsoValue;

    private TrendSeries(IReadOnlyList<TrendPoint> points, TheilSen line, LeastSquares fit, bool isSmallest, decimal? limitMm)
    {
        (Points, Line, Fit, IsSmallest, LimitMm) = (points, line, fit, isSmallest, limitMm);
        if (limitMm is not { } limit)
            return;
        var approach = new Approach((double)limit, isSmallest, DaysTo(points[^1].On), DaysTo(LastDay));
        ByLine = Day(approach.DayOf(line));
        ByBand = Day(approach.DayOf(fit));
    }

    /// <summary>One for each day, oldest first.</summary>
    public IReadOnlyList<TrendPoint> Points { get; }

    /// <summary>The Theil-Sen line; x is in days from the first point.</summary>
    public TheilSen Line { get; }

    /// <summary>Slope of the Theil-Sen line, millimetres a year of 365.25 days; negative where it falls.</summary>
    public double MmPerYear => Line.Slope * 365.25;

    /// <summary>The line of least squares; x is in days from the first point.</summary>
    public LeastSquares Fit { get; }

    /// <summary>True for the smallest means, compared with the lower limit; false for the largest, compared with the upper.</summary>
    public bool IsSmallest { get; }

    /// <summary>The maker's limit that it is compared with, millimetres; null where none is recorded.</summary>
    public decimal? LimitMm { get; }

    /// <summary>The day on which the Theil-Sen line reaches the limit; null where it does not approach it.</summary>
    public LocalDate? ByLine { get; }

    /// <summary>
    /// The day on which the nearer bound of the 95 % prediction band reaches the limit; null where it does not approach it.
    /// </summary>
    public LocalDate? ByBand { get; }

    /// <summary>The earlier of the two days, which is on the safe side; null where there is neither.</summary>
    public LocalDate? Reaches => ByLine is { } line && ByBand is { } band ? LocalDate.Min(line, band) : ByLine ?? ByBand;

    /// <summary>True where the bound or the line was at the limit on the day of the last examination.</summary>
    public bool IsReachedNow => Reaches == Points[^1].On;

    /// <summary>Days from the first point.</summary>
    public int DaysTo(LocalDate day) => Period.DaysBetween(Points[0].On, day);

    /// <summary>Null where the points lie on fewer than three days.</summary>
    internal static TrendSeries? Of(IReadOnlyList<TrendPoint> points, bool isSmallest, decimal? limitMm)
    {
        if (points.Count == 0)
            return null;
        double[] x = [.. points.Select(p => (double)Period.DaysBetween(points[0].On, p.On))];
        double[] y = [.. points.Select(p => p.Mm)];
        return TheilSen.Through(x, y) is { } line && LeastSquares.Through(x, y) is { } fit
            ? new TrendSeries(points, line, fit, isSmallest, limitMm)
            : null;
    }

    private LocalDate? Day(int? days) => days is { } d ? Points[0].On.PlusDays(d) : null;
}

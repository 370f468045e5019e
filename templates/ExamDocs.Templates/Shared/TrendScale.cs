using System.Globalization;
using ExamDocs.Core.Measurement;
using NodaTime;

namespace ExamDocs.Templates.Shared;

/// <summary>Turns days and diameters of a trend into places on its plot; plot units are tenths of a millimetre.</summary>
public sealed class TrendScale
{
    public const double Left = 130;
    public const double Right = 1150;
    public const double Top = 20;
    public const double Bottom = 270;
    public const double Width = 1180;
    public const double Height = 330;

    /// <summary>The plot reaches ahead at most this many times as far as it reaches back: further ahead, a line says nothing.</summary>
    private const int Ahead = 3;

    private const int Steps = 40;

    private readonly double _low;
    private readonly double _high;

    /// <param name="trend">What is plotted.</param>
    public TrendScale(DiameterTrend trend)
    {
        Trend = trend;
        Drawn = trend.Governing ?? trend.Smallest;
        var span = Drawn.DaysTo(Drawn.Points[^1].On);
        var reached = trend.Proposed is { } proposed ? Drawn.DaysTo(proposed) : span;
        LastDay = Math.Max(span + (span / 10), Math.Min(reached + (span / 5), span * (1 + Ahead)));
        ShowsProposed = trend.Proposed is not null && reached <= LastDay;
        double[] values = [.. trend.Smallest.Points.Concat(trend.Largest.Points).Select(p => p.Mm), .. Limits.Select(l => (double)l)];
        var room = Math.Max((values.Max() - values.Min()) * 0.12, 0.1);
        (_low, _high) = (values.Min() - room, values.Max() + room);
    }

    public DiameterTrend Trend { get; }

    /// <summary>The series whose lines are drawn: the one that reaches its limit first, else the smallest means.</summary>
    public TrendSeries Drawn { get; }

    /// <summary>The last day of the plot, counted from the first point.</summary>
    public int LastDay { get; }

    /// <summary>True where the day proposed lies within the plot.</summary>
    public bool ShowsProposed { get; }

    public IReadOnlyList<decimal> Limits => [.. new[] { Trend.Smallest.LimitMm, Trend.Largest.LimitMm }.OfType<decimal>()];

    /// <summary>The prediction band as an outline; cut off at the edges of the plot.</summary>
    public string Band =>
        Outline(
            Days.Select(d => (d, Drawn.Fit.At(d) + Drawn.Fit.HalfBandAt(d)))
                .Concat(Days.Reverse().Select(d => (d, Drawn.Fit.At(d) - Drawn.Fit.HalfBandAt(d))))
        );

    public string FitLine => Outline(Days.Select(d => (d, Drawn.Fit.At(d))));

    public string RobustLine => Outline(Days.Select(d => (d, Drawn.Line.At(d))));

    public double X(LocalDate day) => X((double)Drawn.DaysTo(day));

    public double Y(double mm) => Bottom - ((Math.Clamp(mm, _low, _high) - _low) / (_high - _low) * (Bottom - Top));

    /// <summary>A place as it stands in SVG.</summary>
    public static string Place(double value) => DiameterScale.Place(value);

    private IEnumerable<double> Days => Enumerable.Range(0, Steps + 1).Select(i => LastDay * (double)i / Steps);

    private double X(double day) => Left + 30 + (day / Math.Max(1, LastDay) * (Right - Left - 60));

    private string Outline(IEnumerable<(double Day, double Mm)> points) =>
        string.Join(' ', points.Select(p => string.Create(CultureInfo.InvariantCulture, $"{Place(X(p.Day))},{Place(Y(p.Mm))}")));
}

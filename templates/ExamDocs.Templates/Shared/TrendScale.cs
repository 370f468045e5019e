using ExamDocs.Core.Measurement;
using NodaTime;

namespace ExamDocs.Templates.Shared;

/// <summary>Turns days and diameters of a trend into places on its plot; plot units are tenths of a millimetre.</summary>
public sealed class TrendScale
{
    public const int WidthMm = 118;
    public const int HeightMm = 33;
    public const double Width = WidthMm * PlotLengths.PerMm;
    public const double Height = HeightMm * PlotLengths.PerMm;

    public const double Left = PlotLengths.AxisFromLeft;
    public const double Right = Width - PlotLengths.AxisFromRight;
    public const double Top = PlotLengths.AxisFromTop;
    public const double Bottom = 270;

    /// <summary>From the upper edge to the line that the days below the axis stand on, and to that of the day proposed.</summary>
    public const double DayLine = 300;
    public const double ProposedDayLine = 324;

    /// <summary>Days closer than this would run into each other.</summary>
    public const double DayWidth = 150;

    /// <summary>From the middle of a figure beside the axis down to the line that it stands on.</summary>
    public const double HalfFigure = 8;

    /// <summary>Half of the square of a largest mean.</summary>
    public const double SquareHalf = 9;

    /// <summary>Radius of the dot of a smallest mean.</summary>
    public const double DotRadius = 10;

    /// <summary>Half of the diamond of the day proposed, and the width of the line down to it.</summary>
    public const double DiamondHalf = 16;
    public const double ProposedWidth = 4;

    /// <summary>A limit's line and the gap after it.</summary>
    public const string LimitDash = "4 3";

    /// <summary>The plot reaches ahead at most this many times as far as it reaches back: further ahead, a line says nothing.</summary>
    private const int Ahead = 3;

    /// <summary>Beyond the last examination a tenth of the time looked back on is drawn; beyond the day proposed a fifth.</summary>
    private const int PartBeyondLast = 10;
    private const int PartBeyondProposed = 5;

    /// <summary>A curve is drawn as so many straight lines.</summary>
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
        LastDay = Math.Max(span + (span / PartBeyondLast), Math.Min(reached + (span / PartBeyondProposed), span * (1 + Ahead)));
        ShowsProposed = trend.Proposed is not null && reached <= LastDay;
        (_low, _high) = PlotLengths.Range([
            .. trend.Smallest.Points.Concat(trend.Largest.Points).Select(p => p.Mm),
            .. Limits.Select(l => (double)l),
        ]);
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

    private IEnumerable<double> Days => Enumerable.Range(0, Steps + 1).Select(i => LastDay * (double)i / Steps);

    private double X(double day) => Left + PlotLengths.Inset + (day / Math.Max(1, LastDay) * (Right - Left - (2 * PlotLengths.Inset)));

    private string Outline(IEnumerable<(double Day, double Mm)> points) =>
        string.Join(' ', points.Select(p => $"{PlotMarks.Place(X(p.Day))},{PlotMarks.Place(Y(p.Mm))}"));
}

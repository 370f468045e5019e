namespace ExamDocs.Templates.Shared;

/// <summary>Turns positions and diameters of a profile into places on the plot; plot units are tenths of a millimetre.</summary>
public sealed class DiameterScale
{
    public const int HeightMm = 30;
    public const double Height = HeightMm * PlotLengths.PerMm;

    public const double Left = PlotLengths.AxisFromLeft;
    public const double Top = PlotLengths.AxisFromTop;
    public const double Bottom = 250;

    /// <summary>From the upper edge to the line that the positions below the axis stand on.</summary>
    public const double PositionLine = 288;

    /// <summary>Positions closer than this would run into each other.</summary>
    public const double PositionWidth = 85;

    /// <summary>From the middle of a figure beside the axis down to the line that it stands on.</summary>
    public const double HalfFigure = 9;

    /// <summary>Width of the lines of the limits and of the nominal diameter.</summary>
    public const double LevelWidth = 2.5;

    /// <summary>Width of the line through the means.</summary>
    public const double MeanWidth = 4;

    /// <summary>Radius of the dot of a mean, and of the ring around one that is too close to call.</summary>
    public const double DotRadius = 11;
    public const double RingRadius = 20;

    /// <summary>Half of the cross of a mean outside of the limits, and the width of its lines.</summary>
    public const double CrossHalf = 15;
    public const double CrossWidth = 8;

    /// <summary>Half of the diamond around a mean that stands out.</summary>
    public const double DiamondHalf = 28;

    private readonly double _low;
    private readonly double _high;
    private readonly double _from;
    private readonly double _to;

    /// <param name="profile">What is plotted.</param>
    /// <param name="widthMm">Width of the plot, millimetres.</param>
    public DiameterScale(DiameterProfile profile, int widthMm)
    {
        Width = widthMm * PlotLengths.PerMm;
        decimal?[] bounds = [profile.Low, profile.High, profile.Nominal];
        double[] values = [.. profile.Stations.SelectMany(s => s.Readings).Concat(bounds).OfType<decimal>().Select(v => (double)v)];
        (_low, _high) = PlotLengths.Range(values.Length == 0 ? [0, 1] : values);
        double[] positions = [.. profile.Stations.Select(s => s.Position).OfType<decimal>().Select(v => (double)v)];
        (_from, _to) = positions.Length == 0 ? (0, 1) : (positions.Min(), positions.Max());
    }

    /// <summary>Width of the whole plot.</summary>
    public double Width { get; }

    public double Right => Width - PlotLengths.AxisFromRight;

    public double X(decimal position) =>
        _to <= _from
            ? (Left + Right) / 2
            : Left + PlotLengths.Inset + (((double)position - _from) / (_to - _from) * (Right - Left - (2 * PlotLengths.Inset)));

    public double Y(decimal diameter) => Bottom - (((double)diameter - _low) / (_high - _low) * (Bottom - Top));
}

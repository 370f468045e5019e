using System.Globalization;

namespace ExamDocs.Templates.Shared;

/// <summary>Turns positions and diameters of a profile into places on the plot; plot units are tenths of a millimetre.</summary>
public sealed class DiameterScale
{
    public const double Left = 130;
    public const double Top = 20;
    public const double Bottom = 250;

    private readonly double _low;
    private readonly double _high;
    private readonly double _from;
    private readonly double _to;

    /// <param name="profile">What is plotted.</param>
    /// <param name="widthMm">Width of the plot, millimetres.</param>
    public DiameterScale(DiameterProfile profile, int widthMm)
    {
        Width = widthMm * 10;
        decimal?[] bounds = [profile.Low, profile.High, profile.Nominal];
        double[] values = [.. profile.Stations.SelectMany(s => s.Readings).Concat(bounds).OfType<decimal>().Select(v => (double)v)];
        var (low, high) = values.Length == 0 ? (0, 1) : (values.Min(), values.Max());
        var room = Math.Max((high - low) * 0.12, 0.1);
        (_low, _high) = (low - room, high + room);
        double[] positions = [.. profile.Stations.Select(s => s.Position).OfType<decimal>().Select(v => (double)v)];
        (_from, _to) = positions.Length == 0 ? (0, 1) : (positions.Min(), positions.Max());
    }

    /// <summary>Width of the whole plot.</summary>
    public double Width { get; }

    public double Right => Width - 30;

    public double X(decimal position) =>
        _to <= _from ? (Left + Right) / 2 : Left + 30 + (((double)position - _from) / (_to - _from) * (Right - Left - 60));

    public double Y(decimal diameter) => Bottom - (((double)diameter - _low) / (_high - _low) * (Bottom - Top));

    /// <summary>A place as it stands in SVG.</summary>
    public static string Place(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}

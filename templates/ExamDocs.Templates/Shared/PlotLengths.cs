namespace ExamDocs.Templates.Shared;

/// <summary>Lengths that both plots share, in plot units: tenths of a millimetre on paper.</summary>
internal static class PlotLengths
{
    /// <summary>Plot units to a millimetre.</summary>
    public const int PerMm = 10;

    /// <summary>From the left edge to the axis: room for a diameter with its unit.</summary>
    public const double AxisFromLeft = 130;

    /// <summary>From the end of the axis to the right edge: half of the last label stands out there.</summary>
    public const double AxisFromRight = 30;

    public const double AxisFromTop = 20;

    /// <summary>From the left edge to where the diameters beside the axis end.</summary>
    public const double LabelEnd = 118;

    /// <summary>The first and the last point stand so far within the ends of the axis.</summary>
    public const double Inset = 30;

    /// <summary>Width of the axes, and of lines that are read against them.</summary>
    public const double AxisWidth = 3;

    /// <summary>Width of the outline of a mark that is not filled.</summary>
    public const double OutlineWidth = 4;

    /// <summary>A line and the gap after it, for lines that must be told from those that are drawn through.</summary>
    public const string LongDash = "14 8";

    /// <summary>Part of the distance between the least and the largest value that is left free above and below.</summary>
    private const double FreePart = 0.12;

    /// <summary>Millimetres of diameter left free at least, so that values that are all alike stand apart from the axis.</summary>
    private const double LeastFreeMm = 0.1;

    /// <summary>The diameters at the lower and the upper end of the axis.</summary>
    /// <param name="mm">What is plotted, millimetres; one value at least.</param>
    public static (double Low, double High) Range(IReadOnlyCollection<double> mm)
    {
        var (low, high) = (mm.Min(), mm.Max());
        var free = Math.Max((high - low) * FreePart, LeastFreeMm);
        return (low - free, high + free);
    }
}

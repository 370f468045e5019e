using System.Globalization;

namespace ExamDocs.Templates.Shared;

/// <summary>Marks of the plots as SVG path data; places and lengths in plot units.</summary>
internal static class PlotMarks
{
    /// <summary>A place or a length as it stands in SVG.</summary>
    public static string Place(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    /// <param name="x">Its middle.</param>
    /// <param name="y">Its middle.</param>
    /// <param name="half">Half of its width and height.</param>
    public static string Cross(double x, double y, double half)
    {
        var side = Place(2 * half);
        return $"M{Place(x - half)} {Place(y - half)}l{side} {side}m0 -{side}l-{side} {side}";
    }

    /// <inheritdoc cref="Cross"/>
    public static string Diamond(double x, double y, double half)
    {
        var side = Place(half);
        return $"M{Place(x)} {Place(y - half)}l{side} {side}l-{side} {side}l-{side} -{side}z";
    }
}

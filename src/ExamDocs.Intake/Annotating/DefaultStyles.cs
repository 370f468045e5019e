using System.Globalization;
using System.Xml;

namespace ExamDocs.Intake.Annotating;

/// <summary>The styles that columns give to cells which are not there.</summary>
internal sealed class DefaultStyles
{
    private readonly List<(int First, int Last, string Style)> _columns = [];

    /// <summary>Notes the column definition that the reader stands at.</summary>
    public void Column(XmlReader source)
    {
        if (source.GetAttribute("style") is { } style && Number(source, "min") is { } first && Number(source, "max") is { } last)
            _columns.Add((first, last, style));
    }

    public string? Of(int column)
    {
        foreach (var (first, last, style) in _columns)
        {
            if (first <= column && column <= last)
                return style;
        }
        return null;
    }

    private static int? Number(XmlReader source, string name) =>
        int.TryParse(source.GetAttribute(name), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}

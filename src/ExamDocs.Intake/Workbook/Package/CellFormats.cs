using System.Globalization;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>The number format of every cell style, by the style's index.</summary>
internal sealed class CellFormats
{
    private readonly Dictionary<int, NumberFormat> _custom = [];
    private readonly List<int> _styles = [];
    private NumberFormat[] _formats = [];

    private CellFormats()
    {
    }

    public static CellFormats Read(WorkbookPackage package, string? part)
    {
        var formats = new CellFormats();
        if (part is null)
            return formats;
        using var reader = package.Read(part);
        var inCellStyles = false;
        while (reader.Read())
        {
            if (reader.Is("cellXfs"))
                inCellStyles = reader.AtStart && !reader.IsEmptyElement;
            else if (reader.AtStart && reader.Is("numFmt"))
                formats._custom[Number(reader.Attribute("numFmtId"))] = NumberFormat.Of(reader.Attribute("formatCode") ?? "");
            else if (reader.AtStart && inCellStyles && reader.Is("xf"))
                formats._styles.Add(Number(reader.Attribute("numFmtId")));
            if (formats._styles.Count > WorkbookLimits.Styles || formats._custom.Count > WorkbookLimits.Styles)
                throw new UnreadableWorkbookException("The workbook has more cell styles than any workbook has.");
        }
        formats._formats = [.. formats._styles.Select(id => formats._custom.TryGetValue(id, out var custom) ? custom : NumberFormat.BuiltIn(id))];
        return formats;
    }

    /// <param name="style">The cell's style attribute; null or out of range counts as plain.</param>
    public NumberFormat Of(string? style)
    {
        var index = Number(style);
        return index < _formats.Length ? _formats[index] : default;
    }

    private static int Number(string? attribute) =>
        int.TryParse(attribute, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;
}

using System.Globalization;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>The number format of every cell style, by the style's index.</summary>
internal sealed class CellFormats
{
    private readonly Dictionary<int, NumberFormat> _custom = [];
    private readonly List<int> _styles = [];

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
        return formats;
    }

    /// <param name="style">The cell's style attribute; null or out of range counts as plain.</param>
    public NumberFormat Of(string? style)
    {
        var index = Number(style);
        if (index < 0 || index >= _styles.Count)
            return default;
        return _custom.TryGetValue(_styles[index], out var custom) ? custom : NumberFormat.BuiltIn(_styles[index]);
    }

    private static int Number(string? attribute) =>
        int.TryParse(attribute, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;
}

using System.Globalization;
using ExamDocs.Intake.Binding;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>What every cell style does with a value, by the style's index: its number format, and a line through it.</summary>
internal sealed class CellFormats
{
    private readonly Dictionary<int, NumberFormat> _custom = [];
    private readonly List<CellStyle> _named = [];
    private readonly List<CellStyle> _styles = [];
    private readonly StruckStyles _struck = new();
    private (NumberFormat Format, bool IsStruck)[] _formats = [];

    private CellFormats() { }

    /// <summary>Whether a conditional format of this index strikes out.</summary>
    public bool Strikes(string? conditional) => _struck.Strikes(Number(conditional));

    public static CellFormats Read(WorkbookPackage package, string? part)
    {
        var formats = new CellFormats();
        if (part is null)
            return formats;
        using var reader = package.Read(part);
        var section = "";
        while (reader.Read())
        {
            if (!reader.AtStart)
                continue;
            section = reader.Depth == 1 ? reader.Name : section;
            formats.Add(reader, section);
            if (formats._styles.Count + formats._named.Count > WorkbookLimits.Styles || formats._custom.Count > WorkbookLimits.Styles)
                throw new UnreadableWorkbookException("The workbook has more cell styles than any workbook has.");
        }
        formats._formats = [.. formats._styles.Select(formats.Made)];
        return formats;
    }

    /// <param name="style">The cell's style attribute; null or out of range counts as plain.</param>
    public NumberFormat Of(string? style) => At(style).Format;

    /// <summary>Whether a style draws a line through what it shows.</summary>
    public bool IsStruck(string? style) => At(style).IsStruck;

    private (NumberFormat Format, bool IsStruck) At(string? style) =>
        Number(style) is var index && index < _formats.Length ? _formats[index] : default;

    private (NumberFormat, bool) Made(CellStyle style)
    {
        var format = _custom.TryGetValue(style.Format, out var custom) ? custom : NumberFormat.BuiltIn(style.Format);
        // Programs differ in whether a style that says it takes no font of its own takes that of the style it is named after.
        var isStruck =
            _struck.Has(style.Font, style.Border)
            || (style.Named < _named.Count && style.TakesFontOfNamed && _struck.Has(_named[style.Named].Font, _named[style.Named].Border));
        return (format, isStruck);
    }

    private void Add(PartReader reader, string section)
    {
        if (reader.Is("numFmt") && section is "numFmts")
            _custom[Number(reader.Attribute("numFmtId"))] = NumberFormat.Of(reader.Attribute("formatCode") ?? "");
        else if (reader.Is("xf") && section is "cellXfs")
            _styles.Add(Style(reader));
        else if (reader.Is("xf") && section is "cellStyleXfs")
            _named.Add(Style(reader));
        else
            _struck.Look(reader, section);
    }

    private static CellStyle Style(PartReader reader) =>
        new(
            Number(reader.Attribute("numFmtId")),
            Number(reader.Attribute("fontId")),
            Number(reader.Attribute("borderId")),
            Number(reader.Attribute("xfId")),
            reader.Attribute("applyFont") is { } applies && !WorkbookDirectory.IsTrue(applies)
        );

    private static int Number(string? attribute) =>
        int.TryParse(attribute, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;

    private readonly record struct CellStyle(int Format, int Font, int Border, int Named, bool TakesFontOfNamed);
}

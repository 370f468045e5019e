using System.Globalization;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.OwnList.Sheets;

/// <summary>The colour that each cell style gives a cell: of its fill, else of its letters; null for the usual ones.</summary>
internal sealed class CellColours
{
    private readonly List<string?> _fills = [];
    private readonly List<string?> _fonts = [];
    private readonly List<string?> _styles = [];
    private string _section = "";
    private bool _isSolid;

    public static CellColours Read(WorkbookPackage package, string? part)
    {
        var colours = new CellColours();
        if (part is null)
            return colours;
        using var reader = package.Read(part);
        while (reader.Read())
        {
            if (!reader.AtStart)
                continue;
            if (reader.Depth == 1)
                colours._section = reader.Name;
            else
                colours.Look(reader);
        }
        return colours;
    }

    /// <param name="style">The cell's style attribute; null or out of range counts as plain.</param>
    public string? Of(string? style) => At(_styles, style);

    private void Look(PartReader reader)
    {
        switch (_section)
        {
            case "fills" when reader.Is("fill"):
                _fills.Add(null);
                break;
            case "fills" when reader.Is("patternFill"):
                _isSolid = reader.Attribute("patternType") is not (null or "none" or "gray125");
                break;
            case "fills" when reader.Is("fgColor") && _isSolid && _fills.Count > 0:
                _fills[^1] = Named("fill", reader, isPlain: c => c is "FFFFFFFF" or "theme 0" or "indexed 64" or "indexed 9");
                break;
            case "fonts" when reader.Is("font"):
                _fonts.Add(null);
                break;
            case "fonts" when reader.Is("color") && _fonts.Count > 0:
                _fonts[^1] = Named("letters", reader, isPlain: c => c is "FF000000" or "theme 1" or "indexed 8" or "indexed 64" or "auto");
                break;
            case "cellXfs" when reader.Is("xf"):
                _styles.Add(At(_fills, reader.Attribute("fillId")) ?? At(_fonts, reader.Attribute("fontId")));
                break;
        }
    }

    private static string? Named(string what, PartReader reader, Func<string, bool> isPlain)
    {
        var colour =
            reader.Attribute("rgb") is { } rgb ? rgb.ToUpperInvariant()
            : reader.Attribute("theme") is { } theme ? $"theme {theme}"
            : reader.Attribute("indexed") is { } indexed ? $"indexed {indexed}"
            : "auto";
        return isPlain(colour) ? null : $"{what} {colour}";
    }

    private static string? At(List<string?> list, string? index) =>
        int.TryParse(index, NumberStyles.None, CultureInfo.InvariantCulture, out var at) && at < list.Count ? list[at] : null;
}

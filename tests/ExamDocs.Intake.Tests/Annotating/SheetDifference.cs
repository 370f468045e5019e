using System.Xml.Linq;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Tests.Annotating;

/// <summary>What differs between a sheet and its annotated copy, apart from marks on the cells that are marked.</summary>
internal sealed class SheetDifference(string part, HashSet<string> marked, List<string> found)
{
    public void Compare(XElement before, XElement after, IReadOnlyList<XElement> stylesBefore, IReadOnlyList<XElement> stylesAfter)
    {
        var (old, now) = (Cells(before), Cells(after));
        foreach (var (address, cell) in now)
        {
            if (marked.Contains(address))
                Marked(address, old.GetValueOrDefault(address), cell, stylesBefore, stylesAfter);
            else if (!old.ContainsKey(address))
                found.Add($"{part}: {address} is new");
        }
        foreach (var address in old.Keys.Where(a => !now.ContainsKey(a)))
            found.Add($"{part}: {address} is lost");
        if (!CopyDifference.Same(Stripped(before), Stripped(after)))
            found.Add($"{part} is altered");
    }

    private void Marked(
        string address,
        XElement? before,
        XElement after,
        IReadOnlyList<XElement> stylesBefore,
        IReadOnlyList<XElement> stylesAfter
    )
    {
        var (old, now) = (StyleOf(before, stylesBefore), StyleOf(after, stylesAfter));
        if ((string?)now.Attribute("applyFill") is not "1")
            found.Add($"{part}: {address} is not filled");
        foreach (var style in new[] { old, now })
            style.Attributes().Where(a => a.Name.LocalName is "fillId" or "applyFill").Remove();
        if (before is not null && !CopyDifference.Same(old, now))
            found.Add($"{part}: {address} has lost its style");
        if (before is null && after.HasElements)
            found.Add($"{part}: {address} is made and not empty");
    }

    private static XElement StyleOf(XElement? cell, IReadOnlyList<XElement> styles)
    {
        var number = (int?)cell?.Attribute("s") ?? 0;
        return number < styles.Count ? new XElement(styles[number]) : PlainStyle();
    }

    /// <summary>What a cell has in a file without styles.</summary>
    private static XElement PlainStyle() =>
        XElement.Parse(
            "<xf xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\" numFmtId=\"0\" fontId=\"0\" borderId=\"0\"/>"
        );

    private static Dictionary<string, XElement> Cells(XElement sheet)
    {
        var cells = new Dictionary<string, XElement>(StringComparer.Ordinal);
        var row = 0;
        foreach (var line in Rows(sheet))
        {
            row = (int?)line.Attribute("r") ?? row + 1;
            var column = 0;
            foreach (var cell in line.Elements())
            {
                column = cell.Attribute("r") is { } address ? CellAddress.Parse(address.Value)!.Value.Column : column + 1;
                cells.Add(CellAddress.Of(row, column), cell);
            }
        }
        return cells;
    }

    private static IEnumerable<XElement> Rows(XElement sheet) => sheet.Elements().Single(e => e.Name.LocalName is "sheetData").Elements();

    /// <summary>The sheet without what marking may change: fills, empty cells made, rows made for them, and extents.</summary>
    private XElement Stripped(XElement sheet)
    {
        var copy = new XElement(sheet);
        foreach (var (address, cell) in Cells(copy).Where(c => marked.Contains(c.Key)))
        {
            cell.SetAttributeValue("s", null);
            if (!cell.HasElements)
                cell.Remove();
        }
        foreach (var row in Rows(copy).ToList())
        {
            row.SetAttributeValue("spans", null);
            if (!row.HasElements && row.Attributes().All(a => a.Name.LocalName is "r"))
                row.Remove();
        }
        copy.Elements().Where(e => e.Name.LocalName is "dimension" or "legacyDrawing").Remove();
        return copy;
    }
}

using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>Which column of a sheet holds what, from its first row; the order of columns does not matter.</summary>
internal sealed class HeadingMap
{
    private readonly Dictionary<int, string> _typed = [];
    private readonly Dictionary<int, Column> _known = [];

    private HeadingMap()
    {
    }

    /// <summary>The columns that the sheet's shape has, from left to right.</summary>
    public IEnumerable<(int Index, Column Column)> Known => _known.Select(k => (k.Key, k.Value));

    /// <param name="first">The sheet's first filled row; anything but row 1 holds no headings.</param>
    public static HeadingMap Of(SheetRow first, SheetShape shape)
    {
        var map = new HeadingMap();
        if (first.Number != 1)
            return map;
        var columns = shape.Columns.ToDictionary(c => Heading.Normal(c.Heading), StringComparer.Ordinal);
        foreach (var cell in first.Cells)
        {
            map._typed[cell.Column] = cell.Raw;
            if (cell.Kind is CellKind.Text && columns.TryGetValue(Heading.Normal(cell.Raw), out var column))
                map._known[cell.Column] = column;
        }
        return map;
    }

    public bool Knows(int column) => _known.ContainsKey(column);

    /// <summary>What stands above a column; null where nothing does.</summary>
    public string? Typed(int column) => _typed.GetValueOrDefault(column);
}

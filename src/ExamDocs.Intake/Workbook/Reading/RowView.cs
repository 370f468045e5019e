using System.Globalization;
using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>A row seen under its sheet's headings.</summary>
internal sealed class RowView(string sheet, SheetRow row, HeadingMap headings)
{
    private readonly Dictionary<int, Cell> _cells = row.Cells.ToDictionary(c => c.Column);

    public string Sheet => sheet;

    /// <summary>Known columns from left to right, filled or not.</summary>
    public IEnumerable<(int Index, Column Column)> Columns => headings.Known;

    /// <summary>Cells that no known heading stands above.</summary>
    public IEnumerable<Cell> Strays => row.Cells.Where(c => !headings.Knows(c.Column));

    public bool HasKnownContent => row.Cells.Any(c => headings.Knows(c.Column));

    public Cell? At(int column) => _cells.TryGetValue(column, out var cell) ? cell : null;

    public string? HeadingTyped(int column) => headings.Typed(column);

    /// <summary>The heading of the sheet that a mistyped one most resembles; null where none is near.</summary>
    public string? Near(string heading) => headings.Near(heading);

    public string Reference(int column) =>
        string.Create(CultureInfo.InvariantCulture, $"{CellAddress.Letters(column)}{row.Number}");

    public string Address(int column) => $"{sheet}!{Reference(column)}";

    /// <summary>Where the row as a whole is said to be: the cell under its first heading of the shape.</summary>
    public string Place => Address(Columns.Any() ? Columns.First().Index : 1);

    public bool AnyFilled(Func<Column, bool> which) => Columns.Any(c => which(c.Column) && _cells.ContainsKey(c.Index));
}

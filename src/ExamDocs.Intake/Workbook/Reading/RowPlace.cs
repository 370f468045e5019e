using System.Globalization;
using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>Where a row stands and what its columns are, without what it holds: kept as long as findings may name it.</summary>
internal sealed class RowPlace(string sheet, int number, HeadingMap headings)
{
    public string Sheet => sheet;

    /// <summary>Known columns from left to right, filled or not.</summary>
    public IReadOnlyList<(int Index, Column Column)> Columns => headings.Known;

    public string Reference(int column) => string.Create(CultureInfo.InvariantCulture, $"{CellAddress.Letters(column)}{number}");

    public string Address(int column) => $"{sheet}!{Reference(column)}";

    /// <summary>Where the row as a whole is said to be: the cell under its first heading of the shape.</summary>
    public override string ToString() => Address(Columns.Count > 0 ? Columns[0].Index : 1);
}

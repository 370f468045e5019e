using System.Globalization;
using System.Runtime.InteropServices;
using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>Where a row stands and what its columns are, without what it holds: kept as long as findings may name it.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly struct RowPlace(string sheet, int number, HeadingMap headings)
{
    public string Sheet => sheet;

    /// <summary>Counted from 1.</summary>
    public int Number => number;

    /// <summary>Known columns from left to right, filled or not.</summary>
    public List<(int Index, Column Column)> Columns => headings.Known;

    /// <summary>Whether another row is the one that stands so many rows below, under the same headings.</summary>
    public bool IsFollowedBy(RowPlace other, int rows) => other.Number == number + rows && other.IsUnder(sheet, headings);

    /// <summary>The row that stands so many rows below, under the same headings.</summary>
    public RowPlace Below(int rows) => new(sheet, number + rows, headings);

    public string? HeadingTyped(int column) => headings.Typed(column);

    public string Reference(int column) => string.Create(CultureInfo.InvariantCulture, $"{CellAddress.Letters(column)}{number}");

    public string Address(int column) => $"{sheet}!{Reference(column)}";

    /// <summary>Where the row as a whole is said to be: the cell under its first heading of the shape.</summary>
    public override string ToString() => Address(Columns.Count > 0 ? Columns[0].Index : 1);

    private bool IsUnder(string sameSheet, HeadingMap same) => ReferenceEquals(headings, same) && ReferenceEquals(sheet, sameSheet);
}

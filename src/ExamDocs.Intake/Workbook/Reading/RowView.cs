using System.Runtime.InteropServices;
using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>A row seen under its sheet's headings.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly struct RowView(string sheet, SheetRow row, HeadingMap headings)
{
    /// <summary>Where it stands.</summary>
    public RowPlace Stands => new(sheet, row.Number, headings);

    public string Sheet => sheet;

    /// <inheritdoc cref="RowPlace.Columns"/>
    public List<(int Index, Column Column)> Columns => headings.Known;

    /// <inheritdoc cref="HeadingMap.Criteria"/>
    public IReadOnlyList<CriterionColumns> Criteria => headings.Criteria;

    public ArraySegment<Cell> Cells => row.Cells;

    public bool HasKnownContent
    {
        get
        {
            foreach (var cell in row.Cells)
            {
                if (headings.Knows(cell.Column))
                    return true;
            }
            return false;
        }
    }

    /// <inheritdoc cref="HeadingMap.HasLists"/>
    public bool HasLists => headings.HasLists;

    /// <inheritdoc cref="HeadingMap.ColumnAt"/>
    public Column? ColumnAt(int column) => headings.ColumnAt(column);

    /// <summary>Whether a known heading stands above the column.</summary>
    public bool Knows(int column) => headings.Knows(column);

    /// <summary>Where the row as a whole is said to be.</summary>
    public string Place => Stands.ToString();

    /// <summary>The filled cell of a column; null where it is empty. Cells stand from left to right.</summary>
    public Cell? At(int column)
    {
        var (low, high) = (0, row.Cells.Count - 1);
        while (low <= high)
        {
            var middle = (low + high) / 2;
            if (row.Cells[middle].Column == column)
                return row.Cells[middle];
            (low, high) = row.Cells[middle].Column < column ? (middle + 1, high) : (low, middle - 1);
        }
        return null;
    }

    public string? HeadingTyped(int column) => headings.Typed(column);

    /// <inheritdoc cref="HeadingMap.Misspelt"/>
    public Column? Misspelt(string heading) => headings.Misspelt(heading);

    /// <inheritdoc cref="HeadingMap.Foreign"/>
    public ForeignHeading Foreign(int column) => headings.Foreign(column);

    public string Reference(int column) => Stands.Reference(column);

    public string Address(int column) => Stands.Address(column);

    public bool AnyFilled(Func<Column, bool> which)
    {
        foreach (var (index, column) in Columns)
        {
            if (which(column) && At(index) is not null)
                return true;
        }
        return false;
    }
}

using System.Globalization;
using ExamDocs.Intake.Binding;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>
/// Reads a sheet's filled rows, one at a time, from top to bottom as the file has them. A part is read once and forwards, and
/// no more of it is held than the rows asked for: a sheet can have a million rows.
/// </summary>
internal sealed class SheetRows(SharedStrings texts, CellFormats formats, ReadingBudget budget)
{
    /// <summary>Cells for which room is made at a time: enough for several rows, little enough to waste in a short sheet.</summary>
    private const int CellsKeptTogether = 512;

    private readonly SheetCells _cells = new(texts, formats, budget);

    /// <summary>Cells of the row being read.</summary>
    private readonly List<Cell> _row = [];

    /// <summary>Cells of rows read before, side by side: a list for each row would cost as much as its cells.</summary>
    private Cell[] _kept = [];
    private int _keptUntil;

    /// <summary>Whether a line goes through the row being read.</summary>
    private bool _rowIsStruck;

    /// <summary>What the file says of the sheet read last beside its rows; known when all of them are read.</summary>
    public SheetAbout About { get; private set; } = new();

    public IEnumerable<SheetRow> Read(PartReader reader)
    {
        var number = 0;
        About = new SheetAbout();
        while (reader.Read())
        {
            if (!reader.AtStart)
                continue;
            if (!reader.Is("row"))
            {
                About.Look(reader, formats);
                continue;
            }
            budget.Row();
            var (declared, hidden, style) = RowAttributes(reader);
            number = RowNumber(declared, number);
            _rowIsStruck = formats.IsStruck(style);
            if (!reader.IsEmptyElement && Cells(reader) is { Count: > 0 } cells)
                yield return new SheetRow(number, hidden, cells);
        }
    }

    private static (string? Number, bool Hidden, string? Style) RowAttributes(PartReader reader)
    {
        string? number = null,
            style = null;
        var hidden = false;
        while (reader.NextAttribute() is { } name)
        {
            if (name is "r")
                number = reader.Value;
            else if (name is "hidden")
                hidden = WorkbookDirectory.IsTrue(reader.Value);
            else if (name is "s")
                style = reader.Value;
        }
        return (number, hidden, style);
    }

    /// <summary>Numbers must rise: else two rows could be one, and a finding would name the wrong one.</summary>
    private static int RowNumber(string? attribute, int before)
    {
        if (attribute is null)
            return before + 1;
        return
            int.TryParse(attribute, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            && number > before
            && number <= WorkbookLimits.LastRow
            ? number
            : throw new UnreadableWorkbookException("The workbook's rows are numbered wrongly. It may be damaged; save it again.");
    }

    /// <param name="reader">At the row's start.</param>
    private ArraySegment<Cell> Cells(PartReader reader)
    {
        _row.Clear();
        var (depth, column) = (reader.Depth, 0);
        while (reader.Read() && !(reader.AtEnd && reader.Depth == depth))
        {
            if (!reader.AtStart || !reader.Is("c") || _cells.Read(reader, ref column, out var style) is not { } cell)
                continue;
            budget.FilledCell();
            // A cell without a style of its own looks, in some programs, as its row or column does.
            var isStruck = cell.IsStruck || (style is null ? _rowIsStruck || About.IsStruck(column) : formats.IsStruck(style));
            _row.Add(isStruck ? cell with { IsStruck = true } : cell);
        }
        return Kept();
    }

    /// <summary>Copies the row to where it stays: what was given out before is never written over.</summary>
    private ArraySegment<Cell> Kept()
    {
        if (_kept.Length - _keptUntil < _row.Count)
            (_kept, _keptUntil) = (new Cell[Math.Max(_row.Count, CellsKeptTogether)], 0);
        _row.CopyTo(_kept, _keptUntil);
        _keptUntil += _row.Count;
        return new(_kept, _keptUntil - _row.Count, _row.Count);
    }
}

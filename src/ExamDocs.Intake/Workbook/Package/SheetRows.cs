using System.Globalization;
using System.Text;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>Reads a sheet's filled rows, one at a time, from top to bottom as the file has them.</summary>
internal sealed class SheetRows(IReadOnlyList<string> texts, CellFormats formats, ReadingBudget budget)
{
    private readonly StringBuilder _value = new();

    /// <summary>Ranges merged on the sheet read last, and the first of them; known when all its rows are read.</summary>
    public (int Count, string? First) Merges { get; private set; }

    public IEnumerable<SheetRow> Read(PartReader reader)
    {
        var number = 0;
        Merges = default;
        while (reader.Read())
        {
            if (reader.AtStart && reader.Is("mergeCell"))
                Merges = (Merges.Count + 1, Merges.First ?? reader.Attribute("ref"));
            if (!reader.AtStart || !reader.Is("row"))
                continue;
            budget.Row();
            number = RowNumber(reader.Attribute("r"), number);
            var hidden = WorkbookDirectory.IsTrue(reader.Attribute("hidden"));
            if (!reader.IsEmptyElement && Cells(reader) is { Count: > 0 } cells)
                yield return new SheetRow(number, hidden, cells);
        }
    }

    private static int RowNumber(string? attribute, int before)
    {
        if (attribute is null)
            return before + 1;
        return int.TryParse(attribute, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            && number > before && number <= WorkbookLimits.LastRow
            ? number
            : throw new UnreadableWorkbookException("The workbook's rows are numbered wrongly. It may be damaged; save it again.");
    }

    private List<Cell> Cells(PartReader reader)
    {
        var cells = new List<Cell>();
        var (depth, column) = (reader.Depth, 0);
        while (reader.Read() && !(reader.AtEnd && reader.Depth == depth))
        {
            if (!reader.AtStart || !reader.Is("c"))
                continue;
            budget.Cell();
            var (address, type, style) = reader.CellAttributes();
            column = ColumnNumber(address, column);
            if (One(reader, column, type, formats.Of(style)) is not { } cell)
                continue;
            budget.FilledCell();
            cells.Add(cell);
        }
        return cells;
    }

    private static int ColumnNumber(string? address, int before)
    {
        var column = address is null ? before + 1 : CellAddress.Column(address);
        return column is { } known && known > before && known <= WorkbookLimits.LastColumn
            ? known
            : throw new UnreadableWorkbookException("The workbook's cells are numbered wrongly. It may be damaged; save it again.");
    }

    private Cell? One(PartReader reader, int column, string? type, NumberFormat format)
    {
        var (value, isFormula) = Content(reader);
        var kind = KindOf(type);
        var raw = value.Trim();
        if (kind is CellKind.Text && type is "s")
            (kind, raw) = Shared(raw);
        else if (kind is CellKind.Text)
            raw = CellText.Clean(value);
        if (type is not ("s" or "inlineStr"))
            budget.Text(raw.Length);
        if (raw.Length > 0)
            return new Cell(column, kind, raw, format, isFormula);
        return isFormula && kind is not CellKind.Text ? new Cell(column, CellKind.FormulaWithoutValue, "", format, true) : null;
    }

    private static CellKind KindOf(string? type) => type switch
    {
        null or "n" => CellKind.Number,
        "s" or "str" or "inlineStr" => CellKind.Text,
        "b" => CellKind.Boolean,
        "d" => CellKind.IsoDate,
        "e" => CellKind.Error,
        _ => CellKind.Damaged,
    };

    private (CellKind Kind, string Raw) Shared(string index)
    {
        if (index.Length == 0)
            return (CellKind.Text, "");
        return int.TryParse(index, NumberStyles.None, CultureInfo.InvariantCulture, out var at) && at < texts.Count
            ? (CellKind.Text, texts[at])
            : (CellKind.Damaged, index);
    }

    /// <summary>Reads to the end of the cell: its stored value or inline text, and whether a formula made it.</summary>
    private (string Value, bool IsFormula) Content(PartReader reader)
    {
        var (value, isFormula, inValue) = (_value.Clear(), false, false);
        if (reader.IsEmptyElement)
            return ("", false);
        var depth = reader.Depth;
        while (reader.Read() && !(reader.AtEnd && reader.Depth == depth))
        {
            if (reader.AtStart && reader.Is("is"))
                value.Append(Inline(reader));
            else if (reader.AtStart && reader.Is("f"))
                isFormula = true;
            else if ((reader.AtStart || reader.AtEnd) && reader.Is("v"))
                inValue = reader.AtStart && !reader.IsEmptyElement;
            else if (inValue)
                reader.AppendText(value);
        }
        return (value.ToString(), isFormula);
    }

    private string Inline(PartReader reader)
    {
        var text = RichText.Read(reader);
        budget.Text(text.Length);
        return text;
    }
}

using System.Globalization;
using System.Xml;
using ExamDocs.Intake.Binding;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>Reads a sheet's filled rows, one at a time, from top to bottom as the file has them.</summary>
internal sealed class SheetRows(SharedStrings texts, CellFormats formats, ReadingBudget budget)
{
    private const int CellsKeptTogether = 512;

    private readonly GatheredText _value = new();

    /// <summary>Cells of the row being read.</summary>
    private readonly List<Cell> _row = [];

    /// <summary>Cells of rows read before, side by side: a list for each row would cost as much as its cells.</summary>
    private Cell[] _kept = [];
    private int _keptUntil;

    /// <summary>Whether a line goes through the row being read, and through the text read last.</summary>
    private bool _rowIsStruck;
    private bool _textIsStruck;

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
            if (!reader.AtStart || !reader.Is("c"))
                continue;
            budget.Cell();
            var (address, type, style) = Attributes(reader);
            column = ColumnNumber(address, column);
            if (One(reader, column, type, formats.Of(style)) is not { } cell)
                continue;
            budget.FilledCell();
            // A cell without a style of its own looks, in some programs, as its row or column does.
            var isStruck = cell.IsStruck || (style is null ? _rowIsStruck || About.IsStruck(column) : formats.IsStruck(style));
            _row.Add(isStruck ? cell with { IsStruck = true } : cell);
        }
        return Kept();
    }

    private ArraySegment<Cell> Kept()
    {
        if (_kept.Length - _keptUntil < _row.Count)
            (_kept, _keptUntil) = (new Cell[Math.Max(_row.Count, CellsKeptTogether)], 0);
        _row.CopyTo(_kept, _keptUntil);
        _keptUntil += _row.Count;
        return new(_kept, _keptUntil - _row.Count, _row.Count);
    }

    /// <summary>What a cell says of itself, in one walk: there are more cells than anything else.</summary>
    private static (string? Address, string? Type, string? Style) Attributes(PartReader reader)
    {
        string? address = null,
            type = null,
            style = null;
        while (reader.NextAttribute() is { } name)
        {
            switch (name)
            {
                case "r":
                    address = reader.Value;
                    break;
                case "t":
                    type = reader.Value;
                    break;
                case "s":
                    style = reader.Value;
                    break;
                default:
                    break;
            }
        }
        return (address, type, style);
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
        _textIsStruck = false;
        var (value, isFormula) = Content(reader);
        var kind = KindOf(type);
        var raw = value.Trim();
        if (kind is CellKind.Text && type is "s")
            (kind, raw) = Shared(raw);
        // An inline text was cleaned when it was read: twice would make an A of a typed _x0041_.
        else if (kind is CellKind.Text && type is not "inlineStr")
            raw = CellText.Clean(value);
        if (type is not ("s" or "inlineStr"))
            budget.Text(raw.Length);
        if (raw.Length > 0)
            return new Cell(column, kind, raw, format, isFormula) { IsStruck = _textIsStruck };
        return isFormula && kind is not CellKind.Text ? new Cell(column, CellKind.FormulaWithoutValue, "", format, true) : null;
    }

    private static CellKind KindOf(string? type) =>
        type switch
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
        if (!int.TryParse(index, NumberStyles.None, CultureInfo.InvariantCulture, out var at) || at >= texts.Count)
            return (CellKind.Damaged, index);
        _textIsStruck = texts.IsStruck(at);
        return (CellKind.Text, texts[at]);
    }

    /// <summary>Reads to the end of the cell: its stored value or inline text, and whether a formula made it.</summary>
    private (string Value, bool IsFormula) Content(PartReader reader)
    {
        if (reader.IsEmptyElement)
            return ("", false);
        _value.Clear();
        var (depth, isFormula, inValue) = (reader.Depth, false, false);
        while (reader.Read())
        {
            switch (reader.Node)
            {
                case XmlNodeType.Element when reader.Is("v"):
                    inValue = !reader.IsEmptyElement;
                    break;
                case XmlNodeType.Element when reader.Is("is"):
                    _value.Add(Inline(reader));
                    break;
                case XmlNodeType.Element:
                    isFormula |= reader.Is("f");
                    break;
                case XmlNodeType.EndElement when reader.Depth == depth:
                    return (_value.ToString(), isFormula);
                case XmlNodeType.EndElement:
                    inValue &= !reader.Is("v");
                    break;
                default:
                    if (inValue)
                        reader.AppendText(_value);
                    break;
            }
        }
        return (_value.ToString(), isFormula);
    }

    private string Inline(PartReader reader)
    {
        (var text, _textIsStruck) = RichText.Read(reader);
        budget.Text(text.Length);
        return text;
    }
}

using System.Globalization;
using System.Xml;
using ExamDocs.Intake.Binding;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>
/// Reads the cells of a sheet, one at a time. There are more of them than of anything else in a workbook, so each is read in
/// one walk, and nothing is kept of one that is empty.
/// </summary>
internal sealed class SheetCells(SharedStrings texts, CellFormats formats, ReadingBudget budget)
{
    private readonly GatheredText _value = new();

    /// <summary>Whether a line goes through the text read last.</summary>
    private bool _textIsStruck;

    /// <param name="reader">At the cell's start; it is read to its end.</param>
    /// <param name="column">The column of the cell before it in the row, 0 for none; afterwards its own.</param>
    /// <param name="style">Its style attribute; null where it has none.</param>
    /// <returns>Null where the cell is empty.</returns>
    public Cell? Read(PartReader reader, ref int column, out string? style)
    {
        budget.Cell();
        (var address, var type, style) = Attributes(reader);
        column = ColumnNumber(address, column);
        return Filled(reader, column, type, formats.Of(style));
    }

    /// <summary>What a cell says of itself.</summary>
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

    /// <summary>Columns must rise: else one cell could hold two values, and which of them was meant cannot be told.</summary>
    private static int ColumnNumber(string? address, int before)
    {
        var column = address is null ? before + 1 : CellAddress.Column(address);
        return column is { } known && known > before && known <= WorkbookLimits.LastColumn
            ? known
            : throw new UnreadableWorkbookException("The workbook's cells are numbered wrongly. It may be damaged; save it again.");
    }

    private Cell? Filled(PartReader reader, int column, string? type, NumberFormat format)
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

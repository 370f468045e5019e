using System.Globalization;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Vocabulary;
using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>
/// Makes of a cell the node that JSON would have for the same value. Whatever does not fit the column is passed on as
/// typed, so that it is refused where all input is; only what a cell alone can have wrong is reported here.
/// </summary>
internal sealed class CellReading(ReadingNotes notes, bool counts1904, KnownRules rules, ReadAsNotes readings)
{
    private readonly NumberCells _numbers = new(notes, counts1904);
    private readonly NumberTexts _numberTexts = new(notes, readings);
    private readonly ColumnWords _words = ColumnWords.Of(rules);
    private int _listed;
    private int _ordered;
    private string? _firstOrdered;

    /// <summary>The order that the visit sheet declares for dates typed as text; null where it declares none.</summary>
    public DateOrder? Dates { get; set; }

    /// <inheritdoc cref="NumberTexts.LoadUnit"/>
    public string? LoadUnit { get; private set; }

    /// <returns>Null where the value counts as missing, which has then been reported.</returns>
    public SourceNode? Read(Cell cell, Column column, JsonPlace pointer)
    {
        LoadUnit = null;
        return cell.Kind switch
        {
            CellKind.Text => Text(cell.Raw, column, pointer),
            CellKind.Number => _numbers.Read(cell, column.Kind, pointer),
            CellKind.Boolean => Boolean(cell.Raw is "1" or "true", column.Kind, pointer),
            CellKind.IsoDate => _numbers.ReadIso(cell.Raw, column.Kind, pointer),
            CellKind.Error => Report(CellFindings.ErrorCell, pointer, $"the cell holds the error {Shown(cell.Raw)}"),
            CellKind.FormulaWithoutValue => Report(CellFindings.FormulaWithoutValue, pointer, $"the formula was saved without its result"),
            _ => Report(CellFindings.UnreadableCell, pointer, $"the cell's content is damaged"),
        };
    }

    /// <summary>At most forty characters of what stands in a cell, for a message.</summary>
    public static string Shown(string raw) => raw.Length <= 40 ? raw : raw[..(char.IsHighSurrogate(raw[39]) ? 39 : 40)] + "…";

    /// <summary>The word of a column that a text means, which is noted where it is another than the one typed; else the text.</summary>
    public string Word(string text, Column column, JsonPlace pointer)
    {
        if (_words.Find(column, text) is not { } found)
            return text;
        if (found.IsListed)
            readings.Add(ReadAsKind.Word, column.Heading, pointer, text, found.Word);
        return found.Word;
    }

    /// <summary>What can be said only when all is read: how dates were read, and whether decimals were typed in two ways.</summary>
    public void Finish()
    {
        if (_firstOrdered is not null)
            notes.Report(
                CellFindings.DatesInOrder,
                _firstOrdered,
                $"{_ordered} dates were read in the order {DateOrders.Word(Dates!.Value)}; this is the first"
            );
        _numberTexts.Finish();
    }

    private SourceNode? Text(string text, Column column, JsonPlace pointer) =>
        column.Kind switch
        {
            ColumnKind.List => List(text, pointer),
            ColumnKind.Flag => Flag(text, column, pointer),
            ColumnKind.Number or ColumnKind.NumberInList => Number(text, column, pointer),
            ColumnKind.Date => Date(text, column, pointer),
            ColumnKind.Text => new TextNode(pointer, Word(text, column, pointer)),
            _ => new TextNode(pointer, text),
        };

    private SourceNode Flag(string text, Column column, JsonPlace pointer) =>
        Word(text, column, pointer) switch
        {
            "yes" => new BooleanNode(pointer, true),
            "no" => new BooleanNode(pointer, false),
            _ => new TextNode(pointer, text),
        };

    private SourceNode? Number(string text, Column column, JsonPlace pointer)
    {
        var node = _numberTexts.Read(text, column, pointer);
        LoadUnit = node is NumberNode ? _numberTexts.LoadUnit : null;
        return node;
    }

    private TextNode Date(string text, Column column, JsonPlace pointer)
    {
        if (TypedDate.Of(text, Dates) is not { } date || string.Equals(date.Iso, text, StringComparison.Ordinal))
            return new TextNode(pointer, text);
        if (!date.IsByOrder)
            readings.Add(ReadAsKind.Date, column.Heading, pointer, text, date.Iso);
        else if (_ordered++ == 0)
            _firstOrdered = pointer.ToString();
        return new TextNode(pointer, date.Iso);
    }

    private static SourceNode Boolean(bool value, ColumnKind kind, JsonPlace pointer) =>
        kind is ColumnKind.Flag ? new BooleanNode(pointer, value) : new TextNode(pointer, value ? "TRUE" : "FALSE");

    private ListNode? List(string text, JsonPlace pointer)
    {
        var entries = text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (entries.Length > WorkbookLimits.ListEntries)
        {
            notes.Report(SheetFindings.ListTooLong, pointer.ToString(), $"the cell lists more than 200 things");
            return null;
        }
        if ((_listed += entries.Length) > WorkbookLimits.ListEntriesTotal)
            throw new UnreadableWorkbookException("The workbook lists more things in its cells than any recorded visit does.");
        var nodes = entries
            .Select((entry, n) => new TextNode(string.Create(CultureInfo.InvariantCulture, $"{pointer}/{n}"), entry))
            .ToList();
        return new ListNode(pointer, nodes);
    }

    private SourceNode? Report(RuleInfo rule, JsonPlace pointer, Message message)
    {
        notes.Report(rule, pointer.ToString(), message);
        return null;
    }
}

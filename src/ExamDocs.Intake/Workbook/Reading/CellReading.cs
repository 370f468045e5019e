using System.Globalization;
using ExamDocs.Core.Findings;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>
/// Makes of a cell the node that JSON would have for the same value. Whatever does not fit the column is passed on as
/// typed, so that it is refused where all input is; only what a cell alone can have wrong is reported here.
/// </summary>
internal sealed class CellReading(ReadingNotes notes, bool counts1904)
{
    private readonly NumberCells _numbers = new(notes, counts1904);
    private readonly List<(string Pointer, string Typed)> _pointsBeforeThree = [];
    private int _listed;
    private int _ordered;
    private string? _firstOrdered;
    private string? _decimalComma;

    /// <summary>The order that the visit sheet declares for dates typed as text; null where it declares none.</summary>
    public DateOrder? Dates { get; set; }

    /// <returns>Null where the value counts as missing, which has then been reported.</returns>
    public SourceNode? Read(Cell cell, ColumnKind kind, JsonPlace pointer)
    {
        return cell.Kind switch
        {
            CellKind.Text => Text(cell.Raw, kind, pointer),
            CellKind.Number => _numbers.Read(cell, kind, pointer),
            CellKind.Boolean => Boolean(cell.Raw is "1" or "true", kind, pointer),
            CellKind.IsoDate => _numbers.ReadIso(cell.Raw, kind, pointer),
            CellKind.Error => Report(CellFindings.ErrorCell, pointer, $"the cell holds the error {Shown(cell.Raw)}"),
            CellKind.FormulaWithoutValue => Report(CellFindings.FormulaWithoutValue, pointer, "the formula was saved without its result"),
            _ => Report(CellFindings.UnreadableCell, pointer, "the cell's content is damaged"),
        };
    }

    /// <summary>At most forty characters of what stands in a cell, for a message.</summary>
    public static string Shown(string raw) => raw.Length <= 40 ? raw : raw[..(char.IsHighSurrogate(raw[39]) ? 39 : 40)] + "…";

    private SourceNode? Text(string text, ColumnKind kind, JsonPlace pointer) =>
        kind switch
        {
            ColumnKind.List => List(text, pointer),
            ColumnKind.Flag when text.Equals("yes", StringComparison.OrdinalIgnoreCase) => new BooleanNode(pointer, true),
            ColumnKind.Flag when text.Equals("no", StringComparison.OrdinalIgnoreCase) => new BooleanNode(pointer, false),
            ColumnKind.Number or ColumnKind.NumberInList => NumberTyped(text, pointer),
            ColumnKind.Date when Dates is { } order && TypedDate.Iso(text, order) is { } iso => Ordered(iso, text, pointer),
            _ => new TextNode(pointer, text),
        };

    /// <summary>What can be said only when all is read: how dates were read, and whether decimals were typed in two ways.</summary>
    public void Finish()
    {
        if (_firstOrdered is not null)
            notes.Report(
                CellFindings.DatesInOrder,
                _firstOrdered,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"dates read in the order {DateOrders.Words[(int)Dates!]}: {_ordered}, this being the first"
                )
            );
        foreach (var (pointer, typed) in _decimalComma is null ? [] : _pointsBeforeThree)
            notes.Report(
                CellFindings.NumberReadTwoWays,
                pointer,
                $"{Shown(typed)} has a point, and {Shown(_decimalComma!)} elsewhere a comma before its decimals"
            );
    }

    private TextNode Ordered(string iso, string typed, JsonPlace pointer)
    {
        if (!string.Equals(iso, typed, StringComparison.Ordinal) && _ordered++ == 0)
            _firstOrdered = pointer.ToString();
        return new TextNode(pointer, iso);
    }

    private SourceNode? NumberTyped(string text, JsonPlace pointer)
    {
        var number = TypedNumber.Of(text);
        if (number.Kind is TypedNumberKind.CommaBeforeThree)
            return Report(CellFindings.NumberReadTwoWays, pointer, $"{Shown(text)} may be a thousand and more, or have three decimals");
        if (number.Kind is TypedNumberKind.DecimalComma)
            _decimalComma ??= text;
        else if (number.Kind is TypedNumberKind.PointBeforeThree)
            _pointsBeforeThree.Add((pointer.ToString(), text));
        return number.Plain is { } plain ? new NumberNode(pointer, plain) : new TextNode(pointer, text);
    }

    private static SourceNode Boolean(bool value, ColumnKind kind, JsonPlace pointer) =>
        kind is ColumnKind.Flag ? new BooleanNode(pointer, value) : new TextNode(pointer, value ? "TRUE" : "FALSE");

    private ListNode? List(string text, JsonPlace pointer)
    {
        var entries = text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (entries.Length > WorkbookLimits.ListEntries)
        {
            notes.Report(SheetFindings.ListTooLong, pointer.ToString(), "the cell lists more than 200 things");
            return null;
        }
        if ((_listed += entries.Length) > WorkbookLimits.ListEntriesTotal)
            throw new UnreadableWorkbookException("The workbook lists more things in its cells than any recorded visit does.");
        var nodes = entries
            .Select((entry, n) => new TextNode(string.Create(CultureInfo.InvariantCulture, $"{pointer}/{n}"), entry))
            .ToList();
        return new ListNode(pointer, nodes);
    }

    private SourceNode? Report(RuleInfo rule, JsonPlace pointer, string message)
    {
        notes.Report(rule, pointer.ToString(), message);
        return null;
    }
}

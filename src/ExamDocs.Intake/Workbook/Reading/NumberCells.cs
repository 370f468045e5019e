using ExamDocs.Core.Findings;
using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>
/// Makes of a cell that holds a number, or a date, the node for its column. What a spreadsheet program may have changed on the
/// way is reported: digits that a number cell cannot keep, and dates made of what was typed as something else.
/// </summary>
internal sealed class NumberCells(ReadingNotes notes, bool counts1904)
{
    public SourceNode? ReadIso(string raw, ColumnKind kind, JsonPlace pointer)
    {
        var at = raw.IndexOf('T', StringComparison.Ordinal);
        var hasTime = at == 0 || (at > 0 && raw.AsSpan(at + 1).IndexOfAnyExcept("0:.Z") >= 0);
        if (kind is not ColumnKind.Date)
            return Report(CellFindings.DateNotExpected, pointer, $"the cell holds the date {CellReading.Shown(raw)}");
        return hasTime
            ? Report(CellFindings.TimeNotDate, pointer, $"the cell holds the time {CellReading.Shown(raw)}")
            : new TextNode(pointer, at < 0 ? raw : raw[..at]);
    }

    public SourceNode? Read(Cell cell, ColumnKind kind, JsonPlace pointer)
    {
        if (CellDigits.Parse(cell.Raw) is not { } number)
            return Report(CellFindings.UnreadableCell, pointer, $"{CellReading.Shown(cell.Raw)} is not a number that can be read");
        if (cell.Format.Kind is FormatKind.Percent)
            return Report(CellFindings.PercentNotExpected, pointer, $"the cell shows {CellDigits.Plain(number)} as a percentage");
        if (kind is ColumnKind.Date)
            return Date(number, cell, pointer);
        if (cell.Format.Kind is FormatKind.Date or FormatKind.DateAndTime or FormatKind.Time or FormatKind.Duration)
            return Report(CellFindings.DateNotExpected, pointer, DateMessage(number));
        if (kind is ColumnKind.Number or ColumnKind.NumberInList or ColumnKind.Flag)
            return new NumberNode(pointer, CellDigits.Plain(number));
        return Digits(number, cell, kind, pointer);
    }

    private Message DateMessage(double number) =>
        SpreadsheetSerial.ToDate((decimal)number, counts1904) is { } day
            ? (Message)$"the cell holds the date {NodaTime.Text.LocalDatePattern.Iso.Format(day)}"
            : $"the cell holds a time";

    private TextNode? Date(double number, Cell cell, JsonPlace pointer)
    {
        if (cell.Format.Kind is FormatKind.Plain or FormatKind.Zeros)
            return new TextNode(pointer, CellDigits.Plain(number));
        var isTime = cell.Format.Kind is FormatKind.Time or FormatKind.Duration;
        if (isTime || (cell.Format.Kind is FormatKind.DateAndTime && number != Math.Floor(number)))
            return Report(CellFindings.TimeNotDate, pointer, $"the cell holds a time of day or a span of hours") as TextNode;
        if (SpreadsheetSerial.ToDate((decimal)number, counts1904) is { } day)
            return new TextNode(pointer, NodaTime.Text.LocalDatePattern.Iso.Format(day));
        return Report(
                CellFindings.NoSuchDay,
                pointer,
                $"day {CellReading.Shown(cell.Raw)} of the workbook's date system is not a day of the calendar"
            ) as TextNode;
    }

    private SourceNode Digits(double number, Cell cell, ColumnKind kind, JsonPlace pointer)
    {
        var digits = CellDigits.Plain(number);
        if (cell.Format.Kind is FormatKind.Zeros)
            digits = digits.PadLeft(cell.Format.Zeros, '0');
        else if (CellDigits.MayHaveLostDigits(number))
            Report(CellFindings.DigitsLost, pointer, $"{CellReading.Shown(digits)} is stored as a number");
        else if (kind is ColumnKind.Identity)
            Report(CellFindings.NumberAsIdentity, pointer, $"{digits} is stored as a number");
        return kind is ColumnKind.List ? new ListNode(pointer, [new TextNode($"{pointer}/0", digits)]) : new TextNode(pointer, digits);
    }

    private SourceNode? Report(RuleInfo rule, JsonPlace pointer, Message message)
    {
        notes.Report(rule, pointer.ToString(), message);
        return null;
    }
}

using System.Globalization;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Reading;
using NodaTime.Text;

namespace ExamDocs.Intake.OwnList.Sheets;

/// <summary>Makes of a cell what its reader sees.</summary>
internal static class ListCells
{
    /// <summary>Null where nothing is to be seen.</summary>
    public static ListCell? Of(Cell cell, bool counts1904)
    {
        var shown = cell.Kind switch
        {
            CellKind.Number => Number(cell, counts1904),
            CellKind.IsoDate => Iso(cell.Raw),
            CellKind.Boolean => new ListCell(cell.Raw is "1" or "true" ? "yes" : "no"),
            CellKind.Text => new ListCell(cell.Raw.Trim()),
            _ => new ListCell(cell.Raw) { IsUnsound = true },
        };
        return shown.Text.Length == 0 && !shown.IsUnsound ? null : shown with { IsStruck = cell.IsStruck, IsFormula = cell.IsFormula };
    }

    private static ListCell Number(Cell cell, bool counts1904)
    {
        if (CellDigits.Parse(cell.Raw) is not { } number)
            return new ListCell(cell.Raw) { IsUnsound = true };
        var plain = CellDigits.Plain(number);
        if (
            cell.Format.Kind is FormatKind.Date or FormatKind.DateAndTime
            && decimal.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out var serial)
            && SpreadsheetSerial.ToDate(serial, counts1904) is { } day
        )
            return new ListCell(LocalDatePattern.Iso.Format(day), day);
        if (cell.Format.Kind is FormatKind.Zeros && plain.All(char.IsAsciiDigit))
            plain = plain.PadLeft(cell.Format.Zeros, '0');
        return new ListCell(plain) { IsUnsound = CellDigits.MayHaveLostDigits(number) };
    }

    private static ListCell Iso(string raw) =>
        new(raw.Trim(), raw.Trim() is { Length: >= 10 } long10 ? DateText.ReadDay(long10[..10]) : null);
}

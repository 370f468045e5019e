using System.Globalization;
using ClosedXML.Excel;
using ExamDocs.Intake.Workbook.Writing;

namespace ExamDocs.Intake.Workbook.Tables;

/// <summary>Writes a workbook of tables to look through, each with filters. It is read by nothing of ours, and holds no formula.</summary>
public static class TableWorkbook
{
    /// <summary>Wide enough for most texts; longer ones wrap.</summary>
    private const int WidestColumn = 48;

    /// <summary>Height of a line, points, and the greatest height that a row may have.</summary>
    private const double LineHeight = 15,
        HighestRow = 405;

    private const int NarrowestColumn = 10;

    /// <summary>Room for the button of a filter.</summary>
    private const int FilterButton = 4;

    /// <summary>The format wants a date of making; a fixed one keeps equal content equal, whenever it is written.</summary>
    private static readonly DateTime Made = new(2026, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    /// <param name="sheets">One at least; each with another name.</param>
    /// <returns>The whole workbook.</returns>
    public static byte[] Of(IReadOnlyList<TableSheet> sheets)
    {
        ArgumentNullException.ThrowIfNull(sheets);
        using var workbook = new XLWorkbook();
        (workbook.Properties.Author, workbook.Properties.Created, workbook.Properties.Modified) = ("ExamDocs", Made, Made);
        foreach (var (at, sheet) in sheets.Index())
            Write(workbook.AddWorksheet(sheet.Name), sheet, string.Create(CultureInfo.InvariantCulture, $"Table{at + 1}"));
        using var whole = new MemoryStream();
        workbook.SaveAs(whole);
        PrintTitles.Fix(whole);
        FixedParts.Set(whole);
        return whole.ToArray();
    }

    private static void Write(IXLWorksheet sheet, TableSheet table, string name)
    {
        for (var column = 0; column < table.Headings.Count; column++)
            sheet.Cell(1, column + 1).SetValue<string>(table.Headings[column]);
        for (var row = 0; row < table.Rows.Count; row++)
        {
            for (var column = 0; column < table.Headings.Count; column++)
                Write(sheet.Cell(row + 2, column + 1), table.Rows[row][column]);
        }
        // A table of no rows is none: the format wants one beneath the headings.
        var made = sheet.Range(1, 1, Math.Max(table.Rows.Count, 1) + 1, table.Headings.Count).CreateTable(name);
        made.Theme = XLTableTheme.TableStyleLight1;
        for (var column = 0; column < table.Headings.Count; column++)
            sheet.Column(column + 1).Width = WidthOf(table, column);
        SetHeights(sheet, table);
        sheet.Row(1).Style.Alignment.SetWrapText();
        sheet.Row(1).Style.Alignment.SetVertical(XLAlignmentVerticalValues.Top);
        sheet.SheetView.FreezeRows(1);
        SetUpPage(sheet);
    }

    private static void Write(IXLCell cell, object? value)
    {
        switch (value)
        {
            case null:
                break;
            case string text:
                CellWriting.WriteText(cell, text);
                cell.Style.Alignment.SetWrapText();
                break;
            case int number:
                cell.SetValue(number);
                break;
            case double number:
                cell.SetValue(number);
                break;
            default:
                throw new ArgumentException($"a cell holds a text or a number, not {value.GetType().Name}", nameof(value));
        }
    }

    /// <summary>A text that wraps is cut off where its row has the height of one line.</summary>
    private static void SetHeights(IXLWorksheet sheet, TableSheet table)
    {
        var widths = table.Headings.Select((_, column) => WidthOf(table, column)).ToList();
        foreach (var (at, row) in table.Rows.Index())
        {
            var lines = row.Select((value, column) => LinesOf(value as string, widths[column])).Max();
            sheet.Row(at + 2).Style.Alignment.SetVertical(XLAlignmentVerticalValues.Top);
            if (lines > 1)
                sheet.Row(at + 2).Height = Math.Min(lines * LineHeight, HighestRow);
        }
    }

    /// <summary>Words do not fill their lines, so one in ten characters is given away.</summary>
    private static int LinesOf(string? text, double width) =>
        (text ?? "").Split('\n').Sum(line => Math.Max(1, (int)Math.Ceiling(line.Length / (width * 0.9))));

    private static double WidthOf(TableSheet table, int column)
    {
        var longest = table.Rows.Select(r => (r[column] as string)?.Length ?? 0).DefaultIfEmpty(0).Max();
        var heading = table.Headings[column].Split(' ').Max(w => w.Length) + FilterButton;
        return Math.Clamp(Math.Max(longest + 1, heading), NarrowestColumn, WidestColumn);
    }

    private static void SetUpPage(IXLWorksheet sheet)
    {
        sheet.PageSetup.FitToPages(1, 0);
        sheet.PageSetup.PageOrientation = XLPageOrientation.Landscape;
        sheet.PageSetup.PaperSize = XLPaperSize.A4Paper;
        sheet.PageSetup.SetRowsToRepeatAtTop(1, 1);
        sheet.PageSetup.Header.Left.AddText(sheet.Name);
        sheet.PageSetup.Footer.Right.AddText(XLHFPredefinedText.PageNumber);
    }
}

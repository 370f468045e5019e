using System.Globalization;
using ClosedXML.Excel;
using ExamDocs.Intake.Workbook.Writing;

namespace ExamDocs.Intake.Workbook.Tables;

/// <summary>Writes a workbook of tables to look through, each with filters. It is read by nothing of ours, and holds no formula.</summary>
public static class TableWorkbook
{
    /// <summary>Wide enough for most texts; longer ones wrap.</summary>
    private const int WidestColumn = 48;

    private const int NarrowestColumn = 10;

    /// <summary>Room for the button of a filter.</summary>
    private const int FilterButton = 4;

    /// <summary>Of a line of the usual letters, in points, and the most that a row can have.</summary>
    private const double LineHeight = 15,
        HighestRow = 409;

    /// <summary>Letters of other fonts are wider: of a column's width so much is counted on.</summary>
    private const double SureOfWidth = 0.9;

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
        sheet.Row(1).Style.Alignment.SetWrapText();
        made.Style.Alignment.SetVertical(XLAlignmentVerticalValues.Top);
        // Not every program makes rows as high as their texts, least of all in print.
        SetHeight(sheet, 1, table.Headings, FilterButton / 2);
        for (var row = 0; row < table.Rows.Count; row++)
            SetHeight(sheet, row + 2, table.Rows[row], 0);
        sheet.SheetView.FreezeRows(1);
        TableLooks.Apply(sheet, table);
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

    private static double WidthOf(TableSheet table, int column)
    {
        var longest = table.Rows.Select(r => (r[column] as string)?.Length ?? 0).DefaultIfEmpty(0).Max();
        var heading = table.Headings[column].Split(' ').Max(w => w.Length) + FilterButton;
        return Math.Clamp(Math.Max(longest + 1, heading), NarrowestColumn, WidestColumn);
    }

    private static void SetHeight(IXLWorksheet sheet, int row, IReadOnlyList<object?> cells, int taken)
    {
        var lines = cells
            .Index()
            .Max(c => c.Item is string text ? text.Split('\n').Sum(line => Lines(line, sheet.Column(c.Index + 1).Width - taken)) : 1);
        sheet.Row(row).Height = Math.Min(lines * LineHeight, HighestRow);
    }

    /// <summary>How many lines a text takes that is broken between its words.</summary>
    private static int Lines(string text, double width)
    {
        if (text.Length < width)
            return 1;
        width = Math.Max(width * SureOfWidth, 1);
        var (lines, used) = (1, 0d);
        foreach (var word in text.Split(' '))
        {
            if (used > 0 && used + word.Length > width)
                (lines, used) = (lines + 1, 0);
            lines += (int)(word.Length / width);
            used += (word.Length % width) + 1;
        }
        return lines;
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

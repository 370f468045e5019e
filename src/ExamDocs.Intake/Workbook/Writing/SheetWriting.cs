using ClosedXML.Excel;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Writing;

/// <summary>Writes a sheet with one row per entry: headings, rows, lists to choose from, page set-up.</summary>
internal sealed class SheetWriting(XLWorkbook workbook, DropDowns dropDowns)
{
    /// <summary>Rows made ready beyond those that are filled.</summary>
    public const int RowsToSpare = 300;

    /// <summary>Across A4 landscape, at a size that can still be read.</summary>
    private const double CharactersPerPage = 180;

    /// <returns>The last row that has lists to choose from.</returns>
    public int Write(SheetShape shape, IEnumerable<CaptureRow> rows)
    {
        var sheet = workbook.AddWorksheet(shape.Name);
        FormatColumns(sheet, shape.Columns);
        HeadingStyle.Write(sheet, shape.Columns, Shown(shape));
        var last = WriteRows(sheet, shape.Columns, rows, Shown(shape).Count());
        for (var n = 0; n < shape.Columns.Count; n++)
        {
            var column = shape.Columns[n];
            if (column.Words.Count > 0)
                dropDowns.Offer(
                    sheet.Range(2, n + 1, last + RowsToSpare, n + 1),
                    column.Words,
                    isOnly: column.Group is not ColumnGroup.Criterion
                );
        }
        sheet.SheetView.Freeze(1, 2);
        if (shape.Role is SheetRole.Items)
            FoldSeldomNeeded(sheet, shape.Columns);
        else
            Protect(sheet);
        SetUpPage(sheet, Shown(shape).Sum(HeadingStyle.Width));
        return last + RowsToSpare;
    }

    /// <summary>Columns that are not folded away.</summary>
    private static IEnumerable<Column> Shown(SheetShape shape) =>
        shape.Role is SheetRole.Items ? shape.Columns.Where(c => c.IsUsual) : shape.Columns;

    /// <summary>
    /// Columns that few rows need are one click away. A protected sheet could not unfold them, so that a sheet of items has none:
    /// a mistyped heading is found when it is read.
    /// </summary>
    private static void FoldSeldomNeeded(IXLWorksheet sheet, IReadOnlyList<Column> columns)
    {
        var first = columns.TakeWhile(c => c.IsUsual).Count() + 1;
        if (first > columns.Count)
            return;
        sheet.Outline.SummaryHLocation = XLOutlineSummaryHLocation.Left;
        var folded = sheet.Columns(first, columns.Count);
        folded.Group();
        folded.Hide();
    }

    /// <param name="width">Width of all columns in characters: pages are as many as keep the print legible.</param>
    public static void SetUpPage(IXLWorksheet sheet, double width)
    {
        sheet.PageSetup.FitToPages((int)Math.Ceiling(width / CharactersPerPage), 0);
        sheet.PageSetup.PageOrientation = XLPageOrientation.Landscape;
        sheet.PageSetup.PaperSize = XLPaperSize.A4Paper;
        sheet.PageSetup.SetRowsToRepeatAtTop(1, 1);
        sheet.PageSetup.Header.Left.AddText(sheet.Name);
        sheet.PageSetup.Footer.Right.AddText(XLHFPredefinedText.PageNumber);
    }

    /// <summary>
    /// Whatever is not a number is text, dates too: a date cell can hold neither "2024-02" nor a wrong date as it was
    /// typed, and shows the same day differently from one computer to the next.
    /// </summary>
    private static void FormatColumns(IXLWorksheet sheet, IReadOnlyList<Column> columns)
    {
        for (var n = 0; n < columns.Count; n++)
        {
            var style = sheet.Column(n + 1).Style;
            style.Alignment.Vertical = XLAlignmentVerticalValues.Top;
            style.Alignment.WrapText = true;
            style.Protection.SetLocked(columns[n].Group is ColumnGroup.LastTime);
            if (columns[n].Kind is not (ColumnKind.Number or ColumnKind.NumberInList))
                style.NumberFormat.Format = "@";
        }
        if (columns.Count > 8)
            sheet.PageSetup.SetColumnsToRepeatAtLeft(1, 2);
    }

    /// <summary>
    /// What nobody is to type in is locked, headings above all: a heading mistyped makes a column unread. There is no
    /// password, so whoever wants to move columns can.
    /// </summary>
    public static void Protect(IXLWorksheet sheet) =>
        sheet
            .Protect()
            .AllowElement(
                XLSheetProtectionElements.FormatCells
                    | XLSheetProtectionElements.FormatColumns
                    | XLSheetProtectionElements.FormatRows
                    | XLSheetProtectionElements.InsertRows
                    | XLSheetProtectionElements.DeleteRows
                    | XLSheetProtectionElements.Sort
                    | XLSheetProtectionElements.AutoFilter
                    | XLSheetProtectionElements.InsertHyperlinks
                    | XLSheetProtectionElements.EditObjects
            );

    private static int WriteRows(IXLWorksheet sheet, IReadOnlyList<Column> columns, IEnumerable<CaptureRow> rows, int shown)
    {
        var at = 1;
        foreach (var row in rows)
        {
            at++;
            for (var n = 0; n < columns.Count; n++)
            {
                if (row.TryGetValue(columns[n].Heading, out var node))
                    CellWriting.Write(sheet.Cell(at, n + 1), node);
            }
            RowHeight.Set(sheet, at, columns.Take(shown).Select(HeadingStyle.Width));
        }
        return at;
    }
}

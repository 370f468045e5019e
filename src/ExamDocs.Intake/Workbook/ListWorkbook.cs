using System.Globalization;
using ClosedXML.Excel;
using ExamDocs.Intake.Workbook.Writing;

namespace ExamDocs.Intake.Workbook;

/// <summary>A list as a sheet.</summary>
/// <param name="Name">At most 31 characters, as a sheet's name may have.</param>
/// <param name="Headings">One for each column.</param>
/// <param name="Rows">A value for each column: a whole number, or a text; null for an empty cell.</param>
public sealed record ListSheet(string Name, IReadOnlyList<string> Headings, IReadOnlyList<IReadOnlyList<object?>> Rows);

/// <summary>
/// Writes lists to look at, filter and print. Nothing reads them back. A text stays a text, whatever it begins with; days are texts too,
/// year first, so that they sort.
/// </summary>
public static class ListWorkbook
{
    private const string HeadingFill = "#DDEBF7";
    private const int HeadingLines = 3;
    private const int Narrowest = 8;
    private const int Widest = 32;

    /// <summary>Fixed, as in <see cref="CaptureWorkbook"/>, so that equal lists give equal content.</summary>
    private static readonly DateTime Made = new(2026, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    /// <param name="output">Where the workbook is written; it is left open.</param>
    /// <param name="sheets">At least one.</param>
    public static void Write(Stream output, IReadOnlyList<ListSheet> sheets)
    {
        ArgumentNullException.ThrowIfNull(sheets);
        using var workbook = new XLWorkbook();
        (workbook.Properties.Author, workbook.Properties.Created, workbook.Properties.Modified) = ("ExamDocs", Made, Made);
        foreach (var list in sheets)
            Write(workbook.AddWorksheet(list.Name), list);
        using var whole = new MemoryStream();
        workbook.SaveAs(whole);
        PrintTitles.Fix(whole);
        whole.WriteTo(output);
    }

    private static void Write(IXLWorksheet sheet, ListSheet list)
    {
        var widths = list.Headings.Select((heading, n) => Width(list, heading, n)).ToList();
        for (var n = 0; n < widths.Count; n++)
        {
            CellWriting.WriteText(sheet.Cell(1, n + 1), list.Headings[n]);
            HeadingStyle.Paint(sheet.Cell(1, n + 1), HeadingFill);
            sheet.Column(n + 1).Width = widths[n];
            sheet.Column(n + 1).Style.Alignment.WrapText = true;
            sheet.Column(n + 1).Style.Alignment.Vertical = XLAlignmentVerticalValues.Top;
        }
        foreach (var (at, row) in list.Rows.Index())
        {
            for (var n = 0; n < row.Count; n++)
            {
                if (row[n] is int number)
                    sheet.Cell(at + 2, n + 1).SetValue(number);
                else if (row[n] is string text)
                    CellWriting.WriteText(sheet.Cell(at + 2, n + 1), text);
            }
        }
        sheet.Row(1).Height = (RowHeight.OfLine * HeadingLines) + 3;
        sheet.SheetView.FreezeRows(1);
        sheet.Range(1, 1, list.Rows.Count + 1, list.Headings.Count).SetAutoFilter();
        SheetWriting.SetUpPage(sheet, widths.Sum());
    }

    private static double Width(ListSheet list, string heading, int column)
    {
        var longest = list
            .Rows.Select(r => Convert.ToString(r[column], CultureInfo.InvariantCulture)?.Length ?? 0)
            .Append(heading.Split(' ').Max(w => w.Length) + 4) // room for the sign of the filter
            .Max();
        return Math.Clamp(longest + 2, Narrowest, Widest);
    }
}

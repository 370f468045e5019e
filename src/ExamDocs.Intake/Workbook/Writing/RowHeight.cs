using ClosedXML.Excel;

namespace ExamDocs.Intake.Workbook.Writing;

/// <summary>
/// Heights of rows with wrapped text, worked out from its length: not every program makes rows higher by itself when it
/// opens a file.
/// </summary>
internal static class RowHeight
{
    /// <summary>Points.</summary>
    public const double OfLine = 15;

    private const double Highest = 400;

    /// <summary>Characters of text per unit of column width, on the safe side.</summary>
    private const double PerUnit = 0.9;

    /// <param name="widths">Column widths from the first column on.</param>
    public static void Set(IXLWorksheet sheet, int row, IEnumerable<double> widths)
    {
        var width = widths.ToList();
        var lines = sheet
            .Row(row)
            .CellsUsed(XLCellsUsedOptions.Contents)
            .Where(c => c.Address.ColumnNumber <= width.Count)
            .Select(c => Lines(c.GetString(), width[c.Address.ColumnNumber - 1]))
            .DefaultIfEmpty(1)
            .Max();
        if (lines > 1)
            sheet.Row(row).Height = Math.Min(Highest, (lines * OfLine) + 2);
    }

    private static int Lines(string text, double width) =>
        text.Split('\n').Sum(line => Math.Max(1, (int)Math.Ceiling(line.Length / Math.Max(1, width * PerUnit))));
}

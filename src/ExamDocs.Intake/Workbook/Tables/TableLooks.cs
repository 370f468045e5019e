using ClosedXML.Excel;

namespace ExamDocs.Intake.Workbook.Tables;

/// <summary>Gives columns their formats: not single cells, so that they stay right when rows are sorted.</summary>
internal static class TableLooks
{
    private static readonly XLColor Bar = XLColor.FromHtml("#9DB8D2");

    private static readonly XLColor Grey = XLColor.FromHtml("#6B6B6B");

    public static void Apply(IXLWorksheet sheet, TableSheet table)
    {
        if (table.Rows.Count == 0)
            return;
        foreach (var look in table.Looks.OrderBy(l => l.GreyAt is null))
        {
            var column = table.Headings.ToList().IndexOf(look.Heading) + 1;
            var cells = sheet.Range(2, column, table.Rows.Count + 1, column);
            if (look.Format is { } format)
                cells.Style.NumberFormat.Format = format;
            if (look.GreyAt is { } text)
                MakeGrey(sheet, table, cells.FirstCell().Address, text);
            if (look.HasBars)
                cells.AddConditionalFormat().DataBar(Bar).Minimum(XLCFContentType.Number, 0).HighestValue();
        }
    }

    /// <summary>Comes before the bars and stops them.</summary>
    private static void MakeGrey(IXLWorksheet sheet, TableSheet table, IXLAddress first, string text)
    {
        var format = sheet.Range(2, 1, table.Rows.Count + 1, table.Headings.Count).AddConditionalFormat();
        format
            .WhenIsTrue($"${first.ColumnLetter}{first.RowNumber}=\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"")
            .Font.SetFontColor(Grey)
            .Font.SetItalic();
        format.SetStopIfTrue();
    }
}

using System.Globalization;
using System.Text;

namespace ExamDocs.Intake.Workbook.Tables;

/// <summary>
/// Writes a table as values separated by commas (RFC 4180). A text that a spreadsheet program would take for a formula gets an apostrophe
/// before it, so that it stays a text.
/// </summary>
public static class TableCsv
{
    private const string BeginsFormula = "=+-@\t\r\n＝＋－＠";

    /// <returns>The whole file, in UTF-8 with a mark that says so.</returns>
    public static byte[] Of(TableSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var text = new StringBuilder();
        foreach (var row in sheet.Rows.Prepend(sheet.Headings))
            text.AppendJoin(',', row.Select(Cell)).Append("\r\n");
        return [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(text.ToString())];
    }

    private static string Cell(object? value) =>
        value switch
        {
            null => "",
            string text => $"\"{Plain(text).Replace("\"", "\"\"", StringComparison.Ordinal)}\"",
            _ => Convert.ToString(value, CultureInfo.InvariantCulture)!,
        };

    private static string Plain(string text) => BeginsFormula.Any(c => text.TrimStart(' ').StartsWith(c)) ? $"'{text}" : text;
}

using System.Xml;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Csv;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.OwnList.Sheets;

/// <summary>
/// Reads a firm's own list, taken for hostile as every input is: with the readers and the limits that a record's workbook and
/// files of separated values are read with.
/// </summary>
public static class ListBookReader
{
    /// <param name="bytes">The file.</param>
    /// <param name="fileName">Its name without a folder.</param>
    /// <returns>Never throws for what the file holds: that is said in <see cref="ListBook.Unreadable"/>.</returns>
    public static ListBook Read(byte[] bytes, string fileName)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        ArgumentNullException.ThrowIfNull(fileName);
        try
        {
            var isText = Path.GetExtension(fileName).ToLowerInvariant() is ".csv" or ".tsv" or ".txt";
            return new ListBook(fileName, isText ? [Separated(bytes, fileName)] : Sheets(bytes), null);
        }
        catch (UnreadableWorkbookException e)
        {
            return new ListBook(fileName, [], e.Message);
        }
        catch (Exception e) when (e is XmlException or InvalidDataException or EndOfStreamException or NotSupportedException)
        {
            return new ListBook(
                fileName,
                [],
                "It is damaged, or no workbook that can be read. Open it in a spreadsheet program and save it again as .xlsx."
            );
        }
    }

    private static ListSheet Separated(byte[] bytes, string fileName)
    {
        var text = CsvText.Of(bytes);
        var (separator, separated) = CsvRows.SeparatorOf(text.Text);
        var rows = CsvRows.Read(text.Text, separator, new ReadingBudget()).Select(r => Row(r, counts1904: false)).ToList();
        return new ListSheet(Path.GetFileNameWithoutExtension(fileName), rows)
        {
            Remarks = [$"{fileName} was read as {text.Encoding}, its values separated by {separated}"],
            IsSeparated = true,
        };
    }

    private static List<ListSheet> Sheets(byte[] bytes)
    {
        var budget = new ReadingBudget();
        using var stream = new MemoryStream(bytes, writable: false);
        using var package = WorkbookPackage.Open(stream, budget);
        var directory = WorkbookDirectory.Read(package);
        var reading = new ListSheetReading(package, directory, budget);
        return [.. directory.Sheets.Select(reading.Read)];
    }

    internal static ListRow Row(SheetRow row, bool counts1904)
    {
        var cells = new SortedDictionary<int, ListCell>();
        foreach (var cell in row.Cells)
        {
            if (ListCells.Of(cell, counts1904) is { } shown)
                cells[cell.Column] = shown;
        }
        return new ListRow(row.Number, cells) { IsHidden = row.Hidden };
    }
}

using CsvHelper;
using ExamDocs.Core.Findings;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Csv;

/// <summary>Reads the rows of a text with separators (RFC 4180) as the rows of a sheet; a row's number is its first line's.</summary>
internal static class CsvRows
{
    private static readonly (char Separator, Message Name)[] Separators = [(';', $"semicolons"), ('\t', $"tabs"), (',', $"commas")];

    /// <summary>The separator that divides the first line most often, and its name; commas where none does.</summary>
    public static (char Separator, Message Name) SeparatorOf(string text)
    {
        var first = FirstLine(text);
        var best = Separators.MaxBy(s => Count(first, s.Separator));
        return Count(first, best.Separator) == 0 ? Separators[^1] : best;
    }

    /// <exception cref="UnreadableWorkbookException">A quote is never closed, a row is ragged, or the text is too much.</exception>
    public static IEnumerable<SheetRow> Read(string text, char separator, ReadingBudget budget)
    {
        using var reader = CsvReader.Create(new StringReader(text), Options(separator), false);
        while (Next(reader))
        {
            budget.Row();
            var cells = new List<Cell>();
            for (var field = 0; field < reader.FieldCount; field++)
            {
                budget.Cell();
                var value = reader.GetString(field).Trim();
                if (value.Length == 0)
                    continue;
                if (value.Length > TextGuard.MaxReadable)
                    throw new UnreadableWorkbookException(
                        string.Create(
                            System.Globalization.CultureInfo.InvariantCulture,
                            $"line {reader.LineNumber}, value {field + 1}: the text is longer than 32,767 characters; an "
                                + $"identity may have {TextGuard.MaxIdentity}, any other text 2,000"
                        )
                    );
                budget.FilledCell();
                budget.Text(value.Length);
                cells.Add(new Cell(field + 1, CellKind.Text, value, default, IsFormula: false));
            }
            if (cells.Count > 0)
                yield return new SheetRow((int)reader.LineNumber, Hidden: false, cells.ToArray());
        }
    }

    private static CsvReaderOptions Options(char separator) =>
        new()
        {
            HasHeader = false,
            Separator = separator,
            MalformedData = CsvMalformedDataHandling.Throw,
            FieldCountMismatch = CsvFieldCountHandling.Throw,
            TrackLineNumbers = true,
            SkipEmptyLines = true,
            MaxRecordSize = WorkbookLimits.BytesBetweenTags,
            IncludeValuesInExceptions = false,
            TrimWhitespace = false,
        };

    private static bool Next(CsvReader reader)
    {
        try
        {
            return reader.Read();
        }
        catch (CsvFormatException e)
        {
            throw new UnreadableWorkbookException(
                string.Create(
                    System.Globalization.CultureInfo.InvariantCulture,
                    $"line {e.LineNumber} breaks the rules of separated values: every quote is closed, every line has as many "
                        + $"fields as the first ({e.Message})"
                )
            );
        }
    }

    private static string FirstLine(string text)
    {
        var end = text.AsSpan().IndexOfAny('\r', '\n');
        return end < 0 ? text : text[..end];
    }

    private static int Count(string line, char separator)
    {
        var (count, quoted) = (0, false);
        foreach (var character in line)
        {
            if (character == '"')
                quoted = !quoted;
            else if (character == separator && !quoted)
                count++;
        }
        return count;
    }
}

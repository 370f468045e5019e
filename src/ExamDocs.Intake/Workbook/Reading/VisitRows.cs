using ExamDocs.Core.Findings;
using ExamDocs.Intake.Vocabulary;
using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>Reads the sheet about the visit, on which headings stand in the first column and values in the second.</summary>
internal sealed class VisitRows(DraftObject record, RowFilling filling, CellReading reading, ReadingNotes notes)
{
    private const int ParticularColumn = 1;
    private const int ValueColumn = 2;
    private const int HelpColumn = 3;

    private bool _hasHelp;

    /// <summary>The headings, then the row that declares the order of dates, wherever it stands: the other dates are read by it.</summary>
    public static IEnumerable<SheetRow> Ordered(IEnumerable<SheetRow> rows) =>
        rows.OrderBy(row =>
            HeadingOf(row) switch
            {
                VisitSheet.ParticularHeading => 0,
                VisitSheet.DateOrderHeading => 1,
                _ => 2,
            }
        );

    /// <returns>Whether the row is a particular of the visit.</returns>
    public bool Add(string sheet, SheetRow row)
    {
        var cells = row.Cells.ToDictionary(c => c.Column);
        string At(int column) =>
            $"{sheet}!{CellAddress.Letters(column)}{row.Number.ToString(System.Globalization.CultureInfo.InvariantCulture)}";
        var heading = HeadingOf(row);
        if (heading is VisitSheet.ParticularHeading)
        {
            _hasHelp = cells.TryGetValue(HelpColumn, out var heads) && Heading.Key(heads.Raw) is VisitSheet.HelpHeading;
            return false;
        }
        Cell? value = cells.TryGetValue(ValueColumn, out var second) ? second : null;
        var column = VisitSheet.Shape.Columns.FirstOrDefault(c => string.Equals(c.Heading, heading, StringComparison.Ordinal));
        ReportBeside(row, column, At);
        if (heading is VisitSheet.DateOrderHeading)
            Declare(value, At(ValueColumn));
        else if (column is not null)
            Put(heading is VisitSheet.FormatHeading ? record : record.Child("visit"), column, value, At(ValueColumn));
        else if (value is not null)
            notes.Report(
                SheetFindings.UnknownColumn,
                $"/visit/{ReadingNotes.Escape(CellReading.Shown(heading))}",
                At(ValueColumn),
                $"'{CellReading.Shown(row.Cells[0].Column is ParticularColumn ? row.Cells[0].Raw : "")}' is not a particular of a visit",
                hint: HeadingWords.Near(VisitSheet.Shape, heading) is { } near ? (Message)$"Did you mean '{near}'?" : null
            );
        return column is not null;
    }

    /// <summary>What was typed where nothing is read, or over the words that help.</summary>
    private void ReportBeside(SheetRow row, Column? column, Func<int, string> at)
    {
        foreach (var cell in row.Cells.Where(c => c.Column >= HelpColumn))
        {
            var outside =
                $"/visit/{CellAddress.Letters(cell.Column)}{row.Number.ToString(System.Globalization.CultureInfo.InvariantCulture)}";
            if (cell.Column > HelpColumn || !_hasHelp)
                notes.Report(SheetFindings.NoHeading, outside, at(cell.Column), $"'{CellReading.Shown(cell.Raw)}' has no heading above it");
            else if (!string.Equals(Heading.Normal(cell.Raw), Heading.Normal(column?.Help ?? ""), StringComparison.Ordinal))
                notes.Report(
                    BesideFindings.HelperAltered,
                    outside,
                    at(cell.Column),
                    $"'{CellReading.Shown(cell.Raw)}' is where the program says what to type"
                );
        }
    }

    private static string HeadingOf(SheetRow row) =>
        row.Cells[0] is { Column: ParticularColumn, Kind: CellKind.Text } first ? Heading.Key(first.Raw) : "";

    private void Declare(Cell? value, string address)
    {
        if (value is not { } filled)
            return;
        reading.Dates = DateOrders.Find(Synonyms.Find(filled.Raw, DateOrders.Words)?.Word ?? filled.Raw);
        if (reading.Dates is null)
            notes.Report(
                IntakeRules.UnknownWord,
                "/visit/date order",
                address,
                $"'{CellReading.Shown(filled.Raw)}' is not an order of dates",
                hint: $"Allowed: {string.Join(", ", DateOrders.Words)}."
            );
    }

    private void Put(DraftObject target, Column column, Cell? value, string address)
    {
        notes.Place($"{target.Pointer}/{column.Path}", address);
        notes.Place($"{target.Pointer}/{column.Path.Split('/')[0]}", address);
        filling.Put(target, column, value);
    }
}

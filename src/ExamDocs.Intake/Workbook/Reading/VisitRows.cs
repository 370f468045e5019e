using ExamDocs.Core.Findings;
using ExamDocs.Intake.Vocabulary;
using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>
/// Reads the sheet about the visit, on which headings stand in the first column and values in the second; people stand there side by
/// side, from the second column on.
/// </summary>
internal sealed class VisitRows(DraftObject record, RowFilling filling, CellReading reading, ReadingNotes notes)
{
    private const int ParticularColumn = 1;
    private const int ValueColumn = 2;
    private const int HelpColumn = 3;

    /// <summary>What the capture workbook writes above some rows, with nothing beside it.</summary>
    private static readonly HashSet<string> Titles = [.. VisitSheet.Sections.Select(s => Heading.Key(s.Title))];

    private readonly PeopleOnVisit _people = new(record, filling, notes);
    private bool _hasHelp;

    /// <summary>Number of the row with the headings; above it somebody's own title may stand.</summary>
    private int _headings = int.MaxValue;

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

    /// <returns>The last column of the row of which something is read; 0 where nothing is.</returns>
    public int Add(string sheet, SheetRow row)
    {
        var heading = HeadingOf(row);
        if (heading is VisitSheet.ParticularHeading)
        {
            _headings = row.Number;
            _hasHelp = Find(row, HelpColumn) is { } head && Heading.Key(head.Raw) is VisitSheet.HelpHeading;
            return 0;
        }
        if (_people.Takes(row, heading))
            return int.MaxValue;
        if (heading is VisitSheet.PeopleHeading)
        {
            ReportPeopleHeads(sheet, row);
            return 0;
        }
        var column = VisitSheet.Find(heading);
        ReportBeside(sheet, row, column);
        Put(sheet, row, heading, column);
        return column is null ? 0 : ValueColumn;
    }

    /// <summary>Adds the people, when all rows are read.</summary>
    public void AddPeople(string sheet) => _people.Finish(sheet);

    private void Put(string sheet, SheetRow row, string heading, Column? column)
    {
        var (value, address) = (Find(row, ValueColumn), Address(sheet, row, ValueColumn));
        if (heading is VisitSheet.DateOrderHeading)
            Declare(value, address);
        else if (column is not null)
            Put(heading is VisitSheet.FormatHeading ? record : record.Child("visit"), column, value, address);
        else if (value is not null || (row.Number > _headings && heading.Length > 0 && !Titles.Contains(heading)))
            notes.Report(
                SheetFindings.UnknownColumn,
                $"/visit/{ReadingNotes.Escape(CellReading.Shown(heading))}",
                value is null ? Address(sheet, row, ParticularColumn) : address,
                $"'{CellReading.Shown(row.Cells[0].Column is ParticularColumn ? row.Cells[0].Raw : "")}' is not a particular of a visit",
                hint: Near(heading) is { } near ? (Message)$"Did you mean '{near}'?" : null
            );
    }

    private static string? Near(string heading) =>
        HeadingWords.NearColumn(VisitSheet.Shape.Columns.Concat(VisitSheet.OfPerson), heading)?.Heading;

    /// <summary>What was typed where nothing is read, or over the words that help.</summary>
    private void ReportBeside(string sheet, SheetRow row, Column? column)
    {
        foreach (var cell in row.Cells.Where(c => c.Column >= HelpColumn))
        {
            if (cell.Column > HelpColumn || !_hasHelp)
                notes.Report(
                    SheetFindings.NoHeading,
                    Outside(row, cell),
                    Address(sheet, row, cell.Column),
                    $"'{CellReading.Shown(cell.Raw)}' has no heading above it"
                );
            else if (!string.Equals(Heading.Normal(cell.Raw), Heading.Normal(column?.Help ?? ""), StringComparison.Ordinal))
                ReportAltered(sheet, row, cell);
        }
    }

    private void ReportPeopleHeads(string sheet, SheetRow row)
    {
        foreach (var cell in row.Cells.Where(c => c.Column >= ValueColumn))
        {
            if (!string.Equals(Heading.Key(cell.Raw), VisitSheet.Person(cell.Column - 1), StringComparison.Ordinal))
                ReportAltered(sheet, row, cell);
        }
    }

    private void ReportAltered(string sheet, SheetRow row, Cell cell) =>
        notes.Report(
            BesideFindings.HelperAltered,
            Outside(row, cell),
            Address(sheet, row, cell.Column),
            $"'{CellReading.Shown(cell.Raw)}' is where the program says what to type"
        );

    private static string Outside(SheetRow row, Cell cell) => $"/visit/{CellAddress.Of(row.Number, cell.Column)}";

    private static string Address(string sheet, SheetRow row, int column) => $"{sheet}!{CellAddress.Of(row.Number, column)}";

    private static Cell? Find(SheetRow row, int column)
    {
        foreach (var cell in row.Cells)
        {
            if (cell.Column == column)
                return cell;
        }
        return null;
    }

    private static string HeadingOf(SheetRow row) =>
        row.Cells[0] is { Column: ParticularColumn, Kind: CellKind.Text } first ? Heading.Key(first.Raw) : "";

    private void Declare(Cell? value, string address)
    {
        if (value is not { } filled)
            return;
        reading.Dates = DateOrders.Find(filled.Raw);
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
        notes.Place($"{target.Pointer}/{column.Path}", address, column.Heading);
        notes.Place($"{target.Pointer}/{column.Path.Split('/')[0]}", address, column.Heading);
        filling.Put(target, column, value);
    }
}

using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>Reads the sheet about the visit, on which headings stand in the first column and values in the second.</summary>
internal sealed class VisitRows(DraftObject record, RowFilling filling, ReadingNotes notes)
{
    private const int ParticularColumn = 1;
    private const int ValueColumn = 2;
    private const int HelpColumn = 3;

    private bool _hasHelp;

    public void Add(string sheet, SheetRow row)
    {
        var cells = row.Cells.ToDictionary(c => c.Column);
        string At(int column) => $"{sheet}!{CellAddress.Letters(column)}{row.Number.ToString(System.Globalization.CultureInfo.InvariantCulture)}";
        var heading = cells.TryGetValue(ParticularColumn, out var first) && first.Kind is CellKind.Text ? Heading.Normal(first.Raw) : "";
        if (heading is VisitSheet.ParticularHeading)
        {
            _hasHelp = cells.TryGetValue(HelpColumn, out var help) && Heading.Normal(help.Raw) is VisitSheet.HelpHeading;
            return;
        }
        foreach (var stray in row.Cells.Where(c => c.Column > HelpColumn || (c.Column == HelpColumn && !_hasHelp)))
            notes.Report(WorkbookFindings.NoHeading, Outside(stray.Column), At(stray.Column), $"'{CellReading.Shown(stray.Raw)}' stands under no heading");
        Cell? value = cells.TryGetValue(ValueColumn, out var second) ? second : null;
        var column = VisitSheet.Shape.Columns.FirstOrDefault(c => string.Equals(c.Heading, heading, StringComparison.Ordinal));
        if (column is not null)
            Put(heading is VisitSheet.FormatHeading ? record : record.Child("visit"), column, value, At(ValueColumn));
        else if (value is not null)
            notes.Report(WorkbookFindings.UnknownColumn, $"/visit/{ReadingNotes.Escape(CellReading.Shown(heading))}", At(ValueColumn),
                $"'{CellReading.Shown(first.Raw ?? "")}' is no particular of a visit");

        string Outside(int at) => $"/visit/{CellAddress.Letters(at)}{row.Number.ToString(System.Globalization.CultureInfo.InvariantCulture)}";
    }

    private void Put(DraftObject target, Column column, Cell? value, string address)
    {
        notes.Place($"{target.Pointer}/{column.Path}", address);
        notes.Place($"{target.Pointer}/{column.Path.Split('/')[0]}", address);
        filling.Put(target, column, value);
    }
}

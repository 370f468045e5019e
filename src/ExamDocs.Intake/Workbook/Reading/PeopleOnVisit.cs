using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>Reads the people on the sheet about the visit, who stand side by side: a column each.</summary>
internal sealed class PeopleOnVisit(DraftObject record, RowFilling filling, ReadingNotes notes)
{
    private const int FirstColumn = 2;
    private const string List = "/people";

    private readonly List<(SheetRow Row, Column Column)> _rows = [];

    /// <summary>Whether a row asks something of people; it is kept then.</summary>
    public bool Takes(SheetRow row, string heading)
    {
        if (VisitSheet.FindOfPerson(heading) is not { } column)
            return false;
        _rows.Add((row, column));
        return true;
    }

    /// <summary>Adds whoever has anything typed, from left to right.</summary>
    public void Finish(string sheet)
    {
        if (_rows is [var (first, _), ..])
            notes.Place(List, $"{sheet}!{CellAddress.Of(first.Number, 1)}");
        var columns = _rows.SelectMany(r => r.Row.Cells).Select(c => c.Column).Where(c => c >= FirstColumn).Distinct().Order();
        foreach (var at in columns.ToList())
            Add(sheet, at);
        _rows.Clear();
    }

    private void Add(string sheet, int at)
    {
        var list = record.List("people");
        var person = list.AddObject();
        foreach (var (row, column) in _rows)
        {
            var address = $"{sheet}!{CellAddress.Of(row.Number, at)}";
            if (column.Path is "id")
                notes.Place(person.Pointer, address, column.Heading);
            notes.Place($"{person.Pointer}/{column.Path}", address, column.Heading);
            notes.Place($"{person.Pointer}/{column.Path.Split('/')[0]}", address, column.Heading);
            foreach (var cell in row.Cells)
            {
                if (cell.Column == at)
                    filling.Put(person, column, cell);
            }
        }
    }
}

using System.Globalization;
using ExamDocs.Core.Findings;
using ExamDocs.Intake.Annotating;
using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>
/// Reports values that are struck out and comments that are not this program's: their author meant something that the
/// record does not say.
/// </summary>
internal sealed class CellMarks
{
    private readonly SheetEntry _sheet;
    private readonly ReadingNotes _notes;
    private readonly Dictionary<int, List<(int Column, string Text)>> _comments = [];

    /// <summary>Rows of items, for what is said of rows when they are all read.</summary>
    private readonly Dictionary<int, (string Pointer, string? Item)> _items = [];
    private int _elsewhere;
    private string? _firstElsewhere;
    private string? _firstText;

    public CellMarks(SheetEntry sheet, ReadingNotes notes, SheetBeside beside)
    {
        (_sheet, _notes) = (sheet, notes);
        foreach (var ((row, column), texts) in beside.Comments)
        {
            foreach (var text in texts.Select(Seal.Besides).Where(t => t.Length > 0))
                (_comments.TryGetValue(row, out var there) ? there : _comments[row] = []).Add((column, text));
        }
    }

    public void Headings(SheetRow row, HeadingMap headings)
    {
        foreach (var cell in row.Cells)
        {
            if (cell.IsStruck && headings.ColumnAt(cell.Column) is { Group: not ColumnGroup.LastTime })
                Report(
                    BesideFindings.StruckOut,
                    ReadingNotes.Outside(_sheet.Name),
                    row.Number,
                    cell.Column,
                    $"the heading '{CellReading.Shown(cell.Raw)}' is struck out",
                    null
                );
        }
        foreach (var (column, text) in TakeComments(row.Number))
        {
            if (!headings.IsNoteOnHeading(text))
                AddElsewhere(row.Number, column, text);
        }
    }

    /// <param name="row">A row below the headings.</param>
    /// <param name="target">The object that it became; null where it became none.</param>
    /// <param name="isItem">Whether that is an item.</param>
    public void Row(RowView row, DraftObject? target, bool isItem)
    {
        var (pointer, item) = target is null
            ? (ReadingNotes.Outside(_sheet.Name), null)
            : (target.Pointer, target.Text("id") ?? target.Text("item"));
        var number = row.Stands.Number;
        if (isItem)
            _items[number] = (pointer, item);
        ReportStruck(Struck(row), pointer, number, item);
        foreach (var (column, text) in TakeComments(number))
        {
            if (target is not null && row.ColumnAt(column) is null or { Decides: true })
                Report(BesideFindings.CommentOnValue, pointer, number, column, $"a comment says '{CellReading.Shown(text)}'", item);
            else
                AddElsewhere(number, column, text);
        }
    }

    /// <param name="row">A row of the sheet about the visit.</param>
    /// <param name="lastRead">The last column of which something is read; 0 where nothing is.</param>
    public void Visit(SheetRow row, int lastRead)
    {
        ReportStruck([.. row.Cells.Where(c => c.IsStruck && c.Column <= Math.Max(2, lastRead))], "/visit", row.Number, null);
        foreach (var (column, text) in TakeComments(row.Number))
        {
            if (lastRead > 0)
                Report(BesideFindings.CommentOnValue, "/visit", row.Number, column, $"a comment says '{CellReading.Shown(text)}'", null);
            else
                AddElsewhere(row.Number, column, text);
        }
    }

    /// <summary>Reports what belongs to no row that was read, and rows that are merged with each other.</summary>
    public void Finish(SheetAbout about)
    {
        foreach (var (row, texts) in _comments.OrderBy(c => c.Key))
        {
            foreach (var (column, text) in texts)
                AddElsewhere(row, column, text);
        }
        if (_firstElsewhere is not null)
            _notes.Report(
                BesideFindings.CommentElsewhere,
                ReadingNotes.Outside(_sheet.Name, _firstElsewhere),
                $"{_sheet.Name}!{_firstElsewhere}",
                $"{_elsewhere} comments on the sheet {_sheet.Name} are not read; the first says '{CellReading.Shown(_firstText!)}'"
            );
        foreach (var (from, to, column) in about.MergedRows)
        {
            foreach (var (row, (pointer, item)) in _items.Where(i => i.Key > from && i.Key <= to).OrderBy(i => i.Key))
                Report(SheetFindings.MergedRows, pointer, row, column, $"the cell is merged with row {from}", item);
        }
    }

    private static List<Cell> Struck(RowView row)
    {
        List<Cell> struck = [];
        foreach (var cell in row.Cells)
        {
            if (cell.IsStruck && row.ColumnAt(cell.Column)?.Group is not ColumnGroup.LastTime)
                struck.Add(cell);
        }
        return struck;
    }

    private void ReportStruck(List<Cell> struck, string pointer, int row, string? item)
    {
        if (struck.Count == 0)
            return;
        var first = CellReading.Shown(struck[0].Raw);
        var message =
            struck.Count == 1
                ? (Message)$"'{first}' is struck out"
                : $"'{first}' is struck out, and so are {struck.Count - 1} more cells of the row";
        Report(BesideFindings.StruckOut, pointer, row, struck[0].Column, message, item);
    }

    private List<(int Column, string Text)> TakeComments(int row) => _comments.Remove(row, out var there) ? there : [];

    private void AddElsewhere(int row, int column, string text)
    {
        if (_elsewhere++ > 0)
            return;
        (_firstElsewhere, _firstText) = (row < 1 ? "A1" : CellAddress.Of(row, column), text);
    }

    private void Report(RuleInfo rule, string pointer, int row, int column, Message message, string? item)
    {
        var cell = CellAddress.Of(row, column);
        _notes.Report(rule, $"{pointer}/{cell}", $"{_sheet.Name}!{cell}", message, item);
    }
}

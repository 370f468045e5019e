using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>Reads sheets into the record, each by what its rows are.</summary>
internal sealed class SheetReading
{
    private readonly DraftObject _record = new("");
    private readonly ExaminationIndex _index = new();
    private readonly ReadingNotes _notes;
    private readonly RowFilling _filling;
    private readonly ExaminationRows _examinations;
    private readonly DetailRows _details;
    private readonly ItemDetailRows _itemDetails;
    private readonly GreyCells _grey;
    private readonly VisitRows _visit;
    private readonly CellReading _cells;
    private readonly HeadingWords _words;

    public SheetReading(ReadingNotes notes, bool counts1904, HeadingWords words)
    {
        (_notes, _words, _cells) = (notes, words, new CellReading(notes, counts1904));
        _filling = new RowFilling(notes, _cells);
        _grey = new GreyCells(notes);
        _examinations = new ExaminationRows(_record, _filling, notes, _index, _grey);
        _details = new DetailRows(_record, _filling, notes, _index);
        _itemDetails = new ItemDetailRows(_filling, notes);
        _visit = new VisitRows(_record, _filling, _cells, notes);
    }

    /// <summary>The record read, with an empty list for every list that no sheet held.</summary>
    public ObjectNode Finish()
    {
        _cells.Finish();
        if (_record.Text("format") is null)
            _record.Add("format", new TextNode("/format", Core.Records.ExaminationRecord.FormatName));
        _ = _record.Child("visit");
        foreach (var list in new[] { "people", "items", "limits", "examinations", "renewals", "remedies", "releases", "disposals" })
            _ = _record.List(list);
        var record = _record.Freeze();
        _grey.Check(record);
        return record;
    }

    /// <param name="sheet">The sheet as the workbook names it.</param>
    /// <param name="shape">What it holds.</param>
    /// <param name="rows">Its filled rows from top to bottom.</param>
    /// <param name="beside">What the file holds of the sheet beside its rows.</param>
    public void Read(SheetEntry sheet, SheetShape shape, IEnumerable<SheetRow> rows, SheetBeside beside)
    {
        if (shape.Path.Length > 0 && shape.Role is SheetRole.Visit or SheetRole.Items or SheetRole.RecordList)
            _notes.Place($"/{shape.Path}", $"{sheet.Name}!A1");
        var (remarks, marks) = (new SheetRemarks(sheet, _notes), new CellMarks(sheet, _notes, beside));
        HeadingMap? headings = null;
        foreach (var row in shape.Role is SheetRole.Visit ? VisitRows.Ordered(rows) : rows)
        {
            remarks.Look(row);
            if (shape.Role is SheetRole.Visit)
                marks.Visit(row, _visit.Add(sheet.Name, row));
            else if (headings is null && row.Number == 1)
                marks.Headings(row, headings = HeadingMap.Of(row, shape, _words));
            else
                ReadRow(new RowView(sheet.Name, row, headings ??= HeadingMap.Of(row, shape, _words)), shape, marks);
        }
        var about = beside.About();
        marks.Finish(about);
        remarks.Report(about, beside.Drawings, headings);
        if (shape.Role is SheetRole.Visit)
            _index.VisitDay = _record.Child("visit").Text("examinedOn");
    }

    private void ReadRow(RowView row, SheetShape shape, CellMarks marks)
    {
        if (!row.HasKnownContent)
        {
            _filling.ReportUnreadCells(row, null);
            _notes.UnreadRows.Add((row.Sheet, row.Stands.Number));
            marks.Row(row, null, isItem: false);
            return;
        }
        var target = shape.Role switch
        {
            SheetRole.Items => _itemDetails.Knows(_examinations.AddItem(row, shape)),
            SheetRole.ItemDetail => _itemDetails.Add(row, shape),
            SheetRole.EarlierExaminations => _examinations.AddEarlier(row),
            SheetRole.Photos => _details.AddPhoto(row),
            SheetRole.ExaminationDetail or SheetRole.EarlierObservations => _details.Add(row, shape),
            _ => AddEntry(row, shape),
        };
        _filling.ReportUnreadCells(row, target);
        marks.Row(row, target, isItem: shape.Role is SheetRole.Items);
    }

    private DraftObject AddEntry(RowView row, SheetShape shape)
    {
        var list = _record.List(shape.Path);
        var entry = new DraftObject(list.Next, row.Cells.Count);
        _filling.Fill(entry, row);
        list.Add(entry.Freeze());
        return entry;
    }
}

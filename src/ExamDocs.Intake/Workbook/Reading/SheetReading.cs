using ExamDocs.Core.Regimes;
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
    private readonly UnmeasuredPlaces _unmeasured;
    private readonly VisitRows _visit;
    private readonly CellReading _cells;
    private readonly HeadingWords _words;
    private readonly ReadAsNotes _readings;

    public SheetReading(ReadingNotes notes, bool counts1904, KnownRules rules)
    {
        (_notes, _words, _readings) = (notes, HeadingWords.Of(rules), new ReadAsNotes(notes));
        _cells = new CellReading(notes, counts1904, rules, _readings);
        _filling = new RowFilling(notes, _cells);
        _grey = new GreyCells(notes);
        _examinations = new ExaminationRows(_record, _filling, notes, _index, _grey);
        _details = new DetailRows(_record, _filling, notes, _index);
        _unmeasured = new UnmeasuredPlaces(_details, _index, notes);
        _itemDetails = new ItemDetailRows(_filling, notes);
        _visit = new VisitRows(_record, _filling, _cells, notes);
    }

    /// <summary>The record read, with an empty list for every list that no sheet held.</summary>
    public ObjectNode Finish()
    {
        _cells.Finish();
        _readings.Finish();
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
        var (remarks, marks) = (new SheetRemarks(sheet, _notes, shape), new CellMarks(sheet, _notes, beside));
        _readings.Sheet = sheet.Name;
        HeadingMap? headings = null;
        if (shape.Role is SheetRole.Visit)
            ReadVisit(sheet, rows, remarks, marks);
        else
            headings = ReadTable(sheet, shape, rows, remarks, marks);
        var about = beside.About();
        marks.Finish(about);
        remarks.Report(about, beside.Drawings, headings);
    }

    private void ReadVisit(SheetEntry sheet, IEnumerable<SheetRow> rows, SheetRemarks remarks, CellMarks marks)
    {
        foreach (var row in VisitRows.Ordered(rows))
        {
            remarks.Look(row);
            marks.Visit(row, _visit.Add(sheet.Name, row));
        }
        _visit.AddPeople(sheet.Name);
        _index.VisitDay = _record.Child("visit").Text("examinedOn");
    }

    /// <returns>Its headings; null where the sheet holds nothing.</returns>
    private HeadingMap? ReadTable(SheetEntry sheet, SheetShape shape, IEnumerable<SheetRow> rows, SheetRemarks remarks, CellMarks marks)
    {
        using var all = rows.GetEnumerator();
        var first = FirstRows(all, shape);
        if (first.Count == 0)
            return null;
        var at = HeadingRow.Of(first, shape, _words) ?? (first[0].Number == 1 ? 0 : -1);
        var headings = at < 0 ? HeadingMap.None(shape) : HeadingMap.Of(first[at], shape, _words);
        var unread = new UnreadCells(_notes, sheet.Name);
        for (var n = 0; n < first.Count; n++)
        {
            remarks.Look(first[n]);
            if (n == at)
                marks.Headings(first[n], headings);
            else if (n > at)
                ReadRow(new RowView(sheet.Name, first[n], headings), shape, marks, unread);
        }
        if (at >= 0 && headings.Row > 1)
            HeadingRow.ReportAbove(sheet.Name, first[..at], headings.Row, _notes);
        while (all.MoveNext())
        {
            remarks.Look(all.Current);
            ReadRow(new RowView(sheet.Name, all.Current, headings), shape, marks, unread);
        }
        _unmeasured.Finish();
        unread.Finish(headings);
        return headings;
    }

    /// <summary>Rows until one plainly holds the headings.</summary>
    private List<SheetRow> FirstRows(IEnumerator<SheetRow> rows, SheetShape shape)
    {
        List<SheetRow> first = [];
        while (first.Count < HeadingRow.Most && rows.MoveNext())
        {
            first.Add(rows.Current);
            if (HeadingRow.IsPlain(rows.Current, shape, _words))
                break;
        }
        return first;
    }

    private void ReadRow(RowView row, SheetShape shape, CellMarks marks, UnreadCells unread)
    {
        if (!row.HasKnownContent)
        {
            unread.Look(row, null);
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
            SheetRole.ExaminationDetail or SheetRole.EarlierObservations => _unmeasured.Takes(row, shape) ?? _details.Add(row, shape),
            _ => AddEntry(row, shape),
        };
        unread.Look(row, target);
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

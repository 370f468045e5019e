using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Writing;

/// <summary>The rows of every sheet, from a record; each of its entries stands on exactly one.</summary>
internal sealed class CaptureRows
{
    private readonly ObjectNode _tree;
    private readonly List<CapturedExamination> _examinations;
    private readonly Dictionary<string, CapturedExamination> _inItemRow;
    private readonly HashSet<string> _sheetCategories;
    private readonly Dictionary<string, ObjectNode> _firstOfId;
    private readonly ObservationPlaces _observations;
    private readonly bool _historyOnly;
    private readonly Lazy<Dictionary<string, CapturedExamination>> _lastOf;

    /// <param name="record">What is written.</param>
    /// <param name="sheets">The sheets of items.</param>
    /// <param name="historyOnly">No examination stands in an item's own row: that is for the next one.</param>
    /// <param name="rules">The categories there are.</param>
    public CaptureRows(ExaminationRecord record, IReadOnlyList<SheetShape> sheets, bool historyOnly, KnownRules rules)
    {
        _historyOnly = historyOnly;
        _tree = RecordTree.Of(record);
        _examinations = CapturedExamination.All(record, _tree, historyOnly);
        _inItemRow = _examinations.Where(e => e.InItemRow).ToDictionary(e => e.Item!, StringComparer.Ordinal);
        _sheetCategories = sheets.Select(s => s.Category?.Id).OfType<string>().ToHashSet(StringComparer.Ordinal);
        _firstOfId = Entries("items")
            .Where(i => i.Text("id") is not null)
            .DistinctBy(i => i.Text("id"), StringComparer.Ordinal)
            .ToDictionary(i => i.Text("id")!, StringComparer.Ordinal);
        _observations = new ObservationPlaces(rules, _sheetCategories, _firstOfId);
        _lastOf = new(() =>
            _examinations
                .Where(e => e is { InItemRow: false, Item: not null })
                .GroupBy(e => e.Item!, StringComparer.Ordinal)
                .ToDictionary(g => g.Key, g => g.MaxBy(e => e.Day, StringComparer.Ordinal)!, StringComparer.Ordinal)
        );
    }

    /// <summary>Most readings at one place.</summary>
    public int MostReadings =>
        _examinations.SelectMany(e => e.Entries("diameters")).Max(d => (d.Find("readingsMm") as ListNode)?.Elements.Count) ?? 0;

    public CaptureRow Visit()
    {
        var row = new CaptureRow();
        row.Fill((ObjectNode)_tree.Find("visit")!, VisitSheet.Shape.Columns);
        row.Put(VisitSheet.FormatHeading, ExaminationRecord.FormatName);
        return row;
    }

    /// <summary>The people, for the form about the visit.</summary>
    public IEnumerable<CaptureRow> People() => Entries("people").Select(p => Row(p, VisitSheet.OfPerson));

    public IEnumerable<CaptureRow> Of(SheetShape sheet) =>
        sheet.Role switch
        {
            SheetRole.Items => Entries("items").Where(i => IsOn(sheet, i)).Select(i => ItemRow(sheet, i)),
            SheetRole.ItemDetail => Entries("items").SelectMany(i => ItemDetailRows(i, sheet)),
            SheetRole.RecordList => Entries(sheet.Path).Select(e => Row(e, sheet.Columns)),
            SheetRole.EarlierExaminations => _examinations.Where(e => !e.InItemRow).Select(e => EarlierRow(e, sheet)),
            SheetRole.EarlierObservations => _examinations.SelectMany(e =>
                DetailRows(e, _observations.OnObservationSheet(e), sheet, e.Day)
            ),
            SheetRole.Photos => _examinations.SelectMany(e => DetailRows(e, _observations.OnPhotoSheet(e), sheet, null)),
            _ => Places(sheet)
                .Concat(_examinations.SelectMany(e => DetailRows(e, e.Entries(sheet.Path), sheet, e.InItemRow ? null : e.Day))),
        };

    /// <summary>The places along ropes that were measured last time, for the readings of the next visit.</summary>
    private IEnumerable<CaptureRow> Places(SheetShape sheet) =>
        _historyOnly && sheet.Path is "diameters" ? MeasuredPlaces.OfLastTime(_examinations) : [];

    private static CaptureRow Row(ObjectNode node, IEnumerable<Column> columns)
    {
        var row = new CaptureRow();
        row.Fill(node, columns);
        return row;
    }

    private IEnumerable<ObjectNode> Entries(string list) => ((ListNode)_tree.Find(list)!).Elements.Cast<ObjectNode>();

    private bool IsOn(SheetShape sheet, ObjectNode item)
    {
        var category = item.Text("category");
        return sheet.Category is { } own
            ? string.Equals(own.Id, category, StringComparison.Ordinal)
            : category is null || !_sheetCategories.Contains(category);
    }

    private CaptureRow ItemRow(SheetShape sheet, ObjectNode item)
    {
        var row = Row(item, sheet.Columns.Where(c => c.Group is ColumnGroup.Item));
        PutLastTime(row, sheet, item.Text("id"));
        if (item.Text("id") is not { } id || !_inItemRow.TryGetValue(id, out var examination) || !ReferenceEquals(_firstOfId[id], item))
            return row;
        row.Fill(examination.Node, sheet.Columns.Where(c => c.Group is ColumnGroup.Examination or ColumnGroup.Conclusion));
        var observations = _observations.InItemRow(examination).ToDictionary(o => o.Text("criterion")!, StringComparer.Ordinal);
        var apart = sheet.Columns.Where(c => c.Group is ColumnGroup.CriterionNote).Select(c => c.Path).ToHashSet(StringComparer.Ordinal);
        foreach (var column in sheet.Columns.Where(c => c.Group is ColumnGroup.Criterion or ColumnGroup.CriterionNote))
        {
            if (!observations.TryGetValue(column.Path, out var observation))
                continue;
            if (column.Group is ColumnGroup.Criterion && !apart.Contains(column.Path))
                row.Put(column.Heading, AnswerWithNote.Joined(observation.Text("state"), observation.Text("note")));
            else
                row.Put(column.Heading, observation.Find(column.Group is ColumnGroup.Criterion ? "state" : "note"));
        }
        return row;
    }

    /// <summary>Criteria of a sheet of items of which some note does not fit beside its answer.</summary>
    public IReadOnlySet<string> NotesApart(SheetShape sheet) =>
        _inItemRow
            .Values.Where(e => IsOn(sheet, _firstOfId[e.Item!]))
            .SelectMany(_observations.InItemRow)
            .Where(o => AnswerWithNote.Joined(o.Text("state"), o.Text("note")) is null)
            .Select(o => o.Text("criterion")!)
            .ToHashSet(StringComparer.Ordinal);

    /// <summary>What was seen at the item's latest examination before, the state with its note.</summary>
    private void PutLastTime(CaptureRow row, SheetShape sheet, string? item)
    {
        var columns = sheet.Columns.Where(c => c.Group is ColumnGroup.LastTime).ToList();
        var last = columns.Count == 0 || item is null ? null : _lastOf.Value.GetValueOrDefault(item);
        foreach (var column in columns)
        {
            row.Put(column.Heading, LastSeen.Of(last?.Node, last?.Day, column.Path));
        }
    }

    private static IEnumerable<CaptureRow> ItemDetailRows(ObjectNode item, SheetShape sheet)
    {
        foreach (var entry in (item.Find(sheet.Path) as ListNode)?.Elements.OfType<ObjectNode>() ?? [])
        {
            var row = Row(entry, sheet.Columns);
            row.Put("item", item.Text("id"));
            yield return row;
        }
    }

    private static CaptureRow EarlierRow(CapturedExamination examination, SheetShape sheet)
    {
        var row = Row(examination.Node, sheet.Columns);
        row.Put("examined on", examination.Day);
        return row;
    }

    private static IEnumerable<CaptureRow> DetailRows(
        CapturedExamination examination,
        IEnumerable<ObjectNode> entries,
        SheetShape sheet,
        string? day
    )
    {
        foreach (var entry in entries)
        {
            var row = Row(entry, sheet.Columns.Where(c => c.Kind is not ColumnKind.NumberInList));
            row.Put("item", examination.Item);
            row.Put("examined on", day);
            var readings = (entry.Find("readingsMm") as ListNode)?.Elements ?? [];
            foreach (var (column, reading) in sheet.Columns.Where(c => c.Kind is ColumnKind.NumberInList).Zip(readings))
                row.Put(column.Heading, reading);
            yield return row;
        }
    }
}

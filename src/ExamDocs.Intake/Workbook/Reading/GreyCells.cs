using ExamDocs.Intake.Workbook.Shape;
using ExamDocs.Intake.Workbook.Writing;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>
/// Compares the grey columns, which show what was seen last time and are not read, with the earlier examinations that the
/// same workbook holds: what was typed there would be lost.
/// </summary>
internal sealed class GreyCells(ReadingNotes notes)
{
    private readonly List<(string Item, string Criterion, string Text, string Pointer, string Address)> _filled = [];
    private readonly HashSet<string> _inItemRow = new(StringComparer.Ordinal);

    /// <summary>Remembers the filled grey cells of an item's row.</summary>
    public void Add(RowView row, DraftObject item)
    {
        foreach (var cell in row.Cells)
        {
            if (row.ColumnAt(cell.Column) is { Group: ColumnGroup.LastTime } column)
                _filled.Add(
                    (item.Text("id") ?? "", column.Path, cell.Raw, $"{item.Pointer}/{row.Reference(cell.Column)}", row.Address(cell.Column))
                );
        }
    }

    /// <summary>Remembers an examination that is not history.</summary>
    public void AddInItemRow(DraftObject examination) => _inItemRow.Add(examination.Pointer);

    /// <param name="record">The record when all is read.</param>
    public void Check(ObjectNode record)
    {
        if (_filled.Count == 0)
            return;
        var latest = ((ListNode)record.Find("examinations")!)
            .Elements.OfType<ObjectNode>()
            .Where(e => !_inItemRow.Contains(e.Pointer))
            .GroupBy(e => e.Text("item") ?? "", StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.MaxBy(e => e.Text("examinedOn"), StringComparer.Ordinal)!, StringComparer.Ordinal);
        foreach (var (item, criterion, text, pointer, address) in _filled)
        {
            var last = latest.GetValueOrDefault(item);
            var shown = LastSeen.Of(last, last?.Text("examinedOn"), criterion);
            if (!string.Equals(Heading.Normal(text), Heading.Normal(shown ?? ""), StringComparison.Ordinal))
                notes.Report(
                    SheetFindings.LastTimeAltered,
                    pointer,
                    address,
                    $"'{CellReading.Shown(text)}' is not what was seen for {criterion} last time",
                    item
                );
        }
    }
}

using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>Puts a row's cells into the object they belong to, noting the place of each.</summary>
internal sealed class RowFilling(ReadingNotes notes, CellReading reading)
{
    private static readonly Column State = Column.Text("state", "state", "");
    private static readonly Column Note = Column.Text("note", "note", "");

    /// <summary>Puts every column, and notes the row as the place of the object.</summary>
    public void Fill(DraftObject target, RowView row)
    {
        if (row.HasLists)
        {
            Fill(target, row, static _ => true);
            return;
        }
        notes.PlaceRow(target.Pointer, row);
        foreach (var cell in row.Cells)
        {
            if (row.ColumnAt(cell.Column) is { } column)
                Put(target, column, cell);
        }
    }

    /// <summary>Puts the columns chosen, and notes the row as the place of the object.</summary>
    public void Fill(DraftObject target, RowView row, Func<Column, bool> which)
    {
        notes.PlaceRow(target.Pointer, row);
        foreach (var (index, column) in row.Columns)
        {
            if (!which(column))
                continue;
            if (column.Kind is ColumnKind.NumberInList)
                AddToList(target, column, row, index);
            else
                Put(target, column, row.At(index));
        }
    }

    /// <summary>Reports what stands under no heading or an unknown one.</summary>
    /// <param name="target">The object that the row became; null where it became none.</param>
    public void ReportUnreadCells(RowView row, DraftObject? target)
    {
        foreach (var cell in row.Cells)
        {
            if (row.Knows(cell.Column))
                continue;
            var (pointer, item) = target is null
                ? (ReadingNotes.Outside(row.Sheet), null)
                : (target.Pointer, target.Text("id") ?? target.Text("item"));
            var (reference, address) = (row.Reference(cell.Column), row.Address(cell.Column));
            if (row.HeadingTyped(cell.Column) is { } heading)
                ReportUnknownColumn(row, heading, pointer, item, address);
            else
                notes.Report(
                    SheetFindings.NoHeading,
                    $"{pointer}/{reference}",
                    address,
                    $"'{CellReading.Shown(cell.Raw)}' stands under no heading",
                    item
                );
        }
    }

    private void ReportUnknownColumn(RowView row, string heading, string pointer, string? item, string address)
    {
        var near = row.Near(heading);
        notes.Report(
            SheetFindings.UnknownColumn.At(
                $"{pointer}/{ReadingNotes.Escape(CellReading.Shown(heading))}",
                $"the heading '{CellReading.Shown(heading)}' is not known on the sheet {row.Sheet}",
                near is null ? null : $"Did you mean '{near}'? {SheetFindings.UnknownColumn.Hint}",
                item
            ) with
            {
                LostAt = near is null ? null : $"{pointer}/{row.PathOf(near)}",
            },
            address
        );
    }

    /// <summary>Puts an answer and its note, which may stand in one cell.</summary>
    public void PutAnswer(DraftObject observation, Cell? state, Cell? note)
    {
        if (state is not { } typed || AnswerCell.Of(typed) is not { } both)
        {
            Put(observation, State, state);
            Put(observation, Note, note);
            return;
        }
        var pointer = $"{observation.Pointer}/state";
        if (both.NamesAnother)
            notes.Report(AnswerRules.TwoAnswers, pointer, $"'{CellReading.Shown(typed.Raw)}' is two answers");
        else
            observation.Add(State.Path, new TextNode(pointer, both.State));
        if (note is not null && both.Note.Length > 0)
            notes.Report(
                AnswerRules.TwoNotes,
                pointer,
                $"'{CellReading.Shown(both.Note)}' stands after the answer, and a note in its own column"
            );
        var said = both.NamesAnother ? typed.Raw : both.Note;
        if (note is { } own)
            Put(observation, Note, said.Length == 0 ? own : own with { Kind = CellKind.Text, Raw = $"{said}; {own.Raw}" });
        else if (said.Length > 0)
            observation.Add(Note.Path, new TextNode($"{observation.Pointer}/note", said));
    }

    /// <summary>Puts one cell, where it is filled.</summary>
    public void Put(DraftObject target, Column column, Cell? cell)
    {
        if (cell is not { } filled || reading.Read(filled, column.Kind, new JsonPlace(target.Pointer, column.Path)) is not { } node)
            return;
        var (owner, rest) = (target, column.Path);
        for (var end = rest.IndexOf('/', StringComparison.Ordinal); end >= 0; end = rest.IndexOf('/', StringComparison.Ordinal))
            (owner, rest) = (owner.Child(rest[..end]), rest[(end + 1)..]);
        owner.Add(rest, node);
    }

    private void AddToList(DraftObject target, Column column, RowView row, int index)
    {
        var list = target.List(column.Path);
        if (row.At(index) is not { } filled)
            return;
        var pointer = list.Next;
        notes.Place(pointer, row, index);
        list.Add(reading.Read(filled, column.Kind, pointer) ?? new NullNode(pointer));
    }
}

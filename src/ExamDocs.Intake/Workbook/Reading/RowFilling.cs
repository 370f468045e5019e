using ExamDocs.Core.Records;
using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>Puts a row's cells into the object they belong to, noting the place of each.</summary>
internal sealed class RowFilling(ReadingNotes notes, CellReading reading)
{
    private const string LoadUnit = "unit";
    private static readonly Column State = Column.Word("state", "state", Words.States.All, "");
    private static readonly Column Note = Column.Text("note", "note", "");
    private readonly Dictionary<string, Column> _states = new(StringComparer.Ordinal);

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

    /// <summary>Puts an answer and its note, which may stand in one cell.</summary>
    public void PutAnswer(DraftObject observation, Cell? state, Cell? note)
    {
        var asked = observation.Text("criterion") is { } criterion ? StateOf(criterion) : State;
        if (state is not { } typed || AnswerCell.Of(typed) is not { } both)
        {
            Put(observation, asked, state);
            Put(observation, Note, note);
            return;
        }
        var pointer = $"{observation.Pointer}/state";
        if (both.NamesAnother)
            notes.Report(AnswerRules.TwoAnswers, pointer, $"'{CellReading.Shown(typed.Raw)}' is two answers");
        else
            observation.Add(State.Path, new TextNode(pointer, reading.Word(both.Typed, asked, pointer)));
        if (note is not null && both.Note.Length > 0)
            notes.Report(
                AnswerRules.TwoNotes,
                pointer,
                $"'{CellReading.Shown(both.Note)}' is a note after the answer, and there is a note in its own column too"
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
        if (cell is not { } filled || reading.Read(filled, column, new JsonPlace(target.Pointer, column.Path)) is not { } node)
            return;
        var (owner, rest) = (target, column.Path);
        for (var end = rest.IndexOf('/', StringComparison.Ordinal); end >= 0; end = rest.IndexOf('/', StringComparison.Ordinal))
            (owner, rest) = (owner.Child(rest[..end]), rest[(end + 1)..]);
        if (rest is LoadUnit && IsSaidAlready(owner, node))
            return;
        owner.Add(rest, node);
        if (reading.LoadUnit is { } unit && new TextNode($"{owner.Pointer}/{LoadUnit}", unit) is var said && !IsSaidAlready(owner, said))
            owner.Add(LoadUnit, said);
    }

    /// <summary>
    /// The unit may stand behind the number and in its own column; two that differ are both kept, and reported where all is.
    /// </summary>
    private static bool IsSaidAlready(DraftObject load, SourceNode unit) =>
        unit is TextNode text && string.Equals(load.Text(LoadUnit), text.Text, StringComparison.Ordinal);

    /// <summary>The column of states as a criterion's own: what is said of a cell names the criterion.</summary>
    private Column StateOf(string criterion)
    {
        if (_states.TryGetValue(criterion, out var known))
            return known;
        var own = State with { Heading = criterion };
        return _states.Count < WorkbookLimits.Styles ? _states[criterion] = own : own;
    }

    private void AddToList(DraftObject target, Column column, RowView row, int index)
    {
        var list = target.List(column.Path);
        if (row.At(index) is not { } filled)
            return;
        var pointer = list.Next;
        notes.Place(pointer, row, index);
        list.Add(reading.Read(filled, column, pointer) ?? new NullNode(pointer));
    }
}

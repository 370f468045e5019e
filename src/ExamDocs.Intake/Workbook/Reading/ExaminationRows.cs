using ExamDocs.Core.Findings;
using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>Makes examinations of item rows and of the rows of earlier examinations.</summary>
internal sealed class ExaminationRows(DraftObject record, RowFilling filling, ReadingNotes notes, ExaminationIndex index, GreyCells grey)
{
    /// <summary>Adds the item of a row, and its examination where anything of one is filled in.</summary>
    public DraftObject AddItem(RowView row, SheetShape shape)
    {
        var item = record.List("items").AddObject();
        filling.Fill(item, row, c => c.Group is ColumnGroup.Item);
        if (shape.Category is { } category)
            item.Add("category", new TextNode($"{item.Pointer}/category", category.Id));
        grey.Add(row, item);
        if (row.AnyFilled(c => c.Group is not (ColumnGroup.Item or ColumnGroup.LastTime)))
            AddExaminationOf(row, item);
        return item;
    }

    /// <summary>Adds the earlier examination that a row holds.</summary>
    public DraftObject AddEarlier(RowView row)
    {
        var examination = record.List("examinations").AddObject();
        filling.Fill(examination, row);
        _ = examination.List("observations");
        var item = examination.Text("item");
        if (item is null)
            notes.Report(SheetFindings.NoItemNamed, $"{examination.Pointer}/item", row.Place, $"the row names no item");
        if (examination.Text("examinedOn") is null)
            notes.Report(SheetFindings.EarlierWithoutDate, $"{examination.Pointer}/examinedOn", row.Place, $"the date is missing", item);
        if (!index.AddEarlier(item, examination))
            ReportSameDay(examination, row, item);
        return examination;
    }

    private void AddExaminationOf(RowView row, DraftObject item)
    {
        var examination = record.List("examinations").AddObject();
        item.Examination = examination;
        var id = item.Text("id");
        if (id is not null)
            examination.Add("item", new TextNode($"{examination.Pointer}/item", id));
        filling.Fill(examination, row, c => c.Group is ColumnGroup.Examination or ColumnGroup.Conclusion);
        notes.Place(
            $"{examination.Pointer}/item",
            row,
            row.Columns.FirstOrDefault(c => c.Column.Path is "id").Index is var at and > 0 ? at : 1
        );
        AddObservations(examination, row);
        grey.AddInItemRow(examination);
        if (!index.AddInItemRow(id, examination))
            ReportSameDay(examination, row, id, new PossibleCause($"{item.Pointer}/id", "IDN001"));
    }

    private void ReportSameDay(DraftObject examination, RowView row, string? item, PossibleCause? cause = null) =>
        notes.Report(
            SheetFindings.TwoExaminationsOfOneDay.At(
                $"{examination.Pointer}/examinedOn",
                $"the item has two examinations of one day",
                item: item
            ) with
            {
                PossibleCause = cause,
            },
            row.Place
        );

    private void AddObservations(DraftObject examination, RowView row)
    {
        var observations = examination.List("observations");
        if (row.Criteria is [{ State: { } first }, ..])
            notes.Place(observations.Pointer, row, first);
        foreach (var columns in row.Criteria)
            AddObservation(observations, row, columns.Criterion, columns.State, columns.Note);
    }

    private void AddObservation(DraftList observations, RowView row, string criterion, int? stateIndex, int? noteIndex)
    {
        Cell? state = stateIndex is { } s ? row.At(s) : null;
        Cell? note = noteIndex is { } n ? row.At(n) : null;
        if (state is null && note is null)
            return;
        var observation = observations.AddObject();
        notes.Place(observation.Pointer, row, stateIndex ?? noteIndex ?? 1);
        if (noteIndex is { } noteColumn)
            notes.Place($"{observation.Pointer}/note", row, noteColumn);
        observation.Add("criterion", new TextNode($"{observation.Pointer}/criterion", criterion));
        filling.PutAnswer(observation, state, note);
        index.AddObservation(observations, criterion, observation);
    }
}

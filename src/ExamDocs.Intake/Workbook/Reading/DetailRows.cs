using ExamDocs.Core.Findings;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>Puts the rows of detail sheets to the examinations they are about, and loses none.</summary>
internal sealed class DetailRows(DraftObject record, RowFilling filling, ReadingNotes notes, ExaminationIndex index)
{
    /// <summary>What names the examination and is not part of the entry itself.</summary>
    private static readonly string[] Keys = ["item", "examinedOn"];

    /// <summary>Adds one entry, such as a defect, to a list within its examination.</summary>
    public DraftObject Add(RowView row, SheetShape shape)
    {
        var key = KeyOf(row, Keys);
        var examination = ExaminationOf(row, key, out var belongs);
        var entry = examination.List(shape.Path).AddObject();
        var (states, remarks) = (Columns(row, "state"), Columns(row, "note"));
        // Written twice, both are kept for the binder to report.
        var isAnswer = states.Count == 1 && remarks.Count < 2;
        filling.Fill(entry, row, c => !Keys.Contains(c.Path, StringComparer.Ordinal) && !(isAnswer && (c.Path is "state" or "note")));
        if (isAnswer)
            filling.PutAnswer(entry, row.At(states[0]), remarks.Count > 0 ? row.At(remarks[0]) : null);
        ReportIfCarried(row, key, belongs ? null : examination, $"{entry.Pointer}/item");
        if (shape.Role is SheetRole.EarlierObservations)
            CheckEarlier(examination, entry, row, key);
        return entry;
    }

    private static List<int> Columns(RowView row, string path) =>
        [.. row.Columns.Where(c => string.Equals(c.Column.Path, path, StringComparison.Ordinal)).Select(c => c.Index)];

    /// <summary>Adds a photo to the observation it shows.</summary>
    public DraftObject AddPhoto(RowView row)
    {
        var key = KeyOf(row, [.. Keys, "criterion"]);
        var examination = ExaminationOf(row, key, out var belongs);
        var observations = examination.List("observations");
        var criterion = key.Text("criterion");
        var observation = index.FindObservation(observations, criterion);
        if (observation is null)
        {
            observation = observations.AddObject();
            filling.Fill(observation, row, c => c.Path is "criterion" or "photo");
            index.AddObservation(observations, criterion, observation);
            if (belongs)
                notes.Report(
                    SheetFindings.PhotoWithoutObservation,
                    $"{observation.Pointer}/photo",
                    row.Place,
                    criterion is null
                        ? (Message)$"the photo's row names no criterion"
                        : $"there is no observation of '{criterion}' for the photo",
                    key.Text("item")
                );
        }
        else
        {
            filling.Fill(observation, row, c => c.Path is "photo");
        }
        ReportIfCarried(row, key, belongs ? null : examination, $"{observation.Pointer}/item");
        return observation;
    }

    /// <summary>What tells where the row belongs, read on the side.</summary>
    private DraftObject KeyOf(RowView row, string[] paths)
    {
        var key = new DraftObject(ReadingNotes.Outside(row.Sheet, row.Place[(row.Sheet.Length + 1)..]));
        filling.Fill(key, row, c => paths.Contains(c.Path, StringComparer.Ordinal));
        return key;
    }

    private DraftObject ExaminationOf(RowView row, DraftObject key, out bool belongs)
    {
        var (item, day) = (key.Text("item"), key.Text("examinedOn"));
        var found = index.Find(item, day);
        belongs = found is not null;
        return found ?? index.Carrier(item, day, () => Carrier(row, item, day));
    }

    private DraftObject Carrier(RowView row, string? item, string? day)
    {
        var examination = record.List("examinations").AddObject();
        notes.PlaceRow(examination.Pointer, row);
        if (item is not null)
            examination.Add("item", new TextNode($"{examination.Pointer}/item", item));
        if (day is not null)
            examination.Add("examinedOn", new TextNode($"{examination.Pointer}/examinedOn", day));
        _ = examination.List("observations");
        return examination;
    }

    /// <param name="carrier">The examination made up to carry the row; null where it belongs to one that was filled in.</param>
    private void ReportIfCarried(RowView row, DraftObject key, DraftObject? carrier, string pointer)
    {
        var (item, day) = (key.Text("item"), key.Text("examinedOn"));
        if (item is null)
            notes.Report(SheetFindings.NoItemNamed, pointer, row.Place, $"the row names no item");
        else if (carrier is not null)
            notes.Report(
                SheetFindings.NoExamination.At(
                    pointer,
                    day is null
                        ? (Message)$"no examination is filled in for the item '{CellReading.Shown(item)}'"
                        : $"there is no examination of the item '{CellReading.Shown(item)}' on {CellReading.Shown(day)}",
                    item: item
                ) with
                {
                    LostAt = carrier.Pointer,
                    PossibleCause = new PossibleCause($"{carrier.Pointer}/item", "CON002"),
                },
                row.Place
            );
    }

    private void CheckEarlier(DraftObject examination, DraftObject entry, RowView row, DraftObject key)
    {
        index.AddObservation(examination.List("observations"), entry.Text("criterion"), entry);
        if (key.Text("examinedOn") is null)
            notes.Report(
                SheetFindings.EarlierWithoutDate,
                $"{entry.Pointer}/examinedOn",
                row.Place,
                $"the date is missing",
                key.Text("item")
            );
    }
}

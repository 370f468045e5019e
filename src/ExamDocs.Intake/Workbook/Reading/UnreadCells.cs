using System.Globalization;
using ExamDocs.Core.Findings;
using ExamDocs.Intake.Vocabulary;
using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>
/// Says what becomes of cells under no heading of the sheet. A column of the user's own is named once; what may be an answer, or a
/// heading of ours misspelt, is an error at each cell.
/// </summary>
internal sealed class UnreadCells(ReadingNotes notes, string sheet)
{
    private readonly Dictionary<int, int> _left = [];

    /// <param name="row">A row below the headings.</param>
    /// <param name="target">The object that the row became; null where it became none.</param>
    public void Look(RowView row, DraftObject? target)
    {
        foreach (var cell in row.Cells)
        {
            if (row.Knows(cell.Column))
                continue;
            if (row.HeadingTyped(cell.Column) is not { } heading)
                Report(
                    SheetFindings.NoHeading,
                    row,
                    cell,
                    target,
                    row.Reference(cell.Column),
                    $"'{CellReading.Shown(cell.Raw)}' has no heading above it"
                );
            else if (target is not null && IsHarmless(row.Foreign(cell.Column), cell.Raw))
                _left[cell.Column] = _left.GetValueOrDefault(cell.Column) + 1;
            else
                ReportUnknown(row, cell, target, heading);
        }
    }

    /// <summary>Names the columns that were left alone.</summary>
    /// <param name="headings">Null where the sheet has none.</param>
    public void Finish(HeadingMap? headings)
    {
        foreach (var (column, cells) in headings is null ? [] : _left.OrderBy(l => l.Key).ToList())
        {
            var heading = CellReading.Shown(headings!.Typed(column)!);
            var at = CellAddress.Of(headings.Row, column);
            var isResult = headings.Foreign(column) is ForeignHeading.Results;
            notes.Report(
                isResult ? ReadAsFindings.ResultColumn : ReadAsFindings.OwnColumn,
                ReadingNotes.Outside(sheet, at),
                $"{sheet}!{at}",
                isResult
                    ? (Message)$"the column '{heading}' of the sheet {sheet} is not read as a conclusion (cells filled in: {cells})"
                    : $"the column '{heading}' of the sheet {sheet} is your own and is left alone; the record does not hold it "
                        + $"(cells filled in: {cells})"
            );
        }
    }

    private static bool IsHarmless(ForeignHeading heading, string text) =>
        heading switch
        {
            ForeignHeading.Own => !AnswerWords.IsIn(text),
            ForeignHeading.Results => AnswerWords.IsGood(text),
            _ => false,
        };

    private void ReportUnknown(RowView row, Cell cell, DraftObject? target, string heading)
    {
        var isAnswer = row.Foreign(cell.Column) is ForeignHeading.Own or ForeignHeading.Results;
        var message =
            isAnswer && target is not null
                ? (Message)(
                    $"the heading '{CellReading.Shown(heading)}' is not known on the sheet {sheet}, and "
                    + $"'{CellReading.Shown(cell.Raw)}' under it may say how the item is"
                )
                : $"the heading '{CellReading.Shown(heading)}' is not known on the sheet {sheet}";
        Report(
            SheetFindings.UnknownColumn,
            row,
            cell,
            target,
            ReadingNotes.Escape(CellReading.Shown(heading)),
            message,
            row.Misspelt(heading)
        );
    }

    private void Report(
        Core.Findings.RuleInfo rule,
        RowView row,
        Cell cell,
        DraftObject? target,
        string member,
        Message message,
        Column? meant = null
    )
    {
        var (pointer, item) = target is null
            ? (ReadingNotes.Outside(sheet), null)
            : (target.Pointer, target.Text("id") ?? target.Text("item"));
        notes.Report(
            rule.At($"{pointer}/{member}", message, meant is null ? null : (Message)$"Did you mean '{meant.Heading}'? {rule.Hint}", item) with
            {
                // What the column of ours lacks follows from the misspelt heading.
                LostAt = meant is null ? null : $"{PlaceOf(meant, pointer, target)}/{meant.Path}",
            },
            row.Address(cell.Column)
        );
    }

    /// <summary>What was examined stands in the item's row, and belongs to the examination.</summary>
    private static string PlaceOf(Column column, string pointer, DraftObject? target) =>
        column.Group is ColumnGroup.Item ? pointer : target?.Examination?.Pointer ?? pointer;
}

using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Reading;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Writing;

/// <summary>An answer and its note in one cell, as "noted: dried soil", wherever they would be read again as they were.</summary>
internal static class AnswerWithNote
{
    /// <summary>Null where the two do not fit into one cell: the note then needs a column of its own.</summary>
    public static string? Joined(string? state, string? note)
    {
        if (note is null)
            return state ?? "";
        if (state is null)
            return null;
        var both = $"{state}: {note}";
        var read = AnswerCell.Of(new Cell(1, CellKind.Text, both, default, IsFormula: false));
        return
            read is { NamesAnother: false }
            && string.Equals(read.State, state, StringComparison.Ordinal)
            && string.Equals(read.Note, note, StringComparison.Ordinal)
            ? both
            : null;
    }

    /// <summary>A sheet of items as it is written: what most rows need first, notes beside their answers only where they must be.</summary>
    /// <param name="sheet">With every column that is read.</param>
    /// <param name="apart">Criteria of which a note does not fit beside its answer.</param>
    public static SheetShape Ordered(SheetShape sheet, IReadOnlySet<string> apart)
    {
        var written = sheet.Columns.Where(c => c.Group is not ColumnGroup.CriterionNote || apart.Contains(c.Path)).ToList();
        return sheet with
        {
            Columns =
            [
                .. written.Where(c => c is { IsUsual: true, Group: ColumnGroup.Item }),
                .. written.Where(c => c is { IsUsual: true, Group: not (ColumnGroup.Item or ColumnGroup.Conclusion) }),
                .. written.Where(c => c is { IsUsual: true, Group: ColumnGroup.Conclusion }),
                .. written.Where(c => !c.IsUsual),
            ],
        };
    }
}

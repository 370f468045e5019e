using System.Runtime.InteropServices;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>Columns of one observation; counted from 1, null where the sheet has none.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct CriterionColumns(string Criterion, int? State, int? Note)
{
    /// <summary>A criterion's first note belongs to its first state, the second to the second; a note left over stands alone.</summary>
    public static IEnumerable<CriterionColumns> Of(IReadOnlyList<(int Index, Column Column)> known)
    {
        var notesLeft = known
            .Where(c => c.Column.Group is ColumnGroup.CriterionNote)
            .GroupBy(c => c.Column.Path, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => new Queue<int>(g.Select(c => c.Index)), StringComparer.Ordinal);
        foreach (var (index, column) in known.Where(c => c.Column.Group is ColumnGroup.Criterion))
            yield return new(
                column.Path,
                index,
                notesLeft.TryGetValue(column.Path, out var left) && left.TryDequeue(out var next) ? next : null
            );
        foreach (var (criterion, left) in notesLeft)
        {
            foreach (var index in left)
                yield return new(criterion, null, index);
        }
    }
}

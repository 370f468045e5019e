using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Intake.Workbook.Writing;

/// <summary>An examination of the record, with where in the workbook it stands.</summary>
/// <param name="InItemRow">The item's latest, which stands in the item's own row.</param>
/// <param name="Day">The date it was made, the visit's where it has none of its own.</param>
internal sealed record CapturedExamination(ObjectNode Node, bool InItemRow, string? Day)
{
    public string? Item => Node.Text("item");

    public IEnumerable<ObjectNode> Entries(string list) => (Node.Find(list) as ListNode)?.Elements.OfType<ObjectNode>() ?? [];

    public static List<CapturedExamination> All(ExaminationRecord record, ObjectNode tree, bool historyOnly)
    {
        var nodes = ((ListNode)tree.Find("examinations")!).Elements.Cast<ObjectNode>().ToList();
        var items = record.Items.Select(i => i.Id).OfType<string>().ToHashSet(StringComparer.Ordinal);
        var inRow = record
            .Examinations.Select((e, n) => (Examination: e, Index: n))
            .Where(x => !historyOnly && x.Examination.Item is { } id && items.Contains(id))
            .GroupBy(x => x.Examination.Item, StringComparer.Ordinal)
            .Select(g => g.MaxBy(x => (x.Examination.DayAt(record.Visit) ?? LocalDate.MaxIsoValue, x.Index)).Index)
            .ToHashSet();
        return
        [
            .. record.Examinations.Select(
                (e, n) =>
                    new CapturedExamination(
                        nodes[n],
                        inRow.Contains(n),
                        e.DayAt(record.Visit) is { } day ? NodaTime.Text.LocalDatePattern.Iso.Format(day) : null
                    )
            ),
        ];
    }
}

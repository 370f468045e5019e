using System.Text.Json.Nodes;

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>Finds rows of a record to edit in a test.</summary>
internal static class RecordEdits
{
    public static JsonObject Item(this JsonObject record, string id) => record.Rows("items").Single(i => (string?)i["id"] == id);

    /// <summary>The examination of the item at the visit itself, not an earlier one.</summary>
    public static JsonObject ExaminationOf(this JsonObject record, string item) =>
        record.Rows("examinations").Last(e => (string?)e["item"] == item);

    public static JsonObject Observation(this JsonObject examination, string criterion) =>
        examination.Rows("observations").Single(o => (string?)o["criterion"] == criterion);

    public static IEnumerable<JsonObject> Rows(this JsonObject record, string member) =>
        record[member]!.AsArray().Select(n => n!.AsObject());

    /// <summary>Keeps one item with all that is said of it, and the visit, people and limits.</summary>
    public static JsonObject Only(this JsonObject record, params string[] items)
    {
        foreach (
            var (member, key) in new[]
            {
                ("items", "id"),
                ("examinations", "item"),
                ("renewals", "item"),
                ("remedies", "item"),
                ("releases", "item"),
                ("disposals", "item"),
            }
        )
        {
            if (record[member] is not JsonArray rows)
                continue;
            foreach (var row in rows.Where(r => !items.Contains((string?)r![key], StringComparer.Ordinal)).ToList())
                rows.Remove(row);
        }
        return record;
    }
}

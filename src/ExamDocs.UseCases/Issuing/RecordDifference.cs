using System.Text.Json.Nodes;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;

namespace ExamDocs.UseCases.Issuing;

/// <summary>Something that two versions of a record give differently.</summary>
/// <param name="What">The member of the record format, for example items/serial; or items/added and items/removed.</param>
/// <param name="Whose">The item's id, the person's name or the model; null for the visit itself.</param>
/// <param name="Item">The item's id; null for what is not of one item.</param>
internal sealed record RecordChange(string What, string? Whose, string? Item);

/// <summary>Names what two versions of a visit's record give differently, in the order of the record.</summary>
internal static class RecordDifference
{
    /// <summary>What a change of a maker's limits is called.</summary>
    public const string OfLimits = "limits";

    private static readonly string[] RowsOfItems = ["renewals", "remedies", "releases", "disposals"];

    public static IReadOnlyList<RecordChange> Between(ExaminationRecord before, ExaminationRecord after)
    {
        var (old, now) = (Json(before), Json(after));
        return
        [
            .. Members(old["visit"], now["visit"]).Select(m => new RecordChange($"visit/{m}", null, null)),
            .. Rows(old, now, "items", "id").SelectMany(Item),
            .. Rows(old, now, "examinations", "item").SelectMany(Examination),
            .. RowsOfItems.SelectMany(list => Rows(old, now, list, "item").Where(Differ).Select(r => new RecordChange(list, r.Key, r.Key))),
            .. Rows(old, now, "people", "id").Where(Differ).Select(r => new RecordChange("people", Name(r), null)),
            .. Limits(old, now),
        ];
    }

    private static JsonObject Json(ExaminationRecord record) => JsonNode.Parse(JsonRecordWriter.Write(record))!.AsObject();

    private static IEnumerable<RecordChange> Item((string Key, List<JsonObject> Before, List<JsonObject> After) rows) =>
        Paired(rows, "items/added", "items/removed", m => $"items/{m}");

    private static IEnumerable<RecordChange> Examination((string Key, List<JsonObject> Before, List<JsonObject> After) rows) =>
        Paired(rows, "examinations", "examinations", m => $"examinations/{m}");

    private static IEnumerable<RecordChange> Paired(
        (string Key, List<JsonObject> Before, List<JsonObject> After) rows,
        string added,
        string removed,
        Func<string, string> member
    )
    {
        var (key, before, after) = rows;
        if (before.Count != after.Count)
            return [new RecordChange(before.Count < after.Count ? added : removed, key, key)];
        return before
            .Zip(after)
            .SelectMany(p => Members(p.First, p.Second))
            .Distinct(StringComparer.Ordinal)
            .Select(m => new RecordChange(member(m), key, key));
    }

    private static IEnumerable<RecordChange> Limits(JsonObject before, JsonObject after)
    {
        var (old, now) = (List(before, OfLimits), List(after, OfLimits));
        return old.Where(o => !now.Exists(n => JsonNode.DeepEquals(o, n)))
            .Concat(now.Where(n => !old.Exists(o => JsonNode.DeepEquals(o, n))))
            .Select(l => Model(Text(l, "maker"), Text(l, "model")))
            .Distinct(StringComparer.Ordinal)
            .Select(model => new RecordChange(OfLimits, model, null));
    }

    /// <summary>Whose limits they are, as a change of them says it.</summary>
    public static string ModelOf(MakersLimits limits) => Model(limits.Maker, limits.Model);

    private static string Model(string? maker, string? model) => $"{maker} {model}".Trim();

    /// <summary>Rows of a list in both versions, those of one thing together, in the order of the later version.</summary>
    private static IEnumerable<(string Key, List<JsonObject> Before, List<JsonObject> After)> Rows(
        JsonObject before,
        JsonObject after,
        string list,
        string key
    )
    {
        var (old, now) = (
            List(before, list).ToLookup(r => Text(r, key), StringComparer.Ordinal),
            List(after, list).ToLookup(r => Text(r, key), StringComparer.Ordinal)
        );
        return now.Select(g => g.Key)
            .Concat(old.Select(g => g.Key))
            .Distinct(StringComparer.Ordinal)
            .Select(k => (k, old[k].ToList(), now[k].ToList()));
    }

    private static IEnumerable<string> Members(JsonNode? before, JsonNode? after) =>
        (after as JsonObject ?? [])
            .Concat(before as JsonObject ?? [])
            .Select(m => m.Key)
            .Distinct(StringComparer.Ordinal)
            .Where(m => !JsonNode.DeepEquals(before?[m], after?[m]));

    private static bool Differ((string Key, List<JsonObject> Before, List<JsonObject> After) rows) =>
        rows.Before.Count != rows.After.Count || rows.Before.Zip(rows.After).Any(p => !JsonNode.DeepEquals(p.First, p.Second));

    private static string Name((string Key, List<JsonObject> Before, List<JsonObject> After) rows) =>
        rows.After.Concat(rows.Before).Select(p => Text(p, "name")).FirstOrDefault(n => n.Length > 0) ?? rows.Key;

    private static List<JsonObject> List(JsonObject record, string member) => [.. (record[member] as JsonArray ?? []).OfType<JsonObject>()];

    private static string Text(JsonObject row, string member) =>
        row[member] is JsonValue value && value.TryGetValue<string>(out var text) ? text : "";
}

using System.Globalization;
using System.Text.Json.Nodes;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>Small edits to a record, so that a test plants exactly one thing.</summary>
internal static class RecordEdits
{
    public static JsonObject Item(this JsonObject record, string id = GoodRecord.Id) => Find(record, "items", "id", id);

    public static JsonObject Exam(this JsonObject record, string id = GoodRecord.Id) => Find(record, "examinations", "item", id);

    public static JsonObject Limits(this JsonObject record, string id = GoodRecord.Id) => Find(record, "limits", "model", "M-" + id);

    public static JsonArray Observations(this JsonObject record, string id = GoodRecord.Id) => record.Exam(id)["observations"]!.AsArray();

    public static JsonObject Observation(this JsonObject record, string criterion, string id = GoodRecord.Id) =>
        record
            .Observations(id)
            .Select(o => o!.AsObject())
            .First(o => string.Equals((string?)o["criterion"], criterion, StringComparison.Ordinal));

    /// <summary>Answers a criterion, with a note where the state needs one.</summary>
    public static JsonObject Answer(this JsonObject record, string criterion, string state, string id = GoodRecord.Id)
    {
        var observation = record.Observation(criterion, id);
        observation["state"] = state;
        if (state is "noted" or "doubt" or "defect")
            observation["note"] = "seen at the middle";
        return record;
    }

    public static JsonObject Conclude(this JsonObject record, string conclusion, string id = GoodRecord.Id)
    {
        record.Exam(id)["conclusion"] = conclusion;
        return record;
    }

    /// <summary>A complete defect entry that could become a danger on the day given.</summary>
    public static JsonObject Later(this JsonObject record, string criterion, string? on, string id = GoodRecord.Id)
    {
        var defect = Defect(criterion, "later");
        if (on is not null)
            defect["becomesDangerOn"] = on;
        return record.Append(id, "defects", defect);
    }

    public static JsonObject Now(this JsonObject record, string criterion, string id = GoodRecord.Id) =>
        record.Append(id, "defects", Defect(criterion, "now"));

    public static JsonObject Station(this JsonObject record, int positionMm, params decimal[] readings) =>
        record.Append(
            GoodRecord.Id,
            "diameters",
            new JsonObject
            {
                ["positionMm"] = positionMm,
                ["readingsMm"] = new JsonArray([.. readings.Select(r => (JsonNode)JsonValue.Create(r))]),
            }
        );

    /// <summary>Adds to a list of an item's examination.</summary>
    public static JsonObject Append(this JsonObject record, string id, string list, JsonNode entry)
    {
        ListOf(record.Exam(id), list).Add(entry);
        return record;
    }

    /// <summary>Adds a row to a list of the record, for example releases.</summary>
    public static JsonObject Row(this JsonObject record, string list, string json)
    {
        ListOf(record, list).Add(JsonNode.Parse(json));
        return record;
    }

    public static JsonObject Renew(
        this JsonObject record,
        string item,
        string removed,
        string? fitted = null,
        string on = GoodRecord.ExaminedOn
    )
    {
        var fit = fitted is null ? "" : $"\"fittedPart\":\"{fitted}\",";
        return record.Row(
            "renewals",
            $$"""
            {"item":"{{item}}","removedPart":"{{removed}}",{{fit}}"reason":"worn","doneBy":"ex1","supervisedBy":"ex1",
             "doneOn":"{{on}}"}
            """
        );
    }

    public static JsonObject Release(this JsonObject record, string? document, string id = GoodRecord.Id, string on = GoodRecord.ExaminedOn)
    {
        var number = document is null ? "" : $"\"document\":\"{document}\",";
        return record.Row(
            "releases",
            $$"""
            {"item":"{{id}}",{{number}}"by":"ex1","on":"{{on}}","grounds":"the part was renewed and examined"}
            """
        );
    }

    /// <summary>An earlier examination of the item with every criterion clear; the caller may edit it.</summary>
    public static JsonObject Earlier(this JsonObject record, string category, string on, Action<JsonObject>? edit = null)
    {
        var examination = GoodRecord.Examination(GoodRecord.Id, category, on);
        edit?.Invoke(examination);
        record["examinations"]!.AsArray().Add(examination);
        return record;
    }

    public static JsonObject With(this JsonObject row, string member, JsonNode? value)
    {
        row[member] = value;
        return row;
    }

    public static JsonObject Without(this JsonObject row, params string[] members)
    {
        foreach (var member in members)
            row.Remove(member);
        return row;
    }

    public static JsonObject Copy(this JsonObject record) => record.DeepClone().AsObject();

    public static string Day(int year, int month, int day) =>
        new DateOnly(year, month, day).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static JsonObject Defect(string criterion, string danger) =>
        JsonNode
            .Parse(
                $$"""
                {"criterion":"{{criterion}}","part":"middle","description":"worn","danger":"{{danger}}","remedy":"renew it",
                 "notified":{"whom":"Tallowmere Tree Care","how":"by telephone","on":"2026-05-11"} }
                """
            )!
            .AsObject();

    private static JsonArray ListOf(JsonObject row, string list)
    {
        if (row[list] is not JsonArray rows)
            row[list] = rows = [];
        return rows;
    }

    private static JsonObject Find(JsonObject record, string list, string key, string value) =>
        record[list]!.AsArray().Select(r => r!.AsObject()).First(r => string.Equals((string?)r[key], value, StringComparison.Ordinal));
}

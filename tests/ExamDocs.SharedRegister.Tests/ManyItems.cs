using System.Text.Json.Nodes;
using ExamDocs.Cli.Tests;

namespace ExamDocs.SharedRegister.Tests;

/// <summary>A visit at which many cords like that of the small record were examined, all of them fit.</summary>
internal static class ManyItems
{
    public static JsonObject Of(int count, string reference = "V-2026-044")
    {
        var record = Records.Small();
        record["visit"]!["reference"] = reference;
        var (item, examination) = (record["items"]![0]!, record["examinations"]![0]!);
        (record["items"], record["examinations"]) = (
            new JsonArray([.. Enumerable.Range(1, count).Select(n => Named(item, "id", n, serial: true))]),
            new JsonArray([.. Enumerable.Range(1, count).Select(n => Named(examination, "item", n, serial: false))])
        );
        return record;
    }

    private static JsonNode Named(JsonNode like, string id, int number, bool serial)
    {
        var one = like.DeepClone();
        one[id] = FormattableString.Invariant($"COR-{number:0000}");
        if (serial)
            one["serial"] = FormattableString.Invariant($"HC-{number:0000}-{number % 7}");
        return one;
    }
}

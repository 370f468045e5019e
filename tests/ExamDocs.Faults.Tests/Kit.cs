using System.Globalization;
using System.Text.Json.Nodes;
using ExamDocs.Cli.Tests;

namespace ExamDocs.Faults.Tests;

/// <summary>Records of withdrawn cords: each calls for one quarantine label.</summary>
internal static class Kit
{
    /// <summary>The part of the job that these proofs run: short, with as many documents as there are items.</summary>
    public static readonly string[] OnlyLabels = ["--only", "quarantine-label"];

    /// <param name="name">Begins the id of each item, so that records of different names have nothing in common.</param>
    /// <param name="items">1 or more.</param>
    /// <param name="version">Above 1 the record corrects the one before, and its labels replace those.</param>
    public static JsonObject Withdrawn(string name, int items, int version = 1)
    {
        var record = Records.Cut();
        var (item, examination) = (record["items"]![0]!, record["examinations"]![0]!);
        var (all, examinations) = (new JsonArray(), new JsonArray());
        item["description"] = FormattableString.Invariant($"{item["description"]}, entry {version}");
        for (var number = 1; number <= items; number++)
        {
            var id = string.Create(CultureInfo.InvariantCulture, $"{name}-{number:000}");
            all.Add(With(item, "id", id, "serial", $"S-{id}"));
            examinations.Add(With(examination, "item", id));
        }
        record["visit"]!["reference"] = $"V-{name}";
        record["items"] = all;
        record["examinations"] = examinations;
        return record;
    }

    private static JsonNode With(JsonNode node, params string[] members)
    {
        var copy = node.DeepClone();
        for (var index = 0; index < members.Length; index += 2)
            copy[members[index]] = members[index + 1];
        return copy;
    }
}

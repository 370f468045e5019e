using System.Text.Json;
using System.Text.Json.Nodes;
using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;

namespace ExamDocs.Intake.RuleFiles;

/// <summary>Writes a maker's safety notice in the format examdocs-recall/1. Read again, it gives the same notice.</summary>
public static class SafetyNoticeWriter
{
    /// <returns>The members that say something, always in the same order: two notices that say the same are written the same.</returns>
    public static JsonObject Write(SafetyNotice notice)
    {
        ArgumentNullException.ThrowIfNull(notice);
        var file = new SafetyNoticeFile
        {
            Format = SafetyNotice.FormatName,
            Maker = notice.Maker,
            AlsoCalled = notice.AlsoCalled,
            Reference = notice.Reference,
            On = notice.On,
            Demands = notice.Demands,
            ReadAt = notice.ReadAt,
            Affected = [.. notice.Affected.Select(Kit)],
        };
        var node = JsonSerializer.SerializeToNode(file, RuleJson.Options)!;
        LeaveOutEmpty(node);
        return node.AsObject();
    }

    private static void LeaveOutEmpty(JsonNode node)
    {
        if (node is JsonArray list)
        {
            foreach (var one in list.OfType<JsonNode>())
                LeaveOutEmpty(one);
        }
        else if (node is JsonObject members)
        {
            foreach (var (name, value) in members.ToList())
            {
                if (value is null or JsonArray { Count: 0 } || (value.GetValueKind() is JsonValueKind.Number && (int)value == 0))
                    members.Remove(name);
                else
                    LeaveOutEmpty(value);
            }
        }
    }

    private static NamedKitFile Kit(NamedKit kit) =>
        new()
        {
            Models = kit.Models,
            PartNumbers = kit.PartNumbers,
            SerialRanges = kit.SerialRanges,
            SerialPatterns = kit.SerialPatterns,
            Serials = kit.Serials,
            CheckCharacters = kit.CheckCharacters,
            Batches = kit.Batches,
            Manufactured = (kit.ManufacturedFrom, kit.ManufacturedTo) is (null, null)
                ? null
                : new MadeBetween(kit.ManufacturedFrom?.ToString(), kit.ManufacturedTo?.ToString()),
        };
}

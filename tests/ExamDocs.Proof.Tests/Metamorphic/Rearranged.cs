using System.Text.Json.Nodes;
using ExamDocs.Proof.Tests.Generating;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Metamorphic;

/// <summary>The same record written another way.</summary>
internal static class Rearranged
{
    private static readonly HashSet<string> ItemIds = ["item", "fittedTo", "removedPart", "fittedPart"];

    private static readonly HashSet<string> PersonIds =
    [
        "examiner",
        "author",
        "authenticatedBy",
        "doneBy",
        "by",
        "supervisedBy",
        "retiedBy",
    ];

    public static Draft Shuffled(Draft draft, Dice dice) => Copy(draft, node => Shuffle(node, dice), id => id);

    /// <summary>Every id of an item and of a person gets another beginning, wherever it stands.</summary>
    public static Draft Renamed(Draft draft) => Copy(draft, node => Rename(node, "", ""), NewItem);

    public static string NewItem(string id) => id.Replace("K-", "Zed.", StringComparison.Ordinal);

    private static Draft Copy(Draft draft, Action<JsonNode> change, Func<string, string> item)
    {
        Draft copy = new()
        {
            Record = draft.Record.DeepClone().AsObject(),
            On = draft.On,
            AsOf = draft.AsOf,
        };
        change(copy.Record);
        copy.Store.AddRange(draft.Store.Select(h => h with { Item = item(h.Item), Parts = [.. h.Parts.Select(item)] }));
        return copy;
    }

    private static void Shuffle(JsonNode node, Dice dice)
    {
        switch (node)
        {
            case JsonObject owner:
                foreach (var child in owner.Select(member => member.Value).OfType<JsonNode>().ToList())
                {
                    Shuffle(child, dice);
                }

                break;
            case JsonArray list:
                foreach (var child in list.OfType<JsonNode>().ToList())
                {
                    Shuffle(child, dice);
                }

                var mixed = list.OrderBy(_ => dice.Next()).ToList();
                list.Clear();
                mixed.ForEach(list.Add);
                break;
        }
    }

    private static void Rename(JsonNode node, string name, string owner)
    {
        if (node is JsonArray list)
        {
            foreach (var child in list.OfType<JsonNode>())
            {
                Rename(child, "", name);
            }
        }
        else if (node is JsonObject members)
        {
            foreach (var (key, value) in members.ToList())
            {
                if (value is JsonValue single && single.TryGetValue<string>(out var text) && NewId(key, owner, text) is { } other)
                {
                    members[key] = other;
                }
                else if (value is JsonObject or JsonArray)
                {
                    Rename(value, key, owner);
                }
            }
        }
    }

    private static string? NewId(string key, string owner, string text) =>
        ItemIds.Contains(key) || (key == "id" && owner == "items") ? NewItem(text)
        : PersonIds.Contains(key) || (key == "id" && owner == "people") ? text.Replace("ex", "pers", StringComparison.Ordinal)
        : null;
}

using System.Globalization;
using System.Text.Json.Nodes;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;

namespace ExamDocs.Core.Tests.Rules;

/// <summary>One slip made in the good record, and the one code that must answer to it.</summary>
/// <param name="Code">The only code that may be found.</param>
/// <param name="What">What the slip is, in words.</param>
/// <param name="Pointers">Where it is found: every place, and no other.</param>
/// <param name="Make">Makes the slip.</param>
internal sealed record RuleCase(string Code, string What, string[] Pointers, Action<JsonNode> Make)
{
    /// <summary>Codes that the slip cannot be made without, besides the one it is about; a blank between two.</summary>
    public string? Besides { get; init; }

    /// <summary>What is known from before.</summary>
    public History History { get; init; } = History.None;

    /// <summary>The categories and regimes that the record can name.</summary>
    public KnownRules Rules { get; init; } = KnownRules.BuiltIn;

    public override string ToString() => $"{Code}: {What}";

    /// <summary>The member at the pointer is taken out, and found missing there.</summary>
    public static RuleCase Gone(string code, string pointer) => new(code, $"{pointer} is missing", [pointer], Without(pointer));

    /// <summary>The member at the pointer holds something wrong, and is found there.</summary>
    public static RuleCase Wrong(string code, string pointer, string json) =>
        new(code, $"{pointer} holds {json}", [pointer], With(pointer, json));

    /// <summary>The member at one pointer holds something wrong, and another place is found at fault.</summary>
    public static RuleCase Leads(string code, string pointer, string json, params string[] found) =>
        new(code, $"{pointer} holds {json}", found, With(pointer, json));

    public static Action<JsonNode> With(string pointer, string json) =>
        record =>
        {
            var (owner, last) = Owner(record, pointer);
            if (owner is JsonArray list)
                list.Add(JsonNode.Parse(json));
            else
                owner.AsObject()[last] = JsonNode.Parse(json);
        };

    /// <summary>A list grows by a copy of one of its elements, altered.</summary>
    public static Action<JsonNode> WithCopy(string list, int of, Action<JsonNode>? altered = null) =>
        record =>
        {
            var elements = At(record, list).AsArray();
            var copy = elements[of]!.DeepClone();
            altered?.Invoke(copy);
            elements.Add(copy);
        };

    public static Action<JsonNode> Without(string pointer) =>
        record =>
        {
            var (owner, last) = Owner(record, pointer);
            if (owner is JsonArray list)
                list.RemoveAt(int.Parse(last, CultureInfo.InvariantCulture));
            else
                Assert.True(owner.AsObject().Remove(last), $"the good record has no {pointer} to take out");
        };

    /// <summary>Several slips one after the other.</summary>
    public static Action<JsonNode> All(params Action<JsonNode>[] slips) =>
        record =>
        {
            foreach (var slip in slips)
                slip(record);
        };

    private static (JsonNode Owner, string Last) Owner(JsonNode record, string pointer)
    {
        var at = pointer.LastIndexOf('/');
        return (At(record, pointer[..at]), pointer[(at + 1)..]);
    }

    /// <summary>The node at the pointer; an object that is not there yet is made.</summary>
    private static JsonNode At(JsonNode record, string pointer) =>
        pointer
            .Split('/', StringSplitOptions.RemoveEmptyEntries)
            .Aggregate(record, (node, step) =>
                node is JsonArray list
                    ? list[int.Parse(step, CultureInfo.InvariantCulture)]!
                    : node[step] ?? (node[step] = new JsonObject())
            );
}

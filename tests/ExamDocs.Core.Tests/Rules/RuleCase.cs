using System.Globalization;
using System.Text.Json.Nodes;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;

namespace ExamDocs.Core.Tests.Rules;

/// <summary>One slip in the good record, and the one code that must find it.</summary>
/// <param name="Code">The only code that may be found.</param>
/// <param name="What">What the slip is, in words.</param>
/// <param name="Pointers">All places at which it must be found, and no others.</param>
/// <param name="Make">Makes the slip.</param>
internal sealed record RuleCase(string Code, string What, string[] Pointers, Action<JsonNode> Make)
{
    /// <summary>Further codes that the slip always causes, with a blank between two.</summary>
    public string? Besides { get; init; }

    /// <summary>What other records know of the items.</summary>
    public History History { get; init; } = History.None;

    /// <summary>The categories and regimes that the record can name.</summary>
    public KnownRules Rules { get; init; } = KnownRules.BuiltIn;

    public override string ToString() => $"{Code}: {What}";

    /// <summary>Removes the member at the pointer; the finding must be there.</summary>
    public static RuleCase Gone(string code, string pointer) => new(code, $"{pointer} is missing", [pointer], Without(pointer));

    /// <summary>Puts a wrong value at the pointer; the finding must be there.</summary>
    public static RuleCase Wrong(string code, string pointer, string json) =>
        new(code, $"{pointer} holds {json}", [pointer], With(pointer, json));

    /// <summary>Puts a wrong value at one pointer; the finding must be at another place.</summary>
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

    /// <summary>Adds to a list an altered copy of one of its elements.</summary>
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

    /// <summary>The node at the pointer; missing objects on the way are created.</summary>
    private static JsonNode At(JsonNode record, string pointer) =>
        pointer
            .Split('/', StringSplitOptions.RemoveEmptyEntries)
            .Aggregate(record, (node, step) =>
                node is JsonArray list
                    ? list[int.Parse(step, CultureInfo.InvariantCulture)]!
                    : node[step] ?? (node[step] = new JsonObject())
            );
}

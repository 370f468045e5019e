using System.Text.Json;
using System.Text.Json.Nodes;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Generating;

/// <summary>A record in the making.</summary>
public sealed class Draft
{
    public required JsonObject Record { get; init; }

    /// <summary>The visit's day.</summary>
    public required DateOnly On { get; init; }

    /// <summary>The day on which it is determined.</summary>
    public DateOnly AsOf { get; set; }

    public List<PastHold> Store { get; } = [];

    public JsonObject Visit => Record["visit"]!.AsObject();

    public JsonArray Items => Record["items"]!.AsArray();

    public JsonArray Limits => Record["limits"]!.AsArray();

    public JsonArray Examinations => Record["examinations"]!.AsArray();

    public JsonArray People => Record["people"]!.AsArray();

    public int Count => Items.Count;

    public JsonObject Item(int index) => Items[index]!.AsObject();

    /// <summary>The examination of that item made at this visit, or a new one where a slip has taken it away.</summary>
    public JsonObject Exam(int index) =>
        Examinations.Select(e => e!.AsObject()).FirstOrDefault(e => (string?)e["item"] == Id(index) && e["examinedOn"] is null) ?? [];

    public JsonObject Limit(int index) =>
        Limits
            .Select(l => l!.AsObject())
            .FirstOrDefault(l =>
                (string?)l["maker"] == (string?)Item(index)["maker"] && (string?)l["model"] == (string?)Item(index)["model"]
            )
        ?? [];

    public string Id(int index) => (string?)Item(index)["id"] ?? "";

    public Kind Kind(int index) => Kinds.All.GetValueOrDefault((string?)Item(index)["category"] ?? "") ?? Kinds.All["connector"];

    public JsonObject Answer(int index, string criterion)
    {
        var observations = Exam(index)["observations"]?.AsArray() ?? [];
        return observations.Select(o => o!.AsObject()).FirstOrDefault(o => (string?)o["criterion"] == criterion) ?? [];
    }

    public JsonArray List(string name) => List(Record, name);

    public static JsonArray List(JsonObject owner, string name)
    {
        if (owner[name] is JsonArray list)
        {
            return list;
        }

        JsonArray made = [];
        owner[name] = made;
        return made;
    }

    public string Json(bool indented = false) => Record.ToJsonString(indented ? Indented : Plain);

    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    private static readonly JsonSerializerOptions Plain = new();
}

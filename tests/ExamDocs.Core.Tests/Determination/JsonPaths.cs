using System.Text.Json.Nodes;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>Places in a record by JSON pointer (RFC 6901; no member name here needs escaping).</summary>
internal static class JsonPaths
{
    /// <summary>Every member and every element, the record itself left out, outermost first.</summary>
    public static IEnumerable<string> All(JsonNode? node, string at = "")
    {
        var children = node switch
        {
            JsonObject row => row.Select(m => (m.Key, m.Value)),
            JsonArray list => list.Select((v, i) => (i.ToString(System.Globalization.CultureInfo.InvariantCulture), v)),
            _ => [],
        };
        foreach (var (key, value) in children.ToList())
        {
            yield return $"{at}/{key}";
            foreach (var below in All(value, $"{at}/{key}"))
                yield return below;
        }
    }

    public static JsonNode? Get(JsonNode record, string pointer) =>
        Steps(pointer).Aggregate<string, JsonNode?>(record, (node, step) => node is JsonArray list ? list[Index(step)] : node![step]);

    public static void Remove(JsonNode record, string pointer)
    {
        var (parent, last) = Split(record, pointer);
        if (parent is JsonArray list)
            list.RemoveAt(Index(last));
        else
            parent.AsObject().Remove(last);
    }

    public static void Set(JsonNode record, string pointer, JsonNode? value)
    {
        var (parent, last) = Split(record, pointer);
        if (parent is JsonArray list)
            list[Index(last)] = value;
        else
            parent[last] = value;
    }

    /// <summary>Misspells a member's name, keeping its value and its place.</summary>
    public static void Rename(JsonNode record, string pointer, string name)
    {
        var (parent, last) = Split(record, pointer);
        var row = parent.AsObject();
        var members = row.Select(m => (Key: string.Equals(m.Key, last, StringComparison.Ordinal) ? name : m.Key, m.Value)).ToList();
        row.Clear();
        foreach (var (key, value) in members)
            row[key] = value;
    }

    public static bool IsMember(JsonNode record, string pointer) => Split(record, pointer).Parent is JsonObject;

    private static (JsonNode Parent, string Last) Split(JsonNode record, string pointer)
    {
        var cut = pointer.LastIndexOf('/');
        return (Get(record, pointer[..cut])!, pointer[(cut + 1)..]);
    }

    private static string[] Steps(string pointer) => pointer.Split('/', StringSplitOptions.RemoveEmptyEntries);

    private static int Index(string step) => int.Parse(step, System.Globalization.CultureInfo.InvariantCulture);
}

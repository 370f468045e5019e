using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using ExamDocs.Core.Recalls;
using Microsoft.AspNetCore.Http;

namespace ExamDocs.Workbench.Pages;

/// <summary>A safety notice as it stands in the form.</summary>
public sealed record NoticeTyped
{
    /// <summary>Ranges that the form has room for.</summary>
    public const int Ranges = 4;

    private IReadOnlyDictionary<string, string> Fields { get; init; } = new Dictionary<string, string>(StringComparer.Ordinal);

    /// <summary>What was typed into a field; empty for nothing.</summary>
    public string this[string field] => Fields.GetValueOrDefault(field, "");

    public bool IsEmpty => Fields.Values.All(v => v.Length == 0);

    public static NoticeTyped Of(IFormCollection form)
    {
        ArgumentNullException.ThrowIfNull(form);
        return new() { Fields = form.ToDictionary(f => f.Key, f => f.Value.ToString().Trim(), StringComparer.Ordinal) };
    }

    /// <summary>The same in the format examdocs-recall/1, with nothing where nothing was typed.</summary>
    public byte[] Json
    {
        get
        {
            var kit = new JsonObject();
            foreach (var list in new[] { "models", "partNumbers", "serialPatterns", "serials", "batches" })
                Put(kit, list, Lines(this[list]));
            Put(kit, "serialRanges", [.. Enumerable.Range(0, Ranges).Select(n => FromTo($"range-{n}")).OfType<JsonNode>()]);
            if (this["checkCharacters"] is { Length: > 0 } typed)
                kit["checkCharacters"] = int.TryParse(typed, CultureInfo.InvariantCulture, out var number) ? number : typed;
            if (FromTo("made") is { } made)
                kit["manufactured"] = made;
            var notice = new JsonObject
            {
                ["format"] = SafetyNotice.FormatName,
                ["maker"] = this["maker"],
                ["reference"] = this["reference"],
                ["on"] = this["on"],
                ["demands"] = this["demands"],
                ["readAt"] = this["readAt"],
                ["affected"] = new JsonArray(kit),
            };
            Put(notice, "alsoCalled", Lines(this["alsoCalled"]));
            return Encoding.UTF8.GetBytes(notice.ToJsonString());
        }
    }

    private static JsonNode[] Lines(string typed) =>
        [
            .. typed
                .Split(['\n', '\r'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
                .Select(line => (JsonNode)JsonValue.Create(line)!),
        ];

    private static void Put(JsonObject to, string member, JsonNode[] values)
    {
        if (values.Length > 0)
            to[member] = new JsonArray(values);
    }

    private JsonObject? FromTo(string field)
    {
        var ends = new JsonObject();
        foreach (var end in new[] { "from", "to" })
        {
            if (this[$"{field}-{end}"] is { Length: > 0 } typed)
                ends[end] = typed;
        }
        return ends.Count == 0 ? null : ends;
    }
}

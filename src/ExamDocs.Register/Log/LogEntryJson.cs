using System.Globalization;
using System.Text;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.Register.Log;

/// <summary>The exact encoding of a log entry: RFC 8785, members by name, those that do not apply left out.</summary>
internal static class LogEntryJson
{
    public static byte[] Write(LogEntry entry)
    {
        var json = new StringBuilder("{");
        if (entry.By is { } by)
            json.Append("\"by\":").AppendQuoted(by).Append(',');
        json.Append("\"day\":").AppendQuoted(LocalDatePattern.Iso.Format(entry.Day)).Append(",\"items\":[");
        for (var index = 0; index < entry.Document.Items.Count; index++)
            (index == 0 ? json : json.Append(',')).AppendQuoted(entry.Document.Items[index]);
        json.Append("],\"kind\":").AppendQuoted(entry.Document.Kind);
        json.Append(",\"number\":").AppendQuoted(entry.Document.Number);
        json.Append(CultureInfo.InvariantCulture, $",\"position\":{entry.Position}");
        if (entry.Reason is { } reason)
            json.Append(",\"reason\":").AppendQuoted(reason);
        if (entry.Sha256 is { } sha256)
            json.Append(",\"sha256\":").AppendQuoted(sha256);
        json.Append(",\"what\":").AppendQuoted(entry.What).Append('}');
        return CanonicalText.Encode(json);
    }

    /// <returns>Null where the bytes are not exactly what <see cref="Write"/> gives.</returns>
    public static LogEntry? Read(ReadOnlyMemory<byte> bytes)
    {
        try
        {
            using var json = JsonDocument.Parse(bytes);
            var entry = Read(json.RootElement);
            // Whatever is written otherwise, or is one member too many, comes out different.
            return entry is not null && bytes.Span.SequenceEqual(Write(entry)) ? entry : null;
        }
        catch (Exception other) when (other is JsonException or InvalidOperationException or FormatException
            or ArgumentException or KeyNotFoundException)
        {
            return null;
        }
    }

    private static LogEntry? Read(JsonElement json)
    {
        var document = new LoggedDocument(
            Text(json, "number"), Text(json, "kind"), [.. json.GetProperty("items").EnumerateArray().Select(i => i.GetString()!)]);
        var position = json.GetProperty("position").GetInt64();
        var day = LocalDatePattern.Iso.Parse(Text(json, "day")).GetValueOrThrow();
        return Text(json, "what") switch
        {
            LogEntry.IssuedWord => LogEntry.Issued(position, document, Text(json, "sha256"), day),
            LogEntry.VoidWord => LogEntry.Void(position, document, Text(json, "reason"), day),
            LogEntry.WithdrawnWord => LogEntry.Withdrawn(position, document, Text(json, "reason"), day),
            LogEntry.ReplacedWord => LogEntry.Replaced(position, document, Text(json, "by"), Text(json, "reason"), day),
            _ => null,
        };
    }

    private static string Text(JsonElement json, string member) => json.GetProperty(member).GetString()!;
}

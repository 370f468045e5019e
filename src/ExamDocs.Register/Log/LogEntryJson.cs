using System.Text.Json;
using ExamDocs.Register.Model;
using NodaTime.Text;

namespace ExamDocs.Register.Log;

/// <summary>The exact encoding of a log entry: RFC 8785, members by name, those that do not apply left out.</summary>
internal static class LogEntryJson
{
    public static byte[] Write(LogEntry entry)
    {
        var json = new CanonicalObject()
            .Text("by", entry.By)
            .Day("day", entry.Day)
            .Texts("items", entry.Document?.Items)
            .Text("kind", entry.Document?.Kind)
            .Text("number", entry.Document?.Number)
            .Number("position", entry.Position)
            .Text("reason", entry.Reason)
            .Text("sha256", entry.Sha256)
            .Text("row", entry.Row)
            .Text("item", entry.Item)
            .Text("register", entry.Register)
            .Text("place", entry.Place)
            .Text("what", entry.What)
            .Number("byVisit", entry.ByVisit)
            .Objects("ends", entry.Ends.Count == 0 ? null : entry.Ends.Select(End));
        if (entry.Visit is { } visit)
        {
            json.Number("visit", visit.Number)
                .Text("record", visit.Record)
                .Number("seen", visit.Seen)
                .Text("version", visit.Version)
                .Day("asOf", visit.AsOf)
                .Text("origin", visit.Origin)
                .Number("originNumber", visit.OriginNumber)
                .Objects("outcomes", visit.Outcomes?.Select(LoggedOutcome.Json));
        }
        return json.Bytes();
    }

    /// <returns>Null where the bytes are not exactly what <see cref="Write"/> gives.</returns>
    public static LogEntry? Read(ReadOnlyMemory<byte> bytes)
    {
        try
        {
            using var json = JsonDocument.Parse(bytes);
            var entry = Read(json.RootElement);
            // A member too many, or another way of writing, gives other bytes.
            return entry is not null && bytes.Span.SequenceEqual(Write(entry)) ? entry : null;
        }
        catch (Exception other)
            when (other
                    is JsonException
                        or InvalidOperationException
                        or FormatException
                        or ArgumentException
                        or KeyNotFoundException
                        or UnparsableValueException
            )
        {
            return null;
        }
    }

    private static CanonicalObject End(LineEnd end) =>
        new CanonicalObject().Number("visit", end.Visit).Text("item", end.Item).Day("on", end.On).Text("why", end.Why);

    private static LogEntry? Read(JsonElement json)
    {
        var (position, day) = (json.GetProperty("position").GetInt64(), json.DayOrNull("day")!.Value);
        return json.Text("what") switch
        {
            LogEntry.IssuedWord => LogEntry.Issued(position, Document(json), json.Text("sha256"), day, json.TextOrNull("row")),
            LogEntry.VoidWord => LogEntry.Void(position, Document(json), json.Text("reason"), day, json.TextOrNull("row")),
            LogEntry.ListedWord => LogEntry.Listed(position, Document(json), json.Text("row"), day),
            LogEntry.WithdrawnWord => LogEntry.Withdrawn(position, Document(json), json.Text("reason"), day),
            LogEntry.ReplacedWord => LogEntry.Replaced(position, Document(json), json.Text("by"), json.Text("reason"), day),
            LogEntry.EndedWord => LogEntry.Ended(
                position,
                Document(json),
                json.GetProperty("byVisit").GetInt32(),
                json.Text("reason"),
                day
            ),
            LogEntry.LineEndedWord => LogEntry.LineEnded(
                position,
                Document(json),
                json.Text("item"),
                json.GetProperty("byVisit").GetInt32(),
                json.Text("reason"),
                day
            ),
            LogEntry.EndsWord => LogEntry.EndsOf(
                position,
                json.GetProperty("byVisit").GetInt32(),
                [.. json.GetProperty("ends").EnumerateArray().Select(ReadEnd)],
                day
            ),
            LogEntry.RememberedWord => LogEntry.Remembered(position, Visit(json), day),
            LogEntry.KnownWord => LogEntry.Known(position, Visit(json), day),
            LogEntry.KeptAtWord => LogEntry.KeptAt(position, json.Text("place"), day),
            LogEntry.ClearedWord => LogEntry.Cleared(position, json.Text("place"), day),
            LogEntry.RegisterWord => LogEntry.Of(position, json.Text("register"), day),
            _ => null,
        };
    }

    private static LoggedDocument Document(JsonElement json) => new(json.Text("number"), json.Text("kind"), json.Texts("items"));

    private static LoggedVisit Visit(JsonElement json) =>
        new(json.GetProperty("visit").GetInt32(), json.Text("record"))
        {
            Seen = json.NumberOrNull("seen"),
            Version = json.TextOrNull("version"),
            AsOf = json.DayOrNull("asOf"),
            Origin = json.TextOrNull("origin"),
            OriginNumber = json.NumberOrNull("originNumber"),
            Outcomes = json.TryGetProperty("outcomes", out var outcomes) ? [.. outcomes.EnumerateArray().Select(LoggedOutcome.Read)] : null,
        };

    private static LineEnd ReadEnd(JsonElement json) =>
        new(json.GetProperty("visit").GetInt32(), json.Text("item"), json.DayOrNull("on")!.Value, json.Text("why"));
}

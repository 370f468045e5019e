using System.Text.Json;
using NodaTime;
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
                .Objects("outcomes", visit.Outcomes?.Select(Outcome));
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
            // Whatever is written otherwise, or is one member too many, comes out different.
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

    /// <summary>An outcome as the log has it.</summary>
    public static CanonicalObject Outcome(RememberedOutcome outcome) =>
        new CanonicalObject()
            .Text("item", Whole(outcome.Item))
            .Text("outcome", Whole(outcome.Outcome))
            .Texts("codes", outcome.Codes.Select(c => Whole(c)!))
            .Day("examinedOn", outcome.ExaminedOn)
            .Day("until", outcome.Until)
            .Day("nextBy", outcome.NextBy)
            .Texts("parts", outcome.Parts.Select(p => Whole(p)!))
            .True("neverReleasable", outcome.NeverReleasable);

    private static string? Whole(string? text) => text is null ? null : Storage.Sql.Storable(text);

    private static CanonicalObject End(LineEnd end) =>
        new CanonicalObject().Number("visit", end.Visit).Text("item", end.Item).Day("on", end.On).Text("why", end.Why);

    private static LogEntry? Read(JsonElement json)
    {
        var (position, day) = (json.GetProperty("position").GetInt64(), Day(json, "day")!.Value);
        return Text(json, "what") switch
        {
            LogEntry.IssuedWord => LogEntry.Issued(position, Document(json), Text(json, "sha256"), day, Maybe(json, "row")),
            LogEntry.VoidWord => LogEntry.Void(position, Document(json), Text(json, "reason"), day, Maybe(json, "row")),
            LogEntry.ListedWord => LogEntry.Listed(position, Document(json), Text(json, "row"), day),
            LogEntry.WithdrawnWord => LogEntry.Withdrawn(position, Document(json), Text(json, "reason"), day),
            LogEntry.ReplacedWord => LogEntry.Replaced(position, Document(json), Text(json, "by"), Text(json, "reason"), day),
            LogEntry.EndedWord => LogEntry.Ended(
                position,
                Document(json),
                json.GetProperty("byVisit").GetInt32(),
                Text(json, "reason"),
                day
            ),
            LogEntry.LineEndedWord => LogEntry.LineEnded(
                position,
                Document(json),
                Text(json, "item"),
                json.GetProperty("byVisit").GetInt32(),
                Text(json, "reason"),
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
            LogEntry.RegisterWord => LogEntry.Of(position, Text(json, "register"), day),
            _ => null,
        };
    }

    private static LoggedDocument Document(JsonElement json) => new(Text(json, "number"), Text(json, "kind"), Texts(json, "items"));

    private static LoggedVisit Visit(JsonElement json) =>
        new(json.GetProperty("visit").GetInt32(), Text(json, "record"))
        {
            Seen = Number(json, "seen"),
            Version = Maybe(json, "version"),
            AsOf = Day(json, "asOf"),
            Origin = Maybe(json, "origin"),
            OriginNumber = Number(json, "originNumber"),
            Outcomes = json.TryGetProperty("outcomes", out var outcomes) ? [.. outcomes.EnumerateArray().Select(ReadOutcome)] : null,
        };

    private static RememberedOutcome ReadOutcome(JsonElement json) =>
        new(Maybe(json, "item"), Text(json, "outcome"), Texts(json, "codes"))
        {
            ExaminedOn = Day(json, "examinedOn"),
            Until = Day(json, "until"),
            NextBy = Day(json, "nextBy"),
            Parts = Texts(json, "parts"),
            NeverReleasable = json.TryGetProperty("neverReleasable", out var never) && never.GetBoolean(),
        };

    private static LineEnd ReadEnd(JsonElement json) =>
        new(json.GetProperty("visit").GetInt32(), Text(json, "item"), Day(json, "on")!.Value, Text(json, "why"));

    private static string Text(JsonElement json, string member) => json.GetProperty(member).GetString()!;

    private static string? Maybe(JsonElement json, string member) => json.TryGetProperty(member, out var value) ? value.GetString() : null;

    private static int? Number(JsonElement json, string member) => json.TryGetProperty(member, out var value) ? value.GetInt32() : null;

    private static LocalDate? Day(JsonElement json, string member) =>
        Maybe(json, member) is { } text ? LocalDatePattern.Iso.Parse(text).GetValueOrThrow() : null;

    private static string[] Texts(JsonElement json, string member) =>
        [.. json.GetProperty(member).EnumerateArray().Select(i => i.GetString()!)];
}

using System.Text.Json;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.Register.Log;

/// <summary>Reads members of a log entry. One that is missing or of another kind throws, and the entry counts as unreadable.</summary>
internal static class EntryMembers
{
    public static string Text(this JsonElement json, string member) => json.GetProperty(member).GetString()!;

    public static string? TextOrNull(this JsonElement json, string member) =>
        json.TryGetProperty(member, out var value) ? value.GetString() : null;

    public static int? NumberOrNull(this JsonElement json, string member) =>
        json.TryGetProperty(member, out var value) ? value.GetInt32() : null;

    public static LocalDate? DayOrNull(this JsonElement json, string member) =>
        json.TextOrNull(member) is { } text ? LocalDatePattern.Iso.Parse(text).GetValueOrThrow() : null;

    public static string[] Texts(this JsonElement json, string member) =>
        [.. json.GetProperty(member).EnumerateArray().Select(i => i.GetString()!)];
}

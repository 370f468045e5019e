using System.Text.Json;

namespace ExamDocs.Proof.Tests.SecondEvaluator;

/// <summary>Reads members of a record; an empty string is a missing value.</summary>
internal static class JsonReading
{
    public static string? Text(this JsonElement element, string name) =>
        element.ValueKind == JsonValueKind.Object
        && element.TryGetProperty(name, out var value)
        && value.ValueKind == JsonValueKind.String
        && value.GetString() is { Length: > 0 } text
            ? text
            : null;

    public static int? Whole(this JsonElement element, string name) =>
        element.Member(name) is { ValueKind: JsonValueKind.Number } value && value.TryGetInt32(out var number) ? number : null;

    public static decimal? Number(this JsonElement element, string name) =>
        element.Member(name) is { ValueKind: JsonValueKind.Number } value ? value.GetDecimal() : null;

    public static bool Yes(this JsonElement element, string name) => element.Member(name)?.ValueKind == JsonValueKind.True;

    public static bool No(this JsonElement element, string name) => element.Member(name)?.ValueKind == JsonValueKind.False;

    public static JsonElement? Member(this JsonElement element, string name) =>
        element.ValueKind == JsonValueKind.Object && element.TryGetProperty(name, out var value) && value.ValueKind != JsonValueKind.Null
            ? value
            : null;

    public static IReadOnlyList<JsonElement> List(this JsonElement element, string name) =>
        element.Member(name) is { ValueKind: JsonValueKind.Array } value ? [.. value.EnumerateArray()] : [];

    public static Span? Dates(this JsonElement element, string name) => Days.Read(element.Text(name));

    public static DateOnly? Day(this JsonElement element, string name) => Days.ReadDay(element.Text(name));
}

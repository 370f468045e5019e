using System.Text.Json;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;

namespace ExamDocs.Register.Rows;

/// <summary>
/// The keys of a record as it is stored: only what <see cref="ItemKeys"/> looks at is read, so that a register can be brought up
/// to date without the reader of whole records. A check of the register compares them with what that reader gives.
/// </summary>
internal static class StoredKeys
{
    /// <param name="json">The record; one that cannot be read has no keys, and the check names it.</param>
    public static IReadOnlyList<ItemKey> Of(byte[] json)
    {
        try
        {
            using var document = JsonDocument.Parse(json);
            return document.RootElement.ValueKind is JsonValueKind.Object ? ItemKeys.Of(Record(document.RootElement)) : [];
        }
        catch (Exception unreadable) when (unreadable is JsonException or InvalidOperationException)
        {
            return [];
        }
    }

    private static ExaminationRecord Record(JsonElement json) =>
        new()
        {
            Items =
            [
                .. List(json, "items")
                    .Select(i => new Item
                    {
                        Id = Text(i, "id"),
                        Serial = Text(i, "serial"),
                        Formerly = Text(i, "formerly"),
                        FittedTo = Text(i, "fittedTo"),
                        NotTheSameAs = [.. List(i, "notTheSameAs").Select(o => new DifferentItem { Id = Text(o, "id") })],
                    }),
            ],
            Examinations = [.. List(json, "examinations").Select(e => new Examination { Item = Text(e, "item") })],
            Renewals =
            [
                .. List(json, "renewals")
                    .Select(r => new Renewal
                    {
                        Item = Text(r, "item"),
                        RemovedPart = Text(r, "removedPart"),
                        FittedPart = Text(r, "fittedPart"),
                    }),
            ],
            Remedies = [.. List(json, "remedies").Select(r => new Remedy { Item = Text(r, "item") })],
            Releases = [.. List(json, "releases").Select(r => new Release { Item = Text(r, "item") })],
            Disposals = [.. List(json, "disposals").Select(d => new Disposal { Item = Text(d, "item") })],
        };

    private static IEnumerable<JsonElement> List(JsonElement json, string member) =>
        json.TryGetProperty(member, out var list) && list.ValueKind is JsonValueKind.Array
            ? list.EnumerateArray().Where(e => e.ValueKind is JsonValueKind.Object)
            : [];

    private static string? Text(JsonElement json, string member) =>
        json.TryGetProperty(member, out var value) && value.ValueKind is JsonValueKind.String && value.GetString() is { Length: > 0 } text
            ? text
            : null;
}

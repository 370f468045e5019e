using System.Text.Json;

namespace ExamDocs.UseCases.Outputs;

/// <summary>Tells a JSON file of the program's own by its format, and by the register that it names.</summary>
internal static class OwnJson
{
    /// <param name="bytes">The whole file.</param>
    /// <param name="format">The format that it must name.</param>
    /// <param name="register">The register that it may name; null where there is none yet. Earlier versions named none.</param>
    public static bool Is(byte[] bytes, string format, string? register)
    {
        try
        {
            using var json = JsonDocument.Parse(bytes);
            return json.RootElement.ValueKind is JsonValueKind.Object
                && Text(json.RootElement, "format") == format
                && (Text(json.RootElement, "register") is not { } named || named == register);
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException)
        {
            return false;
        }
    }

    private static string? Text(JsonElement json, string member) =>
        json.TryGetProperty(member, out var value) && value.ValueKind is JsonValueKind.String ? value.GetString() : null;
}

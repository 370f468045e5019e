using System.Text.Json;
using ExamDocs.Register.Log;

namespace ExamDocs.UseCases.Outputs;

/// <summary>Tells a JSON file of the program's own by its format, and by the register that it names.</summary>
internal static class OwnJson
{
    /// <summary>Format of the list of what a folder holds.</summary>
    public const string Documents = "examdocs-documents/1";

    /// <summary>Format of the list of what a register holds.</summary>
    public const string Register = "examdocs-register/1";

    /// <summary>Format of the record of what a safety notice took out of use.</summary>
    public const string RecallSweep = "examdocs-recall-sweep/1";

    /// <summary>Larger than any that we write, bytes, inclusive.</summary>
    private const long MostBytes = 1L << 30;

    private static readonly string[] Kept = [Documents, Register, RecallSweep, CheckpointFile.FormatName];

    /// <summary>Whether a file is one that the program keeps in a folder, of whatever register.</summary>
    public static bool IsKept(string file)
    {
        using var stream = File.OpenRead(file);
        if (stream.Length > MostBytes || stream.ReadByte() is not '{')
            return false;
        stream.Position = 0;
        return FormatOf(stream) is { } format && Kept.Contains(format, StringComparer.Ordinal);
    }

    /// <param name="bytes">The whole file.</param>
    /// <param name="format">The format that it must name.</param>
    /// <param name="register">The register that it may name; null where there is none yet. Earlier versions named none.</param>
    public static bool Is(byte[] bytes, string format, string? register)
    {
        try
        {
            using var json = JsonDocument.Parse(bytes);
            return json.RootElement.ValueKind is JsonValueKind.Object
                && string.Equals(Text(json.RootElement, "format"), format, StringComparison.Ordinal)
                && (Text(json.RootElement, "register") is not { } named || string.Equals(named, register, StringComparison.Ordinal));
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException)
        {
            return false;
        }
    }

    private static string? FormatOf(Stream stream)
    {
        try
        {
            using var json = JsonDocument.Parse(stream);
            return Text(json.RootElement, "format");
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException)
        {
            return null;
        }
    }

    private static string? Text(JsonElement json, string member) =>
        json.TryGetProperty(member, out var value) && value.ValueKind is JsonValueKind.String ? value.GetString() : null;
}

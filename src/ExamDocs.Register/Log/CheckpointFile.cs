using System.Buffers;
using System.Security.Cryptography.X509Certificates;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.Register.Log;

/// <summary>What a checkpoint file says.</summary>
/// <param name="Checkpoint">Null where it cannot be read.</param>
/// <param name="Day">On which it was exported, as the file says; no signature covers it.</param>
/// <param name="SignedBy">Whose signature holds; null where there is none or it does not hold. Whether to trust it is not judged.</param>
/// <param name="Faults">One sentence for each thing that is wrong; a file with a fault proves nothing.</param>
public sealed record CheckpointReading(Checkpoint? Checkpoint, LocalDate? Day, X509Certificate2? SignedBy, IReadOnlyList<string> Faults);

/// <summary>A checkpoint to keep outside the register: JSON with the body, the day and, where asked for, a signature.</summary>
public static class CheckpointFile
{
    public const string FormatName = "examdocs-checkpoint/1";

    /// <summary>Of a file that a check wrote: all that the log was about by then was looked at and found sound.</summary>
    public const string CheckedFormatName = "examdocs-checked/1";

    /// <summary>Octets above which a file is not looked at: a checkpoint with a long chain of certificates has a tenth.</summary>
    public const int GreatestLength = 65_536;

    /// <param name="checkpoint">Of the log as it stands.</param>
    /// <param name="day">On which it is exported.</param>
    /// <param name="signer">With its private key; null for no signature.</param>
    /// <param name="format">One of the two.</param>
    /// <exception cref="System.Security.Cryptography.CryptographicException">The key cannot be used.</exception>
    public static byte[] Write(Checkpoint checkpoint, LocalDate day, X509Certificate2? signer, string format = FormatName)
    {
        ArgumentNullException.ThrowIfNull(checkpoint);
        var body = checkpoint.Body();
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteString("format", format);
            json.WriteString("body", body);
            json.WriteString("day", LocalDatePattern.Iso.Format(day));
            if (signer is null)
                json.WriteNull("signature");
            else
                json.WriteBase64String("signature", CheckpointSignature.Sign(body, signer));
            json.WriteEndObject();
        }
        return buffer.WrittenSpan.ToArray();
    }

    /// <summary>Reads a file of anybody's; never throws.</summary>
    /// <param name="bytes">The whole file.</param>
    /// <param name="format">One of the two; a file of the other is refused.</param>
    public static CheckpointReading Read(ReadOnlyMemory<byte> bytes, string format = FormatName)
    {
        if (bytes.Length > GreatestLength)
            return Refused("It is too long to be a checkpoint file.");
        try
        {
            using var json = JsonDocument.Parse(bytes, new JsonDocumentOptions { MaxDepth = 4, AllowDuplicateProperties = false });
            return Read(json.RootElement, format);
        }
        // What a text of invalid UTF-8 or half a character gives is an InvalidOperationException.
        catch (Exception broken) when (broken is JsonException or InvalidOperationException or FormatException)
        {
            return Refused("It is not a checkpoint file: it cannot be read as JSON.");
        }
    }

    private static CheckpointReading Read(JsonElement json, string format)
    {
        if (json.ValueKind is not JsonValueKind.Object || !string.Equals(Text(json, "format"), format, StringComparison.Ordinal))
            return Refused($"It is not a checkpoint file: its format is not {format}.");
        var faults = json.EnumerateObject()
            .Where(m => m.Name is not ("format" or "body" or "day" or "signature"))
            .Select(_ => "It has a member that a checkpoint file does not have.")
            .Take(1)
            .ToList();
        var body = Text(json, "body");
        if (!Checkpoint.TryParse(body, out var checkpoint))
            faults.Add("Its body is not that of a checkpoint.");
        var day = LocalDatePattern.Iso.Parse(Text(json, "day") ?? "");
        if (!day.Success)
            faults.Add("Its day is not a date.");
        var signer = checkpoint is null ? null : Signer(json, checkpoint, faults);
        return new(checkpoint, day.Success ? day.Value : null, signer, faults);
    }

    private static X509Certificate2? Signer(JsonElement json, Checkpoint checkpoint, List<string> faults)
    {
        if (!json.TryGetProperty("signature", out var signature))
            faults.Add("It does not say whether it is signed.");
        else if (signature.ValueKind is JsonValueKind.Null)
            return null;
        else if (signature.ValueKind is not JsonValueKind.String || !signature.TryGetBytesFromBase64(out var cms))
            faults.Add("Its signature is not base64.");
        else if (CheckpointSignature.SignerOf(checkpoint.Body(), cms) is { } signer)
            return signer;
        else
            faults.Add("Its signature does not hold.");
        return null;
    }

    private static string? Text(JsonElement json, string member) =>
        json.TryGetProperty(member, out var value) && value.ValueKind is JsonValueKind.String ? value.GetString() : null;

    private static CheckpointReading Refused(string fault) => new(null, null, null, [fault]);
}

using System.Text.Encodings.Web;
using System.Text.Json;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Outputs;

namespace ExamDocs.UseCases.Issuing;

/// <summary>
/// Writes documents.json beside the documents: all that the folder holds, what of it was replaced, and what the last run refused.
/// </summary>
public static class DocumentsFile
{
    public const string FormatName = OwnJson.Documents;

    public const string FileName = "documents.json";

    /// <summary>While another run adds documents, the folder is read again at most so many times.</summary>
    private const int Attempts = 20;

    private static readonly JsonWriterOptions Options = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <param name="folder">As the user typed it.</param>
    /// <param name="register">Identity of the register; null where it is not made yet.</param>
    internal static OwnFile In(string folder, string? register) =>
        new(Path.Combine(folder, FileName), "a list of documents of this register", b => OwnJson.Is(b, FormatName, register));

    /// <exception cref="IOException">It cannot be written; the one before is still there.</exception>
    internal static void Write(string folder, DocumentRegister register, IReadOnlyList<Refusal> refused)
    {
        Directory.CreateDirectory(folder);
        var holds = new DocumentFolder(register, folder);
        for (var attempt = 0; attempt < Attempts; attempt++)
        {
            var names = holds.Names();
            In(folder, register.Identity).Write(Bytes(register.Identity, holds.Documents(), refused));
            if (holds.Names().SequenceEqual(names, StringComparer.Ordinal))
                return;
        }
    }

    private static byte[] Bytes(string register, IReadOnlyList<HeldDocument> documents, IReadOnlyList<Refusal> refused)
    {
        var held = documents.ToLookup(d => d.Document.Ended is DocumentEnd.Replaced);
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, Options))
        {
            json.WriteStartObject();
            json.WriteString("format", FormatName);
            json.WriteString("register", register);
            WriteAll(json, "documents", held[false], Write);
            WriteAll(json, "replaced", held[true], Write);
            WriteAll(json, "refused", refused, Write);
            json.WriteEndObject();
        }
        return buffer.ToArray();
    }

    private static void WriteAll<T>(Utf8JsonWriter json, string name, IEnumerable<T> all, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        foreach (var one in all)
            write(json, one);
        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, HeldDocument held)
    {
        var document = held.Document;
        json.WriteStartObject();
        json.WriteString("number", document.Number);
        json.WriteString("kind", document.Kind);
        if (document.CopyOf is { } original)
            json.WriteString("copyOf", original);
        WriteList(json, "items", document.Items);
        json.WriteString("file", held.File);
        json.WriteString("sha256", document.Sha256);
        json.WriteNumber("pages", document.Pages!.Value);
        json.WritePropertyName("outcomes");
        using (var outcomes = JsonDocument.Parse(document.OutcomesJson!))
            outcomes.RootElement.WriteTo(json);
        json.WriteString("state", DocumentState(document));
        if (document.ReplacedBy.Count > 0)
            WriteList(json, "replacedBy", document.ReplacedBy);
        json.WriteEndObject();
    }

    private static string DocumentState(DocumentStatus document) =>
        document.Ended switch
        {
            DocumentEnd.Replaced => "replaced",
            DocumentEnd.Withdrawn => "withdrawn",
            DocumentEnd.Ended => "ended",
            _ => "current",
        };

    private static void Write(Utf8JsonWriter json, Refusal refusal)
    {
        json.WriteStartObject();
        json.WriteString("item", refusal.Item);
        WriteList(json, "codes", refusal.Codes);
        json.WriteEndObject();
    }

    private static void WriteList(Utf8JsonWriter json, string name, IReadOnlyList<string> values)
    {
        json.WriteStartArray(name);
        foreach (var value in values)
            json.WriteStringValue(value);
        json.WriteEndArray();
    }
}

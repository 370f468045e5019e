using System.Text.Encodings.Web;
using System.Text.Json;

namespace ExamDocs.UseCases.Issuing;

/// <summary>Writes documents.json beside the documents: what was issued, for what, and what was refused.</summary>
public static class DocumentsFile
{
    public const string FormatName = "examdocs-documents/1";

    public const string FileName = "documents.json";

    private static readonly JsonWriterOptions Options = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    internal static void Write(string folder, IReadOnlyList<Issued> documents, IReadOnlyList<Refusal> refused)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, Options))
        {
            json.WriteStartObject();
            json.WriteString("format", FormatName);
            json.WriteStartArray("documents");
            foreach (var issued in documents)
                Write(json, issued);
            json.WriteEndArray();
            json.WriteStartArray("refused");
            foreach (var refusal in refused)
                Write(json, refusal);
            json.WriteEndArray();
            json.WriteEndObject();
        }
        WholeFile.Write(Path.Combine(Directory.CreateDirectory(folder).FullName, FileName), buffer.ToArray());
    }

    private static void Write(Utf8JsonWriter json, Issued issued)
    {
        var document = issued.Document;
        json.WriteStartObject();
        json.WriteString("number", document.Number);
        json.WriteString("kind", document.Kind);
        if (issued.CopyOf is { } original)
            json.WriteString("copyOf", original);
        WriteList(json, "items", document.Items);
        json.WriteString("file", document.FileName);
        json.WriteString("sha256", document.Sha256);
        json.WriteNumber("pages", document.Pages);
        json.WritePropertyName("outcomes");
        using (var outcomes = JsonDocument.Parse(document.OutcomesJson))
            outcomes.RootElement.WriteTo(json);
        json.WriteEndObject();
    }

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

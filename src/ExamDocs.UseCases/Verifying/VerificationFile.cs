using System.Text.Encodings.Web;
using System.Text.Json;
using ExamDocs.UseCases.Outputs;

namespace ExamDocs.UseCases.Verifying;

/// <summary>Writes the answers about each file as examdocs-verification/1.</summary>
public static class VerificationFile
{
    public const string FormatName = "examdocs-verification/1";

    private static readonly JsonWriterOptions Options = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <exception cref="IOException">The file cannot be written.</exception>
    /// <exception cref="OutputRefusedException">The file may not be written there.</exception>
    public static void WriteTo(string file, OutputGuard outputs, IReadOnlyList<VerifiedFile> verified)
    {
        ArgumentNullException.ThrowIfNull(outputs);
        outputs.Write(file, Write(verified));
    }

    public static byte[] Write(IReadOnlyList<VerifiedFile> verified)
    {
        ArgumentNullException.ThrowIfNull(verified);
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, Options))
        {
            json.WriteStartObject();
            json.WriteString("format", FormatName);
            json.WriteStartArray("documents");
            foreach (var one in verified)
                Write(json, one);
            json.WriteEndArray();
            json.WriteEndObject();
        }
        return buffer.ToArray();
    }

    private static string VerdictWord(Verdict verdict) =>
        verdict switch
        {
            Verdict.Valid => "valid",
            Verdict.NotValid => "not-valid",
            _ => "cannot-tell",
        };

    private static void Write(Utf8JsonWriter json, VerifiedFile verified)
    {
        json.WriteStartObject();
        json.WriteString("file", verified.File);
        json.WriteString("number", verified.Number);
        json.WriteString("verdict", VerdictWord(verified.Verdict));
        json.WriteBoolean("valid", verified.IsValid);
        json.WriteString("sha256", verified.Sha256);
        json.WriteString("settle", verified.Settle?.Text);
        json.WriteStartArray("statements");
        foreach (var statement in verified.Statements)
        {
            json.WriteStartObject();
            json.WriteString("question", statement.Question);
            json.WriteString(
                "answer",
                statement.Answer switch
                {
                    Answer.Holds => "holds",
                    Answer.Fails => "fails",
                    _ => "not-checked",
                }
            );
            json.WriteString("text", statement.Text.Text);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }
}

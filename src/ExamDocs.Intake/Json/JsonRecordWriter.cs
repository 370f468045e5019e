using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using ExamDocs.Core.Records;

namespace ExamDocs.Intake.Json;

/// <summary>Writes a record in the format examdocs/1. Read again, it gives the same record.</summary>
public static class JsonRecordWriter
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <returns>UTF-8, ending with a line break.</returns>
    public static byte[] Write(ExaminationRecord record) => Write(RecordTree.Of(record));

    internal static byte[] Write(ObjectNode root)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, Options))
            Write(json, root);
        buffer.WriteByte((byte)'\n');
        return buffer.ToArray();
    }

    private static void Write(Utf8JsonWriter json, SourceNode node)
    {
        switch (node)
        {
            case ObjectNode o:
                json.WriteStartObject();
                foreach (var (name, value) in o.Members)
                {
                    json.WritePropertyName(name);
                    Write(json, value);
                }
                json.WriteEndObject();
                break;
            case ListNode l:
                json.WriteStartArray();
                foreach (var element in l.Elements)
                    Write(json, element);
                json.WriteEndArray();
                break;
            case TextNode t:
                json.WriteStringValue(Whole(t.Text));
                break;
            case NumberNode n:
                json.WriteRawValue(n.Raw);
                break;
            case BooleanNode b:
                json.WriteBooleanValue(b.Value);
                break;
            default:
                json.WriteNullValue();
                break;
        }
    }

    /// <summary>Half of a character pair cannot be written; the sign for it is refused when read, as the half was.</summary>
    private static string Whole(string text)
    {
        var whole = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
            whole.Append(rune.ToString());
        return whole.ToString();
    }
}

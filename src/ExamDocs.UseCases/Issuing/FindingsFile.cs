using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Determination.CaseForService;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;
using NodaTime;

namespace ExamDocs.UseCases.Issuing;

/// <summary>Writes outcomes and findings as examdocs-findings/1, in input order.</summary>
public sealed class FindingsFile
{
    private readonly MessageLanguage _language;

    private FindingsFile(MessageLanguage language) => _language = language;

    public const string FormatName = "examdocs-findings/1";

    private static readonly JsonWriterOptions Options = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <exception cref="OutputRefusedException">The file may not be written there.</exception>
    /// <exception cref="IOException">The file cannot be written.</exception>
    public static void WriteTo(string file, OutputGuard outputs, IReadOnlyList<CheckedInput> inputs, MessageLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(outputs);
        outputs.Write(file, Encoding.UTF8.GetBytes(Write(inputs, language)));
    }

    /// <param name="inputs">In the order written.</param>
    /// <param name="language">Of messages, hints, reasons and sources; English where it is left out. Everything else is the same.</param>
    public static string Write(IReadOnlyList<CheckedInput> inputs, MessageLanguage? language = null)
    {
        var file = new FindingsFile(language ?? MessageLanguage.English);
        return Encoding.UTF8.GetString(
            file.Write(
                inputs.SelectMany(i => i.Visit?.Items ?? []),
                inputs.SelectMany(i => i.Findings.Select(f => (f, i.Sources))),
                file.Write
            )
        );
    }

    /// <summary>Of some items only, with the findings that reach them; in English, as documents hold it.</summary>
    /// <param name="items">In the order written.</param>
    /// <param name="record">Name of the file that the record is in.</param>
    /// <param name="place">Gives the place to name for a place in the record; left out, that place.</param>
    public static byte[] Write(IReadOnlyList<DeterminedItem> items, string record, Func<string, string>? place = null)
    {
        var file = new FindingsFile(MessageLanguage.English);
        return file.Write(items, items.SelectMany(i => i.Findings).Distinct(), (json, finding) =>
        {
            json.WriteStartObject();
            file.Write(json, finding, $"{record}#{place?.Invoke(finding.Path) ?? finding.Path}");
            json.WriteEndObject();
        });
    }

    private byte[] Write<T>(IEnumerable<DeterminedItem> items, IEnumerable<T> findings, Action<Utf8JsonWriter, T> write)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, Options))
        {
            json.WriteStartObject();
            json.WriteString("format", FormatName);
            json.WriteStartArray("items");
            foreach (var item in items)
                Write(json, item);
            json.WriteEndArray();
            json.WriteStartArray("findings");
            foreach (var finding in findings)
                write(json, finding);
            json.WriteEndArray();
            json.WriteEndObject();
        }
        return buffer.ToArray();
    }

    private void Write(Utf8JsonWriter json, DeterminedItem item)
    {
        json.WriteStartObject();
        json.WriteString("id", item.Item.Id);
        json.WriteString("outcome", item.Outcome.Word());
        json.WriteString("until", Day(item.Until));
        json.WriteString("nextExaminationBy", Day(item.NextExaminationBy));
        json.WriteStartArray("reasons");
        foreach (var reason in item.Reasons)
        {
            json.WriteStartObject();
            json.WriteString("code", reason.Code);
            json.WriteString("text", _language.Value(reason.Said));
            json.WriteString("source", _language.Source(reason.Source));
            json.WriteEndObject();
        }
        json.WriteEndArray();
        WriteCase(json, item.CaseForService);
        json.WriteEndObject();
    }

    /// <summary>The evidence in the order an examiner argues.</summary>
    private void WriteCase(Utf8JsonWriter json, IReadOnlyList<LedgerEntry> entries)
    {
        json.WriteStartArray("case");
        foreach (var entry in entries)
        {
            json.WriteStartObject();
            json.WriteString("heading", entry.Heading.Word());
            json.WriteString("bearing", entry.Bearing.Word());
            json.WriteString("text", _language.Value(entry.Said));
            json.WriteString("code", entry.Code);
            json.WriteString("source", _language.Source(entry.Source));
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private void Write(Utf8JsonWriter json, (Finding Finding, SourceMap Sources) found)
    {
        json.WriteStartObject();
        Write(json, found.Finding, found.Sources.Locate(found.Finding.Path));
        if (found.Finding.FollowsFrom is { } cause)
        {
            json.WriteStartObject("followsFrom");
            json.WriteString("code", cause.Code);
            json.WriteString("location", found.Sources.Locate(cause.Path));
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("followsFrom");
        }
        json.WriteEndObject();
    }

    /// <summary>What a document holds of a finding too.</summary>
    private void Write(Utf8JsonWriter json, Finding finding, string location)
    {
        json.WriteString("code", finding.Code);
        json.WriteString("severity", finding.Severity.Word());
        json.WriteString("item", finding.Item);
        json.WriteString("location", location);
        json.WriteString("message", finding.Message.In(_language));
        json.WriteString("hint", finding.Hint.In(_language));
        json.WriteString("source", _language.Source(finding.Source));
    }

    private static string? Day(LocalDate? day) => day?.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);
}

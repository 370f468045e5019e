using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Registered;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.UseCases.Commands;

/// <summary>
/// Writes everything that a register holds as open files: the records (examdocs/1), the documents, a list of them, and a checkpoint.
/// </summary>
public static class ExportRegister
{
    public const string FormatName = OwnJson.Register;

    private const string Visits = "visits";

    private const string Documents = "documents";

    private static readonly JsonWriterOptions Options = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <param name="place">The register.</param>
    /// <param name="folder">
    /// Where the files go, as the user typed it; made where it is missing. Files that are there with the same content stay.
    /// </param>
    /// <param name="today">The day of the export.</param>
    /// <returns>How many records and documents were written.</returns>
    /// <exception cref="FileNotFoundException">There is no register at that place.</exception>
    /// <exception cref="OutputRefusedException">Something in the folder is in the way; nothing was written.</exception>
    /// <exception cref="IOException">A file cannot be written.</exception>
    public static (int Records, int Documents) Run(string place, string folder, LocalDate today)
    {
        using var register = DocumentRegister.OpenExisting(place, today);
        var (visits, issued) = (register.Visits.All(), register.Issued());
        Require(folder, register, visits, issued);
        foreach (var visit in visits)
        {
            if (!File.Exists(Path.Combine(folder, Visits, NameOf(visit))))
                Record(folder, register, visit).Write(register.Visits.Record(visit.Visit));
        }
        foreach (var document in issued)
            register.Restore(document, Path.Combine(folder, Documents));
        ListIn(folder, register).Write(List(visits, register));
        CheckpointBeside.Write(register, folder, today, null);
        return (visits.Count, issued.Count);
    }

    /// <summary>Nothing is written if any existing file would have to be replaced.</summary>
    private static void Require(
        string folder,
        DocumentRegister register,
        IReadOnlyList<RememberedVisit> visits,
        IReadOnlyList<IssuedDocument> issued
    )
    {
        if (OutputFolder.Objection(Path.GetFullPath(folder), folder) is { } objection)
            throw new OutputRefusedException(objection);
        foreach (var visit in visits)
            Record(folder, register, visit).Require();
        foreach (var document in issued)
            new OwnFile(Path.Combine(folder, Documents, document.FileName), "the document of that number of this register", _ =>
                IssuedFile.IsIn(Path.Combine(folder, Documents), document)
            ).Require();
        ListIn(folder, register).Require();
        CheckpointBeside.In(folder, register.Identity).Require();
    }

    private static OwnFile Record(string folder, DocumentRegister register, RememberedVisit visit) =>
        new(Path.Combine(folder, Visits, NameOf(visit)), "the record of that number of this register", b =>
            b.AsSpan().SequenceEqual(register.Visits.Record(visit.Visit))
        );

    private static OwnFile ListIn(string folder, DocumentRegister register) =>
        new(Path.Combine(folder, "register.json"), "a list of this register", b => OwnJson.Is(b, FormatName, register.Identity));

    private static string NameOf(RememberedVisit visit) => string.Create(CultureInfo.InvariantCulture, $"visit-{visit.Visit:000000}.json");

    private static byte[] List(IReadOnlyList<RememberedVisit> visits, DocumentRegister register)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, Options))
        {
            json.WriteStartObject();
            json.WriteString("format", FormatName);
            json.WriteString("register", register.Identity);
            json.WriteStartArray("visits");
            foreach (var visit in visits)
                Write(json, visit);
            json.WriteEndArray();
            json.WriteStartArray("documents");
            foreach (var document in register.Documents())
                Write(json, document);
            json.WriteEndArray();
            json.WriteStartArray("void");
            foreach (var voided in register.Voided())
            {
                json.WriteStartObject();
                json.WriteString("number", voided.Number);
                json.WriteString("kind", voided.Kind);
                json.WriteString("reason", voided.Reason);
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteEndObject();
        }
        return buffer.ToArray();
    }

    private static void Write(Utf8JsonWriter json, RememberedVisit visit)
    {
        json.WriteStartObject();
        json.WriteString("file", NameOf(visit));
        json.WriteString("sha256", visit.Sha256);
        json.WriteString("reference", visit.Reference);
        json.WriteString("employer", visit.Employer);
        json.WriteString("examinedOn", Day(visit.ExaminedOn));
        json.WriteString("storedOn", Day(visit.StoredOn));
        json.WriteString("version", visit.Version);
        json.WriteString("origin", visit.Origin);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, DocumentStatus document)
    {
        json.WriteStartObject();
        json.WriteString("number", document.Number);
        json.WriteString("kind", document.Kind);
        json.WriteStartArray("items");
        foreach (var item in document.Items)
            json.WriteStringValue(item);
        json.WriteEndArray();
        json.WriteString("sha256", document.Sha256);
        json.WriteString("issuedOn", Day(document.IssuedOn));
        json.WriteString("copyOf", document.CopyOf);
        json.WriteStartArray("replaces");
        foreach (var replaced in document.Replaces)
            json.WriteStringValue(replaced.Number);
        json.WriteEndArray();
        json.WriteString(
            "state",
            document.Ended switch
            {
                DocumentEnd.Replaced => "replaced",
                DocumentEnd.Withdrawn => "withdrawn",
                DocumentEnd.Ended => "ended",
                _ => "current",
            }
        );
        json.WriteString("endedOn", Day(document.EndedOn));
        json.WriteString("reason", document.EndedReason);
        json.WriteStartArray("endedLines");
        foreach (var line in document.EndedLines)
        {
            json.WriteStartObject();
            json.WriteString("item", line.Item);
            json.WriteString("on", Day(line.On));
            json.WriteString("why", line.Why);
            json.WriteNumber("byVisit", line.ByVisit);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteString("origin", document.Origin);
        json.WriteEndObject();
    }

    private static string? Day(LocalDate? day) => day is { } known ? LocalDatePattern.Iso.Format(known) : null;
}

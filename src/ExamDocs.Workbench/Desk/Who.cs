using System.Text.Encodings.Web;
using System.Text.Json;
using ExamDocs.UseCases.Reading;
using NodaTime;

namespace ExamDocs.Workbench.Desk;

/// <summary>Who works here, as asked at the first start.</summary>
/// <param name="Name">The examiner's.</param>
/// <param name="Qualifications">As the report prints them.</param>
/// <param name="Address">The examiner's, in one line.</param>
/// <param name="Firm">Name on the letterhead; empty for none.</param>
/// <param name="Contact">Telephone or address for questions, on the letterhead.</param>
/// <param name="Language">Tag of the language of pages and documents.</param>
public sealed record Particulars(
    string Name = "",
    string Qualifications = "",
    string Address = "",
    string Firm = "",
    string Contact = "",
    string Language = "en"
);

/// <summary>Keeps who works here in a file, and how documents are printed for them.</summary>
internal sealed class Who(WorkbenchRequest request)
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    private readonly Lock _writing = new();

    private string File => Path.Combine(request.DataFolder, "who.json");

    private string Letterhead => Path.Combine(request.DataFolder, "letterhead.json");

    /// <summary>True where nobody has said who works here.</summary>
    public bool IsUnknown => !System.IO.File.Exists(File);

    public Particulars Now
    {
        get
        {
            try
            {
                return System.IO.File.Exists(File)
                    ? JsonSerializer.Deserialize<Particulars>(System.IO.File.ReadAllText(File), Options) ?? new()
                    : new();
            }
            catch (JsonException)
            {
                // Somebody edited it by hand; it is asked again.
                return new();
            }
        }
    }

    /// <summary>How documents are printed.</summary>
    /// <param name="now">The present time.</param>
    /// <param name="tag">In which language; null for that of whoever works here.</param>
    public PrintStyle Style(Instant now, string? tag = null)
    {
        var asked = tag ?? Now.Language;
        var language = ReadPrintStyle.Languages.Contains(asked, StringComparer.Ordinal) ? asked : "en";
        var read = ReadPrintStyle.From(
            new PrintStyleRequest { Language = language, LetterheadFile = System.IO.File.Exists(Letterhead) ? Letterhead : null },
            now
        );
        return read.Style ?? throw new InvalidDataException(string.Join(" ", read.Faults));
    }

    /// <returns>A sentence for each thing that is wrong; empty where it was kept.</returns>
    public IReadOnlyList<string> Keep(Particulars who)
    {
        if (!ReadPrintStyle.Languages.Contains(who.Language, StringComparer.Ordinal))
            return [$"{who.Language} is none of the languages: {string.Join(", ", ReadPrintStyle.Languages)}."];
        lock (_writing)
        {
            if (who.Firm.Length > 0)
            {
                var head = JsonSerializer.SerializeToUtf8Bytes(
                    new Dictionary<string, string>(StringComparer.Ordinal)
                    {
                        ["name"] = who.Firm,
                        ["address"] = who.Address,
                        ["contact"] = who.Contact,
                    }
                        .Where(v => v.Value.Length > 0)
                        .ToDictionary(StringComparer.Ordinal),
                    Options
                );
                var draft = Letterhead + ".new";
                System.IO.File.WriteAllBytes(draft, head);
                var read = ReadLetterhead.From(draft);
                if (read.Letterhead is null)
                {
                    System.IO.File.Delete(draft);
                    return [.. read.Faults.Select(f => f.Replace(draft, "", StringComparison.Ordinal).TrimStart('#', ' '))];
                }
                System.IO.File.Move(draft, Letterhead, overwrite: true);
            }
            else
            {
                // Emptied: the next document must not bear the name that stood there before.
                System.IO.File.Delete(Letterhead);
            }
            System.IO.File.WriteAllBytes(File + ".new", JsonSerializer.SerializeToUtf8Bytes(who, Options));
            System.IO.File.Move(File + ".new", File, overwrite: true);
            return [];
        }
    }
}

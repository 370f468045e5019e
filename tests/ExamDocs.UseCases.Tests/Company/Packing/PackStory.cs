using System.Globalization;
using System.Text;
using ExamDocs.Core.Regimes;
using ExamDocs.Documents.ReadingCopies;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Templates.AuditPack;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Company.Packing;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using ExamDocs.UseCases.Tests.Issuing;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.UseCases.Tests.Company.Packing;

/// <summary>A register of an invented firm whose documents are plain pages with their number, made without a browser.</summary>
internal sealed class PackStory : IDisposable
{
    public const string Employer = "Alder Vale Ltd";

    private readonly Workspace _workspace = new();
    private int _files;
    private int _jobs;

    public string Register => _workspace.Register;

    public string Folder => _workspace.Folder;

    public string Evidence => Directory.CreateDirectory(At("evidence")).FullName;

    public string At(string name) => Path.Combine(_workspace.Folder, name);

    public void Dispose() => _workspace.Dispose();

    /// <summary>Takes a visit in on its day, or on another.</summary>
    /// <returns>Its number in the register.</returns>
    public int Import(StoryVisit visit, string day) => ImportJson(visit.Json, day);

    public int ImportJson(string json, string day)
    {
        var path = At(FormattableString.Invariant($"visit-{++_files}.json"));
        File.WriteAllText(path, json);
        Assert.Equal(1, ImportVisits.Run([path], Register, Day(day), KnownRules.BuiltIn).New);
        using var register = DocumentRegister.OpenToRead(Register);
        return register.Visits.Latest;
    }

    /// <summary>Issues a document of a visit on a day.</summary>
    /// <returns>Its number.</returns>
    public string Issue(int visit, string day, string kind, string[] items, string? folder = null, params string[] replaces)
    {
        using var register = DocumentRegister.Open(Register, Day(day));
        var letter = char.ToUpperInvariant(kind[0]);
        var pending = register.Take(
            new DocumentRequest(letter, Day(day).Year, kind, FormattableString.Invariant($"job {++_jobs}"), items, folder)
            {
                Visit = visit,
                Language = "en",
                Replaces = [.. replaces.Select(number => new Replacement(number, "an address was wrong"))],
            }
        );
        return register.Publish(pending, Page(pending.Number), 1, "{}").Number;
    }

    /// <summary>A report, as most tests need one.</summary>
    public string Report(int visit, string day, params string[] items) => Issue(visit, day, "report", items);

    public void Enclose(string name, byte[]? content = null) => File.WriteAllBytes(Path.Combine(Evidence, name), content ?? Page(name));

    /// <summary>Everything in order: a harness with its bridge, a report, a declaration and evidence of competence.</summary>
    public PackStory InOrder()
    {
        var visit = Import(Story.Visit("V-1", "2026-05-11").Harness("H-1", "A1").Bridge("RB-1", "B1", i => i.On("H-1")), "2026-05-11");
        Report(visit, "2026-05-12", "H-1", "RB-1");
        Enclose("ada fenn, guild certificate.pdf");
        Enclose("Model harness declaration.pdf");
        Enclose("Model rope-bridge declaration.pdf");
        return this;
    }

    public GatheredPack Gather(string asOf = "2026-06-01", Func<PackQuestion, PackQuestion>? ask = null)
    {
        var (pack, refused) = TryGather(asOf, ask);
        Assert.Null(refused);
        return pack!;
    }

    public (GatheredPack? Pack, string? Refused) TryGather(string asOf = "2026-06-01", Func<PackQuestion, PackQuestion>? ask = null)
    {
        var asked = Asked(asOf, ask);
        using var register = DocumentRegister.OpenToRead(Register, asked.Today);
        var (files, _, _) = EvidenceFolder.Read(Evidence);
        var (pack, refused) = new GatherPack(register, asked, CheckRegister.Run(register, [], asked.Rules)).From(files);
        return (pack, refused?.Text);
    }

    public static PackQuestion Asked(string asOf = "2026-06-01", Func<PackQuestion, PackQuestion>? ask = null)
    {
        var asked = new PackQuestion(Employer, Day(asOf), new LocalDate(2026, 12, 31));
        return ask is null ? asked : ask(asked);
    }

    /// <summary>Every gap as its code and what it is about.</summary>
    public string[] Gaps(string asOf = "2026-06-01") => [.. Gather(asOf).Contents.Gaps.Select(g => $"{g.Code} {g.About}")];

    public static LocalDate Day(string day) => LocalDatePattern.Iso.Parse(day).Value;

    /// <summary>A PDF of one page that says something.</summary>
    public static byte[] Page(string words)
    {
        using var file = new MemoryStream();
        using var pdf = new StreamedPdf(file);
        var text = string.Create(CultureInfo.InvariantCulture, $"BT /F 14 Tf 72 720 Td ({Latin(words)}) Tj ET");
        var font = pdf.Add("<</Type /Font /Subtype /Type1 /BaseFont /Helvetica>>");
        var content = pdf.Add($"<</Length {text.Length}>>\nstream\n{text}\nendstream");
        var (page, pages) = (pdf.Reserve(), pdf.Reserve());
        pdf.Put(
            page,
            $"<</Type /Page /Parent {pages} 0 R /MediaBox [0 0 595 842] /Resources <</Font <</F {font} 0 R>>>> /Contents {content} 0 R>>"
        );
        pdf.Put(pages, $"<</Type /Pages /Kids [{page} 0 R] /Count 1>>");
        pdf.Finish(pdf.Add($"<</Type /Catalog /Pages {pages} 0 R>>"), pdf.Add("<</Creator (test)>>"));
        return file.ToArray();
    }

    private static string Latin(string words) =>
        Encoding
            .ASCII.GetString(Encoding.ASCII.GetBytes(words))
            .Replace("(", "", StringComparison.Ordinal)
            .Replace(")", "", StringComparison.Ordinal);
}

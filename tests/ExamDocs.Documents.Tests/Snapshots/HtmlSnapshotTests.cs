using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using ExamDocs.Core.Determination;
using ExamDocs.Documents.Rendering;
using ExamDocs.Documents.Tests.Printing;
using ExamDocs.Templates;
using ExamDocs.Templates.AuthorityCopy;
using ExamDocs.Templates.Certificate;
using ExamDocs.Templates.CheckSheet;
using ExamDocs.Templates.DueLabel;
using ExamDocs.Templates.Enclosures;
using ExamDocs.Templates.EquipmentRecord;
using ExamDocs.Templates.Evidence;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Lessons;
using ExamDocs.Templates.Notice;
using ExamDocs.Templates.Report;
using ExamDocs.Templates.Shared;
using ExamDocs.Templates.Shared.Wording;
using Snapshooter;
using Snapshooter.Xunit3;

namespace ExamDocs.Documents.Tests.Snapshots;

/// <summary>
/// The HTML of every document in every language, to be read in a change's diff. After a change on purpose: delete its
/// snapshots, run with EXAMDOCS_UPDATE_SNAPSHOTS=1, and read what became of them.
/// </summary>
public sealed class HtmlSnapshotTests
{
    private static readonly Dictionary<string, Func<DocumentRenderer, Task<string>>> Documents = new(StringComparer.Ordinal)
    {
        ["report"] = r => r.HtmlAsync(Report(Example.Identity(DocumentTypes.Report))),
        ["report-of-one"] = r => r.HtmlAsync(Report(Example.Identity(DocumentTypes.Report), "BRG-08")),
        ["authority-copy"] = r =>
            r.HtmlAsync(
                new AuthorityCopyModel(
                    Report(Example.Identity(DocumentTypes.Report, 2), "CON-07"),
                    new OriginalReport("R-2026-000001", new string('a', 64))
                )
            ),
        ["report-signed"] = r => r.HtmlAsync(Report(Signed(Example.Identity(DocumentTypes.Report)), "BRG-08")),
        ["authority-copy-signed"] = r =>
            r.HtmlAsync(
                new AuthorityCopyModel(
                    Report(Signed(Example.Identity(DocumentTypes.Report, 2)), "CON-07"),
                    new OriginalReport("R-2026-000001", new string('a', 64))
                )
            ),
        ["notice-signed"] = r =>
            r.HtmlAsync(new NoticeModel(Signed(Example.Identity(DocumentTypes.Notice)), Example.Visit, Example.Item("CON-07"))),
        ["notice"] = r => r.HtmlAsync(new NoticeModel(Example.Identity(DocumentTypes.Notice), Example.Visit, Example.Item("CON-07"))),
        ["notice-later"] = r => r.HtmlAsync(new NoticeModel(Example.Identity(DocumentTypes.Notice), Example.Visit, Example.Item("BRG-08"))),
        ["certificate"] = r => r.HtmlAsync(Certificate("HAR-02", "BRG-03")),
        ["quarantine-label"] = r =>
            r.HtmlAsync(new LabelModel(Example.Identity(DocumentTypes.QuarantineLabel), Example.Visit, Example.Item("BRG-02"))),
        ["hold-label"] = r =>
            r.HtmlAsync(new LabelModel(Example.Identity(DocumentTypes.QuarantineLabel), Example.Visit, Example.Item("PUL-02"))),
        ["due-label"] = r =>
            r.HtmlAsync(new DueLabelModel(Example.Identity(DocumentTypes.DueLabel), Example.Visit, Example.Item("BRG-08"))),
        ["equipment-record"] = r =>
            r.HtmlAsync(new EquipmentRecordModel(Example.Identity(DocumentTypes.EquipmentRecord), Example.Visit, Example.Item("SLG-03"))),
        ["evidence"] = r =>
            r.HtmlAsync(
                new EvidenceModel(Example.Identity(DocumentTypes.Evidence), Example.Visit, [Example.Item("BRG-04"), Example.Item("PUL-02")])
            ),
        ["check-sheet"] = r =>
            r.HtmlAsync(new CheckSheetModel(Example.Identity(DocumentTypes.CheckSheet), Example.Visit, Example.Item("BRG-02"))),
        ["lessons"] = r => r.HtmlAsync(new LessonsModel(InventedLessons.All, new(2026, 6, 1), letterhead: null, "0")),
        ["enclosures"] = r =>
            r.HtmlAsync(
                new EnclosuresModel(
                    Example.Visit,
                    Example.Visit.Record.Visit.Employer!,
                    [
                        new("R-2026-000017", "report", IsCopy: false, ["HAR-01", "BRG-02"], 9, new string('a', 64)),
                        new("N-2026-000003", "notice", IsCopy: false, ["BRG-02"], 1, new string('b', 64)),
                        new("R-2026-000018", "report", IsCopy: true, ["BRG-02"], 4, new string('c', 64)),
                    ],
                    new(2026, 5, 12),
                    "0",
                    letterhead: null
                )
            ),
    };

    public static TheoryData<string, string> All => new(Documents.Keys.SelectMany(d => Language.All.Select(l => (d, l.Tag))));

    [ModuleInitializer]
    internal static void RefuseNewSnapshots()
    {
        if (Environment.GetEnvironmentVariable("EXAMDOCS_UPDATE_SNAPSHOTS") is null)
            Environment.SetEnvironmentVariable("SNAPSHOOTER_STRICT_MODE", "true");
    }

    [Theory]
    [MemberData(nameof(All))]
    public async Task Page(string document, string language)
    {
        await using var renderer = new DocumentRenderer();
        var html = await Language.Find(language)!.InAsync(() => Documents[document](renderer));
        Snapshot.Match(Lines(html), $"{document}.{language}");
    }

    /// <summary>A length with a comma is none, and what has it is printed at any other size.</summary>
    [Theory]
    [MemberData(nameof(All))]
    public async Task No_length_is_written_with_a_comma(string document, string language)
    {
        await using var renderer = new DocumentRenderer();
        var html = await Language.Find(language)!.InAsync(() => Documents[document](renderer));
        Assert.DoesNotMatch("""(style|width|height|viewBox)="[^"]*[0-9],[0-9]""", html);
    }

    /// <summary>Between letters Razor takes @ for that of an e-mail address, and prints the code that follows.</summary>
    [Theory]
    [MemberData(nameof(All))]
    public async Task No_code_of_a_template_is_printed(string document, string language)
    {
        await using var renderer = new DocumentRenderer();
        var html = await Language.Find(language)!.InAsync(() => Documents[document](renderer));
        Assert.DoesNotMatch("@[A-Za-z]*[(]", Lines(html));
    }

    /// <summary>Every kind is among them, so that a new one is not forgotten.</summary>
    [Fact]
    public void Every_kind_of_document_has_its_snapshots() =>
        Assert.Empty(DocumentTypes.All.Select(t => t.Kind is "record" ? "equipment-record" : t.Kind).Except(Documents.Keys));

    /// <summary>Without the style sheets, which are looked at in print, a line for each tag.</summary>
    private static string Lines(string html) =>
        Regex.Replace(
            Regex.Replace(html, "<style>.*?</style>", "", RegexOptions.Singleline, TimeSpan.FromSeconds(5)),
            @">\s*<",
            ">\n<",
            RegexOptions.None,
            TimeSpan.FromSeconds(5)
        );

    private static DocumentIdentity Signed(DocumentIdentity identity) =>
        identity with
        {
            Signature = new ElectronicSignature(
                "Ada Invented",
                "Invented Signing Authority",
                "40A1B2C3",
                new string('7', 64),
                IsTimestamped: true
            ),
        };

    private static ReportModel Report(DocumentIdentity identity, params string[] ids)
    {
        DeterminedItem[] items =
        [
            .. (ids.Length == 0 ? ["HAR-02", "BRG-03", "BRG-04", "BRG-08", "CLR-03", "CON-01", "CON-02"] : ids).Select(Example.Item),
        ];
        var author = Example.Visit.Person(items[0].Examination!.Examiner)!;
        return new ReportModel(identity, Example.Visit, items, author, author);
    }

    private static CertificateModel Certificate(string parent, string part) =>
        new(
            Example.Identity(DocumentTypes.Certificate),
            Example.Visit,
            Example.Item(parent),
            [.. Example.Record.Renewals.Where(r => r.Item == parent)],
            [Example.Item(part)]
        );
}

using System.Text.RegularExpressions;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates;
using ExamDocs.Templates.AuthorityCopy;
using ExamDocs.Templates.Notice;
using ExamDocs.Templates.Report;

namespace ExamDocs.Documents.Tests.Printing;

public sealed class AuthorityCopyTests(SharedBrowser browser)
{
    private static readonly string Hash = new('a', 64);

    // SI 1998/2307 reg 10(1)(c) and 10(4): a copy to the Health and Safety Executive where the kit is hired.
    [Fact]
    public async Task The_cover_says_to_whom_what_why_by_which_duty_and_from_whom()
    {
        var model = Copy(Example.Visit, "CON-01", "CON-07");
        var paper = await PrintAsync(model);
        var defects = Example.Item("CON-07").Examination!.Defects;
        string[] wanted =
        [
            "To the enforcing authority Health and Safety Executive Norshire office (invented), 1 Assembly Square, "
                + "Brackwater, Norshire ZZ1 1AA",
            "Health and Safety Executive (the item is hired or leased: regulation 10(4) of SI 1998/2307)",
            "SI 1998/2307 reg 10(1)(c) and (4); read in the source",
            "existing or imminent risk of serious personal injury",
            "CON-07",
            .. defects.Select(d => d.Description!),
            .. defects.Select(d => d.Part!),
            "Petra Lundgrove, yard manager",
            "Not to be used",
            "Quillmere Access Hire LLP",
            "Brackwater training yard",
            model.Report.Author.Name!,
            model.Report.Author.Address!,
            model.Report.Author.Qualifications!,
            "report R-2026-000001",
            Hash,
        ];
        Assert.All(wanted, w => Assert.True(paper.Says(w), w));
        Assert.Empty(paper.Lost());
        Assert.Empty(paper.NearEdge());
    }

    [Fact]
    public async Task The_report_that_follows_is_the_report_word_for_word()
    {
        var model = Copy(Example.Visit, "CON-01", "CON-07");
        var copy = await browser.Renderer.HtmlAsync(model);
        var report = await browser.Renderer.HtmlAsync(Report(Example.Visit, 1, "CON-01", "CON-07"));
        var body = Regex.Match(report, "<body[^>]*>(.*)</body>", RegexOptions.Singleline, TimeSpan.FromSeconds(5)).Groups[1].Value;
        Assert.True(body.Length > 5000);
        Assert.EndsWith(
            Plain(body.Replace("R-2026-000001", "R-2026-000002", StringComparison.Ordinal)),
            Plain(Regex.Match(copy, "<body[^>]*>(.*)</body>", RegexOptions.Singleline, TimeSpan.FromSeconds(5)).Groups[1].Value),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Every_page_bears_its_own_number_and_all_but_the_cover_the_original_s()
    {
        var paper = await PrintAsync(Copy(Example.Visit, "CON-07"));
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(paper.Pdf);
        foreach (var page in pdf.GetPages())
        {
            var text = string.Join(' ', page.GetWords().Select(w => w.Text));
            Assert.Contains("R-2026-000002", text, StringComparison.Ordinal);
            Assert.Contains(
                page.Number == 1 ? "copy of report R-2026-000001" : "Copy of report R-2026-000001, for the enforcing authority",
                text,
                StringComparison.Ordinal
            );
            Assert.Contains($"Page {page.Number} of {pdf.NumberOfPages}", text, StringComparison.Ordinal);
        }
        // The cover is one page, and the report begins on the next.
        Assert.DoesNotContain(
            "Report of thorough examination",
            string.Join(' ', pdf.GetPage(1).GetWords().Select(w => w.Text)),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "Report of thorough examination",
            string.Join(' ', pdf.GetPage(2).GetWords().Select(w => w.Text)),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task For_kit_that_is_not_hired_it_goes_to_the_authority_for_the_premises()
    {
        var record = Example.Record with
        {
            Visit = Example.Record.Visit with
            {
                HiredFrom = null,
                EnforcingAuthority = new Party { Name = "Norshire Council", Address = "Moot Hall" },
            },
        };
        var paper = await PrintAsync(Copy(Example.Determined(record), "CON-07"));
        Assert.True(paper.Says("To the enforcing authority Norshire Council Moot Hall"));
        Assert.True(paper.Says("Enforcing authority for the premises where the item was examined (regulation 10(4) of SI 1998/2307)"));
        Assert.False(paper.Says("Health and Safety Executive"));
    }

    [Fact]
    public void There_is_none_without_an_imminent_risk() => Assert.Throws<ArgumentException>(() => Copy(Example.Visit, "CON-01"));

    [Theory]
    [InlineData("eu-en365")]
    [InlineData("de")]
    [InlineData("fr")]
    [InlineData("us")]
    [InlineData("au-nz")]
    public void There_is_none_under_a_law_that_names_no_such_duty(string regime)
    {
        var (visit, item) = Example.WithExamination("CON-07", e => e, regime);
        Assert.True(item.Examination!.Defects.All(d => d.ImminentRisk is true));
        Assert.True(item.MayBeReported);
        Assert.Throws<ArgumentException>(() => Copy(visit, "CON-07"));
    }

    [Theory]
    [InlineData("R-2026-1")]
    [InlineData("N-2026-000001")]
    [InlineData("R-2026-000001\"; } body { display: none")]
    public void It_is_a_copy_of_nothing_but_a_report(string original) =>
        Assert.Throws<ArgumentException>(() =>
            new AuthorityCopyModel(Report(Example.Visit, 2, "CON-07"), new OriginalReport(original, Hash))
        );

    [Fact]
    public async Task Where_the_law_is_not_known_the_notice_says_that_it_has_to_be_found_out()
    {
        var record = Example.Record with { Visit = Example.Record.Visit with { Regime = null } };
        var visit = Example.Determined(record);
        var notice = await NoticeAsync(visit, visit.Items.First(i => i.Item.Id == "CON-07"));
        Assert.True(notice.Says("find out at once whether an enforcing authority has to be told as well"));
    }

    [Fact]
    public async Task Where_the_report_is_held_back_the_notice_names_the_authority_and_says_so()
    {
        var record = Example.Record with { Visit = Example.Record.Visit with { EnforcingAuthority = null } };
        var visit = Example.Determined(record);
        var item = visit.Items.First(i => i.Item.Id == "CON-07");
        Assert.False(item.MayBeReported);
        var notice = await NoticeAsync(visit, item);
        Assert.True(notice.Says("Health and Safety Executive (the item is hired or leased"));
        Assert.True(notice.Says("No report of this item is issued before its record is put right."));
        Assert.False((await NoticeAsync(Example.Visit, Example.Item("CON-07"))).Says("No report of this item"));
    }

    private static string Plain(string html) => Regex.Replace(html, @"\s+", "", RegexOptions.None, TimeSpan.FromSeconds(5));

    private static AuthorityCopyModel Copy(DeterminedVisit visit, params string[] ids) =>
        new(Report(visit, 2, ids), new OriginalReport("R-2026-000001", Hash));

    private static ReportModel Report(DeterminedVisit visit, int number, params string[] ids)
    {
        DeterminedItem[] items = [.. ids.Select(id => visit.Items.First(i => i.Item.Id == id))];
        var author = visit.Person(items[0].Examination!.Examiner)!;
        return new ReportModel(Example.Identity(DocumentTypes.Report, number), visit, items, author, author);
    }

    private async Task<PrintedPaper> PrintAsync(AuthorityCopyModel model)
    {
        var html = await browser.Renderer.HtmlAsync(model);
        return new PrintedPaper(html, await browser.PrintAsync(html));
    }

    private async Task<PrintedPaper> NoticeAsync(DeterminedVisit visit, DeterminedItem item)
    {
        var html = await browser.Renderer.HtmlAsync(new NoticeModel(Example.Identity(DocumentTypes.Notice), visit, item));
        return new PrintedPaper(html, await browser.PrintAsync(html));
    }
}

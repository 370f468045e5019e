using System.Text.RegularExpressions;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates;
using ExamDocs.Templates.Report;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Documents.Tests.Printing;

/// <summary>What SI 1998/2307 Schedule 1 asks for is on the paper, for every item, found by an independent reader.</summary>
public sealed class ReportTests(SharedBrowser browser)
{
    private string Text => field ??= Tool.Squeeze(browser.ReportText);

    [Fact]
    public void Paragraphs_1_2_9_10_and_11_are_there()
    {
        var visit = Example.Record.Visit;
        var author = browser.ReportModel.Author;
        string?[] wanted =
        [
            visit.Employer!.Name,
            visit.Employer.Address,
            visit.Premises!.Address,
            visit.HiredFrom?.Name,
            author.Name,
            author.Address,
            author.Qualifications,
            Printed.Day(visit.ReportedOn),
        ];
        Assert.All(wanted.OfType<string>(), w => Assert.Contains(Tool.Squeeze(w), Text, StringComparison.Ordinal));
        Assert.Contains(
            author.SelfEmployed is true ? "Self-employedyes" : Tool.Squeeze(author.Employer!.Name!),
            Text,
            StringComparison.Ordinal
        );
    }

    /// <summary>What the page says of each item is in <see cref="Schedules.ScheduleOfLawTests"/>; here, that it is on paper.</summary>
    [Fact]
    public void Every_items_own_particulars_are_on_paper()
    {
        var items = browser.ReportModel.Items;
        Assert.True(items.Count >= 40);
        Assert.All(items, item =>
        {
            string[] own = [item.Id, item.Marking, item.Made, item.LastExamined, .. item.Notes];
            Assert.All(own, words => Assert.Contains(Tool.Squeeze(words), Text, StringComparison.Ordinal));
        });
    }

    [Fact]
    public async Task In_a_block_the_paragraphs_stand_in_the_schedules_order()
    {
        var (visit, item) = Example.With(Fit, i => i);
        var author = browser.ReportModel.Author;
        var html = await browser.Renderer.HtmlAsync(new ReportModel(Example.Identity(DocumentTypes.Report), visit, [item], author, author));
        var keys = Regex
            .Matches(html, "<b class=\"key\">([^<]*)</b>", RegexOptions.None, TimeSpan.FromSeconds(5))
            .Select(m => System.Net.WebUtility.HtmlDecode(m.Groups[1].Value));
        Assert.Equal(["1", "2", "11", "3", "4", "5", "7(a)", "7(b)", "8(a)–(c)", "8(d)", "8(e)", "8(f)", "9", "10"], keys);
    }

    [Fact]
    public void Codes_of_rules_and_their_sources_are_not_in_the_report()
    {
        Assert.DoesNotMatch(
            @"\b[WUD][0-9]{1,2}\b(?!-)",
            Regex.Replace(browser.ReportText, "[A-Z]+-[A-Z0-9-]+", "", RegexOptions.None, TimeSpan.FromSeconds(5))
        );
        Assert.DoesNotContain("commonpractice", Text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("frommemory", Text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("JCGM", Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_first_page_has_the_serials_of_what_may_not_be_used_or_only_until_a_date()
    {
        var first = Tool.Squeeze(browser.ReportText.Split('\f')[0]);
        var named = browser.ReportModel.NotToBeUsed.Concat(browser.ReportModel.OnlyUntil).ToList();
        Assert.True(named.Count > 10);
        Assert.All(named, i => Assert.Contains(Tool.Squeeze(i.Id + i.Marking), first, StringComparison.Ordinal));
    }

    [Fact]
    public void A_first_examination_is_said_to_be_one_under_paragraph_6()
    {
        var (visit, item) = Example.WithExamination(Fit, e => e with { Basis = Basis.Installation });
        var model = new ReportItemProbe(visit, item);
        Assert.Contains("correctly installed", model.Item.SafeToOperate, StringComparison.Ordinal);
        Assert.True(model.Item.IsFirst);
    }

    [Fact]
    public void No_withdrawn_item_is_said_to_be_safe_to_operate()
    {
        var withdrawn = browser.ReportModel.NotToBeUsed.ToList();
        Assert.NotEmpty(withdrawn);
        Assert.All(withdrawn, i => Assert.StartsWith("no,", i.SafeToOperate, StringComparison.Ordinal));
    }

    [Fact]
    public void Page_numbers_and_the_document_number_are_on_every_page()
    {
        var pages = browser.ReportText.Split('\f', StringSplitOptions.RemoveEmptyEntries);
        Assert.True(pages.Length > 5);
        for (var at = 0; at < pages.Length; at++)
        {
            Assert.Contains($"Page {at + 1} of {pages.Length}", pages[at], StringComparison.Ordinal);
            Assert.Contains("R-2026-000001", pages[at], StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Items_of_the_visit_that_may_not_be_reported_are_named_and_not_called_fit()
    {
        Assert.Equal(["HEL-04", "PUL-02"], browser.ReportModel.NotReported.Select(i => i.Item.Id).Order());
        Assert.Contains("Ontherecordofthisvisit,butnotinthisreport", Text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_undetermined_item_cannot_be_reported()
    {
        var author = browser.ReportModel.Author;
        Assert.Throws<ArgumentException>(() =>
            new ReportModel(Example.Identity(DocumentTypes.Report), Example.Visit, [Example.Item("PUL-02")], author, author)
        );
    }

    [Fact]
    public async Task The_same_model_gives_the_same_html() =>
        Assert.Equal(await browser.Renderer.HtmlAsync(browser.ReportModel), await browser.Renderer.HtmlAsync(browser.ReportModel));

    [Fact]
    public async Task What_was_typed_is_printed_and_never_becomes_markup()
    {
        const string nasty = "<script>alert('x')</script> & \"quotes\" </style><img src=x>";
        var (visit, item) = Example.With(Fit, i => i with { Description = nasty, Serial = nasty });
        var author = browser.ReportModel.Author;
        var html = await browser.Renderer.HtmlAsync(new ReportModel(Example.Identity(DocumentTypes.Report), visit, [item], author, author));
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<img", html, StringComparison.OrdinalIgnoreCase);
        Assert.Contains(Tool.Squeeze(nasty), Tool.Squeeze(Tool.PdfText(await browser.PrintAsync(html))), StringComparison.Ordinal);
    }

    private static string Fit => Example.Visit.Items.First(i => i.Outcome is Outcome.Fit && i.RegimeId == "gb-loler").Item.Id!;

    private sealed class ReportItemProbe(DeterminedVisit visit, DeterminedItem item)
    {
        public ReportItem Item { get; } =
            new ReportModel(Example.Identity(DocumentTypes.Report), visit, [item], visit.Record.People[0], visit.Record.People[0]).Items[0];
    }
}

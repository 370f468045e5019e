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
    private string? _body;

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

    [Fact]
    public void Paragraphs_3_to_8_are_there_for_every_item()
    {
        var items = browser.ReportModel.Items;
        Assert.True(items.Count >= 40);
        for (var at = 0; at < items.Count; at++)
        {
            var block = Block(at);
            Assert.All(Particulars(items[at]), p =>
                Assert.True(block.Contains(Tool.Squeeze(p), StringComparison.Ordinal), $"{items[at].Id}: {p} is not in {block}")
            );
        }
    }

    [Fact]
    public void The_paragraphs_stand_in_the_schedules_order()
    {
        var block = Block(0);
        string[] order =
        [
            "3Kind",
            "4Lastthorough",
            "5Safeworkingload",
            "7(a)Examined",
            "7(b)Would",
            "8(a)–(c)",
            "8(d)Latest",
            "8(e)Tests",
            "8(f)Dateexamined",
        ];
        var places = order.Select(o => block.IndexOf(o, StringComparison.Ordinal)).ToArray();
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
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
        Assert.All(withdrawn, i => Assert.StartsWith("No", i.SafeToOperate, StringComparison.Ordinal));
    }

    [Fact]
    public void Page_numbers_and_the_document_number_are_on_every_page()
    {
        var pages = browser.ReportText.Split('\f', StringSplitOptions.RemoveEmptyEntries);
        Assert.True(pages.Length > 10);
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

    private static IEnumerable<string> Particulars(ReportItem item) =>
        [
            item.Id,
            Printed.Text(item.Item.Description),
            Printed.Text(item.Item.Serial),
            Printed.Day(item.Item.Manufactured),
            Printed.Day(item.Determined.LastExamined),
            Printed.Load(item.Item.SafeWorkingLoad),
            item.Basis,
            item.SafeToOperate,
            item.Next,
            item.NotAfter,
            Printed.Day(item.Determined.ExaminedOn),
            .. item.Defects.SelectMany(d =>
                new[] { d.Part, d.Description, d.Remedy, d.IsNow ? "is a danger now" : Printed.Day(d.BecomesDangerOn) }
            ),
            .. item.Examination.Tests.SelectMany(t => new[] { Printed.Text(t.Description), Printed.Text(t.Result) }),
            .. item.Case.SelectMany(s => s.Lines.Select(l => l.Text).Concat(s.Routine.Select(r => r.Criteria))),
            .. item.Examination.Diameters.SelectMany(d => d.ReadingsMm).OfType<decimal>().Select(Printed.Number),
        ];

    // The block of the n-th item: from its own counter to the next one's. Page margins in between are taken out first.
    private string Block(int at)
    {
        var text = _body ??= Body();
        var items = browser.ReportModel.Items;
        var start = text.LastIndexOf(
            Tool.Squeeze(items[at].Id),
            text.IndexOf($"Item{at + 1}of{items.Count}", StringComparison.Ordinal),
            StringComparison.Ordinal
        );
        var end = at + 1 < items.Count ? text.IndexOf($"Item{at + 2}of{items.Count}", StringComparison.Ordinal) : text.Length;
        return text[start..end];
    }

    private string Body()
    {
        var body = Regex.Replace(
            browser.ReportText,
            @"Report of thorough examination\s+R-2026-000001|R-2026-000001 Issued [^\n]*|R-2026-000001\nIssued[^\n]*\nPage[^\n]*",
            "",
            RegexOptions.None,
            TimeSpan.FromSeconds(5)
        );
        return Tool.Squeeze(body);
    }

    private sealed class ReportItemProbe(DeterminedVisit visit, DeterminedItem item)
    {
        public ReportItem Item { get; } =
            new ReportModel(Example.Identity(DocumentTypes.Report), visit, [item], visit.Record.People[0], visit.Record.People[0]).Items[0];
    }
}

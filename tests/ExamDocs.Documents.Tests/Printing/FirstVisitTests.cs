using System.Collections.Concurrent;
using System.Net;
using System.Text.RegularExpressions;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Documents.ReadingBack;
using ExamDocs.Templates.FirstVisit;
using ExamDocs.Templates.FirstVisit.Wording;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Documents.Tests.Printing;

/// <summary>Sheets for a first visit: everything is asked, nothing is answered, and no item runs on to another page.</summary>
public sealed partial class FirstVisitTests(SharedBrowser browser)
{
    /// <summary>The visit, and the models.</summary>
    private const int PagesBefore = 2;

    /// <summary>Ticked with a glove on.</summary>
    private const double LeastMm = 6;

    private static readonly ConcurrentDictionary<string, Lazy<Task<PrintedPaper>>> Printed = new(StringComparer.Ordinal);

    public static TheoryData<string> Tags => [.. Language.All.Select(l => l.Tag)];

    [Theory]
    [MemberData(nameof(Tags))]
    public async Task Every_category_has_one_page_on_which_all_is_printed_whole(string tag)
    {
        var sheets = await OfAllAsync(tag);
        Assert.Equal([], FaithfulPrint.Faults(sheets.Html, sheets.Pdf).Select(f => f.Words));
        Assert.Empty(sheets.NearEdge());
        Assert.Equal(PagesBefore + Catalogue.All.Count, sheets.PageSizesMm().Count);
    }

    [Fact]
    public async Task Every_criterion_has_a_box_for_each_answer_it_allows_and_for_no_other()
    {
        var sheets = await OfAllAsync("en");
        foreach (var category in Catalogue.All)
        {
            var form = FormOf(sheets.Html, category.Id);
            Assert.All(category.Criteria, criterion =>
            {
                var line = Regex.Match(form, $"<tr data-asks=\"item/{criterion.Id}\">.*?</tr>", RegexOptions.Singleline, Limit).Value;
                Assert.Contains(criterion.Question, WebUtility.HtmlDecode(line), StringComparison.Ordinal);
                Assert.Equal(
                    Enum.GetValues<ObservedState>().Where(criterion.Allows).Select(s => s.ToString()).Order(StringComparer.Ordinal),
                    State().Matches(line).Select(m => m.Groups[1].Value).Order(StringComparer.Ordinal)
                );
            });
        }
    }

    [Fact]
    public async Task Boxes_are_large_enough_for_a_glove_and_none_is_ticked()
    {
        var category = Catalogue.Find("connector")!;
        var boxes = (await OfAllAsync("en")).Squares(LeastMm, 7).GroupBy(b => b.Page).ToDictionary(g => g.Key, g => g.Count());
        var page = PagesBefore + 1 + Catalogue.All.ToList().IndexOf(category);
        var answers = category.Criteria.Sum(c => Enum.GetValues<ObservedState>().Count(c.Allows));
        // Never used, four purposes, three of a defect, two conclusions.
        Assert.Equal(answers + 1 + Enum.GetValues<Purpose>().Length + 3 + 2, boxes[page]);
        var visit = await PrintAsync(new FirstVisitModel([], null, "0"), "en");
        Assert.Empty(visit.NotEmpty(visit.Squares(LeastMm, 7).Where(b => b.Page == 1)));
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 1)]
    [InlineData(3, 2)]
    public async Task Two_items_of_a_kind_with_few_criteria_share_a_page(int items, int pages)
    {
        var few = Catalogue.Find("swivel-ring")! with
        {
            Id = "throw-line",
            Criteria = [.. Catalogue.Find("swivel-ring")!.Criteria.Take(8)],
        };
        var sheets = await PrintAsync(new FirstVisitModel([new BlankItems(few, items)], null, "0"), "en");
        Assert.Equal(PagesBefore + pages, sheets.PageSizesMm().Count);
        Assert.Equal(items, Regex.Count(sheets.Html, "data-category=\"throw-line\"", RegexOptions.None, Limit));
        Assert.Equal([], FaithfulPrint.Faults(sheets.Html, sheets.Pdf).Select(f => f.Words));
    }

    [Fact]
    public async Task They_say_that_they_are_no_report_and_bear_no_number()
    {
        var sheets = await OfAllAsync("en");
        Assert.True(sheets.Says(FirstVisitPhrases.Languages.English.Lead));
        Assert.DoesNotMatch(@"S-\d{4}-\d{6}", sheets.Text);
    }

    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(5);

    private static string FormOf(string html, string category) =>
        Regex.Match(html, $"data-category=\"{category}\".*?</section>", RegexOptions.Singleline, Limit).Value;

    /// <summary>Printed once for all tests.</summary>
    private Task<PrintedPaper> OfAllAsync(string tag) =>
        Printed
            .GetOrAdd(tag, _ => new Lazy<Task<PrintedPaper>>(() =>
                PrintAsync(new FirstVisitModel([.. Catalogue.All.Select(c => new BlankItems(c, 1))], null, "0"), tag)
            ))
            .Value;

    private async Task<PrintedPaper> PrintAsync(FirstVisitModel model, string tag)
    {
        var html = await Language.Find(tag)!.InAsync(() => browser.Renderer.HtmlAsync(model));
        return new PrintedPaper(html, await browser.PrintAsync(html));
    }

    [GeneratedRegex("data-state=\"(\\w+)\"", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex State();
}

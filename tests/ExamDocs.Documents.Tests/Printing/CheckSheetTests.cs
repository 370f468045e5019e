using System.Collections.Concurrent;
using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using ExamDocs.Templates;
using ExamDocs.Templates.CheckSheet;
using ExamDocs.Templates.CheckSheet.Wording;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Documents.Tests.Printing;

public sealed class CheckSheetTests(SharedBrowser browser)
{
    /// <summary>Ticked with a glove on: the boxes of a line are 8 mm.</summary>
    private const double LeastMm = 6;

    private static readonly ConcurrentDictionary<string, Lazy<Task<PrintedPaper>>> Printed = new(StringComparer.Ordinal);

    public static TheoryData<string> Categories => [.. Catalogue.All.Select(c => c.Id)];

    [Theory]
    [MemberData(nameof(Categories))]
    public async Task Every_criterion_is_on_the_sheet_with_the_answers_it_allows_and_no_other(string id)
    {
        var category = Catalogue.Find(id)!;
        var sheet = await PrintAsync(category);
        var rows = Regex
            .Matches(sheet.Html, "<tr><th scope=\"row\">.*?</tr>", RegexOptions.Singleline, TimeSpan.FromSeconds(5))
            .Select(m => WebUtility.HtmlDecode(m.Value))
            .Where(r => r.Contains("class=\"question\"", StringComparison.Ordinal))
            .ToList();
        Assert.Equal(category.Criteria.Count, rows.Count);
        foreach (var (criterion, row) in category.Criteria.OrderBy(c => c.Class).Zip(rows))
        {
            Assert.Contains($">{criterion.Question}<", row, StringComparison.Ordinal);
            Assert.True(sheet.Says(criterion.Question), criterion.Id);
            Assert.Equal(
                Enum.GetValues<ObservedState>()
                    .Where(criterion.Allows)
                    .Select(CheckSheetPhrases.Languages.English.Box)
                    .Order(StringComparer.Ordinal),
                Regex
                    .Matches(row, "class=\"word\">([^<]*)<", RegexOptions.None, TimeSpan.FromSeconds(5))
                    .Select(m => m.Groups[1].Value)
                    .Order(StringComparer.Ordinal)
            );
        }
        Assert.Empty(sheet.Lost());
        Assert.Empty(sheet.NearEdge());
    }

    [Theory]
    [MemberData(nameof(Categories))]
    public async Task Each_answer_has_a_box_that_a_gloved_hand_can_tick(string id)
    {
        var category = Catalogue.Find(id)!;
        var boxes = (await PrintAsync(category)).Squares(LeastMm, 9);
        // Two rooms for defects with three boxes each, and six boxes for why it was examined.
        var answers = category.Criteria.Sum(c => Enum.GetValues<ObservedState>().Count(c.Allows));
        Assert.Equal(answers + (2 * 3) + Enum.GetValues<Basis>().Length, boxes.Count);
        Assert.All(boxes, b => Assert.True(b.Width >= LeastMm && b.Height >= LeastMm));
        foreach (var line in boxes.GroupBy(b => (b.Page, b.Top)))
            Assert.All(line.OrderBy(b => b.Left).Zip(line.OrderBy(b => b.Left).Skip(1)), p =>
                Assert.True(p.Second.Left - p.First.Left - p.First.Width >= 3)
            );
    }

    [Fact]
    public async Task Nothing_is_ticked_before_the_examiner_does()
    {
        var sheet = await PrintAsync(Example.Visit, Example.Item("BRG-01"));
        var boxes = sheet.Squares(LeastMm, 9).Where(b => b.Page == 1).ToList();
        Assert.True(boxes.Count > 20);
        Assert.Empty(sheet.NotEmpty(boxes));
    }

    [Fact]
    public async Task A_sheet_is_A4_with_bookmarks_its_number_and_a_code_that_reads()
    {
        var sheet = await PrintAsync(Example.Visit, Example.Item("BRG-01"));
        Assert.All(sheet.PageSizesMm(), p =>
        {
            Assert.Equal(210, p.Width, 0.2);
            Assert.Equal(297, p.Height, 0.2);
        });
        Assert.StartsWith("S-2026-000001 BRG-01\nCheck sheet\n", sheet.QrOfFirstPage(), StringComparison.Ordinal);
        Assert.Contains("No syntax or stream encoding errors", Tool.QpdfCheck(sheet.Pdf), StringComparison.Ordinal);
        Assert.All(["Checksheet", "Whatisexamined", "BRG-01:Diameteralongtherope", "BRG-01:Conclusion"], h =>
            Assert.Contains(h, sheet.Bookmarks())
        );
        var pages = sheet.PageSizesMm().Count;
        Assert.All(Enumerable.Range(1, pages), n =>
            Assert.True(sheet.Says(string.Create(CultureInfo.InvariantCulture, $"Page {n} of {pages}")))
        );
    }

    [Fact]
    public async Task What_was_found_last_time_is_told_with_its_note()
    {
        var item = Example.Item("BRG-04");
        var sheet = await PrintAsync(Example.Visit, item);
        foreach (var answer in item.Examination!.Observations.Where(o => o.Note is not null))
            Assert.True(
                sheet.Says($"Last time: {SentenceBook.English.Words.State(answer.State!.Value)} – {answer.Note}"),
                answer.Criterion
            );
        Assert.True(sheet.Says("Last time: no answer recorded"));
        Assert.True(sheet.Says("Found last time: still there, or put right?"));
        Assert.True(sheet.Says(item.Examination.Defects[0].Description!));
        Assert.Empty(sheet.Lost());
    }

    [Theory]
    [InlineData("BRG-04", "Withdrawn:", "It stays withdrawn")]
    [InlineData("BRG-02", "Withdrawn:", "never comes back into service")]
    [InlineData("PUL-02", "determined:", "only once a competent person has examined it")]
    public async Task What_may_not_be_used_says_so_in_big_words_at_its_top(string id, string word, string release)
    {
        var sheet = await PrintAsync(Example.Visit, Example.Item(id));
        Assert.True(sheet.PointsOf(word, page: 1) >= 24);
        Assert.True(sheet.Says(release));
        Assert.True(
            sheet.Text.IndexOf(Tool.Squeeze("do not use"), StringComparison.Ordinal)
                < sheet.Text.IndexOf(Tool.Squeeze("What is examined"), StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task What_may_be_used_bears_no_such_words()
    {
        var sheet = await PrintAsync(Example.Visit, Example.Item("BRG-01"));
        Assert.False(sheet.Says("do not use"));
        Assert.True(sheet.Says("Outcome of last time May stay in service") || sheet.Says("May stay in service"));
    }

    [Fact]
    public async Task The_grid_has_the_places_of_last_time_and_room_for_two_readings_at_each()
    {
        var item = Example.Item("BRG-04");
        var model = new CheckSheetModel(Example.Identity(DocumentTypes.CheckSheet), Example.Visit, item);
        var stations = model.Diameters!.Rows.SelectMany(r => r).ToList();
        Assert.Equal(
            item.Examination!.Diameters.Select(d => d.PositionMm!.Value.ToString(CultureInfo.InvariantCulture)).Concat(["", ""]),
            stations.Select(s => s.Position)
        );
        var sheet = await PrintAsync(Example.Visit, item);
        // The readings themselves stay with the last examination: only their means are shown, apart.
        var grid = Regex.Match(sheet.Html, "<table class=\"stations\">.*?</table>", RegexOptions.Singleline, TimeSpan.FromSeconds(5)).Value;
        var blank = Regex.Matches(grid, "<td></td>", RegexOptions.None, TimeSpan.FromSeconds(5)).Count;
        Assert.Equal(2 * stations.Count, blank);
        Assert.True(sheet.Says("11.04 to 12.96 mm inclusive. Source: Instructions for use, Ridgecote bridge, revision 4, page 25"));
    }

    [Theory]
    [InlineData("rope-bridge", true)]
    [InlineData("climbing-rope", true)]
    [InlineData("connector", false)]
    [InlineData("helmet", false)]
    public void Only_what_is_measured_along_its_length_gets_a_grid_blank_where_it_never_was(string category, bool has)
    {
        var grid = Of(Catalogue.Find(category)!).Diameters;
        Assert.Equal(has, grid is not null);
        Assert.All(grid?.Rows.SelectMany(r => r) ?? [], s => Assert.Equal(("", ""), (s.Position, s.LastMean)));
    }

    [Fact]
    public async Task What_the_catalogue_does_not_know_gets_free_lines_without_answers_that_soften()
    {
        var (visit, item) = Example.With("CON-01", i => i with { Category = "hammock" });
        Assert.Null(item.Category);
        var model = new CheckSheetModel(Example.Identity(DocumentTypes.CheckSheet), visit, item);
        Assert.Equal(12, model.Criteria.Count(c => c.Name.Length == 0));
        Assert.All(model.Criteria, c =>
            Assert.False(c.Offers(ObservedState.Noted) || c.Offers(ObservedState.NoSign) || c.Offers(ObservedState.NotApplicable))
        );
        var sheet = await PrintAsync(visit, item);
        Assert.True(sheet.Says("The catalogue has no criteria for this kind of item"));
        Assert.True(sheet.Says("The record this sheet was filled in from has errors"));
        Assert.Empty(sheet.Lost());
    }

    [Fact]
    public async Task Long_names_and_notes_are_printed_whole()
    {
        var words = string.Join(' ', Enumerable.Range(1, 60).Select(n => $"word{n}"));
        var (visit, _) = Example.WithExamination("BRG-01", e =>
            e with
            {
                Observations = [.. e.Observations.Select(o => o with { Note = words })],
            }
        );
        var at = visit.Record.Items.ToList().FindIndex(i => i.Id == "BRG-01");
        var items = visit.Record.Items.ToList();
        items[at] = items[at] with { Id = new string('W', 60), Description = words, Serial = new string('M', 80) };
        var examinations = visit.Record.Examinations.Select(e => e.Item == "BRG-01" ? e with { Item = new string('W', 60) } : e);
        var renamed = Example.Determined(visit.Record with { Items = items, Examinations = [.. examinations] });
        var sheet = await PrintAsync(renamed, renamed.Items[at]);
        Assert.Empty(sheet.Lost());
        Assert.Empty(sheet.NearEdge());
    }

    /// <summary>In German the questions of a harness end so that the heading alone would still have room on their page.</summary>
    [Fact]
    public async Task The_room_for_defects_begins_on_the_page_of_its_heading()
    {
        var html = await Language.German.InAsync(() =>
            browser.Renderer.HtmlAsync(
                new CheckSheetModel(Example.Identity(DocumentTypes.CheckSheet), Example.Visit, Example.Item("HAR-01"))
            )
        );
        var pages = Tool.PdfText(await browser.PrintAsync(html)).Split('\f');
        var page = Assert.Single(pages, p => p.Contains("Mehr als zwei", StringComparison.Ordinal));
        Assert.Contains("Beschreibung des Mangels", page, StringComparison.Ordinal);
    }

    private static CheckSheetModel Of(Category category)
    {
        var record = Example.Record with
        {
            Items =
            [
                new Item
                {
                    Id = "NEW-1",
                    Category = category.Id,
                    Description = "Not examined yet",
                },
            ],
            Examinations = [],
            Renewals = [],
        };
        var visit = Example.Determined(record);
        return new CheckSheetModel(Example.Identity(DocumentTypes.CheckSheet), visit, visit.Items[0]);
    }

    /// <summary>Printed once for all tests.</summary>
    private Task<PrintedPaper> PrintAsync(Category category) =>
        Printed.GetOrAdd(category.Id, _ => new Lazy<Task<PrintedPaper>>(() => PrintAsync(Of(category)))).Value;

    private Task<PrintedPaper> PrintAsync(DeterminedVisit visit, DeterminedItem item) =>
        PrintAsync(new CheckSheetModel(Example.Identity(DocumentTypes.CheckSheet), visit, item));

    private async Task<PrintedPaper> PrintAsync(CheckSheetModel model)
    {
        var html = await browser.Renderer.HtmlAsync(model);
        return new PrintedPaper(html, await browser.PrintAsync(html));
    }
}

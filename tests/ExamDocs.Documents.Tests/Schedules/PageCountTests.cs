using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Documents.Tests.Printing;
using ExamDocs.Documents.Tests.Signing;
using ExamDocs.Templates;
using ExamDocs.Templates.Report;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Documents.Tests.Schedules;

/// <summary>How many pages a report has, for visits of several sizes made of the example's items.</summary>
public sealed class PageCountTests(SharedBrowser browser)
{
    public static TheoryData<string> Tags => [.. Language.All.Select(l => l.Tag)];

    [Theory]
    [MemberData(nameof(Tags))]
    public async Task The_examples_report_has_nine_pages_at_most_in_every_language(string tag)
    {
        var report = browser.ReportModel;
        var items = report.Items.Select(i => i.Determined).ToHashSet();
        var html = await Language
            .Find(tag)!
            .InAsync(() =>
                browser.Renderer.HtmlAsync(
                    new ReportModel(
                        report.Identity,
                        Example.Visit,
                        [.. Example.Visit.Items.Where(items.Contains)],
                        report.Author,
                        report.AuthenticatedBy
                    )
                )
            );
        Assert.InRange(Pages(await browser.PrintAsync(html)), 2, 9);
    }

    /// <summary>The three that have most to say, a rope bridge with its plot among them.</summary>
    [Theory]
    [InlineData("en", "gb-loler")]
    [InlineData("de", "gb-loler")]
    [InlineData("fr", "gb-loler")]
    [InlineData("de", "de")]
    [InlineData("fr", "fr")]
    public async Task A_clean_item_by_itself_has_two_pages_at_most(string tag, string regime)
    {
        var visit = Example.Determined(Example.Record with { Visit = Example.Record.Visit with { Regime = regime } });
        var person = visit.Record.People[0];
        var clean = visit
            .Items.Where(i => i.MayBeReported && i is { Outcome: Outcome.Fit, WasDueBy: null } && i.RegimeId == regime)
            .ToList();
        var pages = new List<(DeterminedItem Item, string Html)>();
        foreach (var item in clean)
        {
            var html = await Language
                .Find(tag)!
                .InAsync(() =>
                    browser.Renderer.HtmlAsync(new ReportModel(Example.Identity(DocumentTypes.Report), visit, [item], person, person))
                );
            pages.Add((item, html));
        }
        var longest = pages.OrderByDescending(p => p.Html.Length).Take(3).ToList();
        Assert.Contains(longest, p => p.Item.Examination!.Diameters.Count > 0);
        foreach (var (item, html) in longest)
            Assert.True(Pages(await browser.PrintAsync(html)) <= 2, $"{item.Item.Id} in {tag} under {regime}");
    }

    [Fact]
    public async Task A_visit_of_twelve_items_has_three_pages_at_most() => Assert.InRange(await PagesAsync(Example.Record, 12), 2, 3);

    /// <summary>Hundreds of items take long to print: with EXAMDOCS_PROOF=full.</summary>
    [Theory]
    [InlineData(200, 22)]
    [InlineData(2000, 180)]
    public async Task Large_visits_stay_short(int items, int most)
    {
        if (!EveryByteTests.IsFull)
            Assert.Skip("prints hundreds of items: EXAMDOCS_PROOF=full");
        Assert.InRange(await PagesAsync(Copies(items), items), 2, most);
    }

    private async Task<int> PagesAsync(ExaminationRecord record, int items)
    {
        var visit = Example.Determined(record);
        // Every fourth of the example: connectors, harnesses, bridges, withdrawn ones among them.
        var reported = visit.Items.Where(i => i.MayBeReported && i.RegimeId == "gb-loler").ToList();
        var step = Math.Max(1, reported.Count / items);
        var chosen = reported.Where((_, n) => n % step == 0).Take(items).ToList();
        Assert.Equal(items, chosen.Count);
        var person = visit.Record.People[0];
        var report = new ReportModel(Example.Identity(DocumentTypes.Report), visit, chosen, person, person);
        return Pages(await browser.PrintAsync(await browser.Renderer.HtmlAsync(report)));
    }

    /// <summary>Copies of the example's items in order, with one withdrawn, limited or overdue item in ten.</summary>
    private static ExaminationRecord Copies(int items)
    {
        var fit = Example
            .Visit.Items.Where(i =>
                i is { Outcome: Outcome.Fit, RegimeId: "gb-loler", WasDueBy: null, Item.FittedTo: null, Parts.Count: 0 }
            )
            .ToList();
        var others = Example
            .Visit.Items.Where(i =>
                i.MayBeReported && i.RegimeId == "gb-loler" && i.Item.FittedTo is null && i.Parts.Count == 0 && !fit.Contains(i)
            )
            .ToList();
        var of = Enumerable
            .Range(0, items + 10)
            .Select(n => (Item: n % 10 == 9 ? others[n / 10 % others.Count] : fit[n % fit.Count], Id: $"K-{n:0000}"))
            .ToList();
        return Example.Record with
        {
            Items = [.. of.Select(o => o.Item.Item with { Id = o.Id, Serial = $"S-{o.Id}" })],
            Examinations = [.. of.Select(o => o.Item.Examination! with { Item = o.Id })],
            Renewals = [],
            Remedies = [],
            Releases = [],
            Disposals = [],
        };
    }

    private static int Pages(byte[] pdf)
    {
        using var document = UglyToad.PdfPig.PdfDocument.Open(pdf);
        return document.NumberOfPages;
    }
}

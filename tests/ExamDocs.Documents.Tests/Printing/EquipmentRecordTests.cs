using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates;
using ExamDocs.Templates.EquipmentRecord;

namespace ExamDocs.Documents.Tests.Printing;

public sealed class EquipmentRecordTests(SharedBrowser browser)
{
    [Fact]
    public async Task It_tells_identity_limits_and_the_whole_history()
    {
        var item = Example.Item("ADJ-01");
        var paper = await PrintAsync(Example.Visit, item);
        string[] wanted =
        [
            "ADJ-01",
            item.Item.Description!,
            item.Item.Serial!,
            "12 Sep 2023",
            "EN 12841",
            "1 person (taken from: maker's instructions)",
            "Instructions for use, Clenchwell, revision 5, page 11",
            "In use at most 10 years",
            "every 12 months",
            "2 Oct 2033",
            "20 Nov 2025",
            "as then concluded: withdraw",
            "Cam – Creeps under load (a danger now)",
            "Tobias Fennimore",
            "11 May 2026",
            "May stay in service",
            "11 Nov 2026",
            "15 Jan 2026: Cam and spring renewed. Done by Ottermere Metalwork, service workshop. Evidence: Workshop report "
                + "OM-26-0077 seen.",
            "11 May 2026: released by Maren Oakhollow.",
            "21 Nov 2025: sent for repair, by Della Hartwhistle.",
        ];
        Assert.All(wanted, w => Assert.True(paper.Says(w), w));
        Assert.Empty(paper.Lost());
        Assert.Empty(paper.NearEdge());
    }

    [Fact]
    public async Task Every_examination_of_the_record_has_its_line_oldest_first()
    {
        foreach (var item in Example.Visit.Items)
        {
            var model = Model(Example.Visit, item);
            var recorded = Example.Record.Examinations.Where(e => e.Item == item.Item.Id).ToList();
            Assert.Equal(recorded.Count, model.Examinations.Count);
            Assert.Equal(model.Examinations.Select(e => e.On).Order(), model.Examinations.Select(e => e.On));
            Assert.Equal(item.Examination is null ? 0 : 1, model.Examinations.Count(e => e.Decided));
        }
        var longest = Example.Visit.Items.MaxBy(i => Example.Record.Examinations.Count(e => e.Item == i.Item.Id))!;
        Assert.True(Example.Record.Examinations.Count(e => e.Item == longest.Item.Id) >= 3);
        Assert.Empty((await PrintAsync(Example.Visit, longest)).Lost());
    }

    [Fact]
    public void Diameters_are_summed_up_by_the_smallest_and_the_largest_mean()
    {
        // Readings of BRG-04: means 11.63, 11.35, 10.85, 11.38, 11.63.
        var examination = Model(Example.Visit, Example.Item("BRG-04")).Examinations.Single(e => e.Decided);
        Assert.Contains("Diameters at 5 places: means from 10.85 to 11.63\u00A0mm.", examination.Found);
    }

    [Fact]
    public void Parts_fitted_now_and_before_are_told_apart()
    {
        var harness = Model(Example.Visit, Example.Item("HAR-03")).Assembly;
        Assert.Equal([("BRG-05", "fitted to it now"), ("BRG-04", "was fitted to it, and taken off")], harness.Select(a => (a.Id, a.How)));
        var bridge = Assert.Single(Model(Example.Visit, Example.Item("BRG-04")).Assembly);
        Assert.Equal(("HAR-03", "it was fitted to this, and taken off"), (bridge.Id, bridge.How));
        Assert.Equal(
            ("HAR-03", "it is fitted to this now"),
            Model(Example.Visit, Example.Item("BRG-05")).Assembly.Select(a => (a.Id, a.How)).Single()
        );
    }

    [Theory]
    [InlineData("BRG-04", "Not to be used")]
    [InlineData("PUL-02", "Not determined: do not use")]
    public async Task What_may_not_be_used_says_so_unmistakably_and_has_no_next_date(string id, string words)
    {
        var item = Example.Item(id);
        var paper = await PrintAsync(Example.Visit, item);
        Assert.True(paper.Says(words));
        Assert.True(paper.PointsOf("Not", page: 1) >= 18);
        Assert.True(paper.Says("none set: the item is not to be used"));
        Assert.True(paper.Says("not to be used at all"));
        Assert.DoesNotContain("verdict-words\">May stay", paper.Html, StringComparison.Ordinal);
        Assert.All(item.Reasons, r => Assert.True(paper.Says(r.Text[1..]), r.Code));
    }

    [Fact]
    public async Task Gaps_are_printed_as_not_recorded_and_errors_are_named()
    {
        var bare = Example.Record with
        {
            Visit = new Visit(),
            People = [],
            Limits = [],
            Examinations = [],
            Renewals = [],
            Items = [new Item { Id = "X-1", Category = "hammock" }],
        };
        var visit = Example.Determined(bare);
        var paper = await PrintAsync(visit, visit.Items[0]);
        Assert.Equal(Outcome.Undetermined, visit.Items[0].Outcome);
        Assert.True(paper.Says("Not determined: do not use"));
        Assert.True(paper.Says("The record of this item has errors"));
        Assert.True(paper.Says("No maker's limits are recorded for this item."));
        Assert.True(paper.Says("No examination of this item is in the record."));
        Assert.True(paper.Says("Serial or batch number not recorded"));
        Assert.Empty(paper.Lost());
    }

    [Fact]
    public async Task It_is_A4_sound_with_bookmarks_and_a_code_that_reads()
    {
        var paper = await PrintAsync(Example.Visit, Example.Item("HAR-03"));
        Assert.All(paper.PageSizesMm(), p =>
        {
            Assert.Equal(210, p.Width, 0.2);
            Assert.Equal(297, p.Height, 0.2);
        });
        Assert.Contains("No syntax or stream encoding errors", Tool.QpdfCheck(paper.Pdf), StringComparison.Ordinal);
        Assert.StartsWith("E-2026-000001 HAR-03\nEquipment record\n", paper.QrOfFirstPage(), StringComparison.Ordinal);
        var finished = new PrintedPaper(paper.Html, ExamDocs.Documents.Finishing.Finisher.Finish(paper.Pdf, []));
        Assert.All(["Equipmentrecord", "Whatitis", "Whatitsmakerallows", "Partsandassembly", "Examinations", "Partsrenewed"], h =>
            Assert.Contains(h, finished.Bookmarks())
        );
    }

    private static EquipmentRecordModel Model(DeterminedVisit visit, DeterminedItem item) =>
        new(Example.Identity(DocumentTypes.EquipmentRecord), visit, item);

    private async Task<PrintedPaper> PrintAsync(DeterminedVisit visit, DeterminedItem item)
    {
        var html = await browser.Renderer.HtmlAsync(Model(visit, item));
        return new PrintedPaper(html, await browser.PrintAsync(html));
    }
}

using System.Text.Json.Nodes;
using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using Microsoft.Playwright;

namespace ExamDocs.Workbench.Tests;

/// <summary>A maker's safety notice on screen: dropped or typed, looked up, and what it names taken out of use.</summary>
public sealed class RecallPageTests(OpenedBrowser browser) : IClassFixture<OpenedBrowser>
{
    private const string Notice = """
        {
          "format": "examdocs-recall/1", "maker": "Fennick Works", "reference": "FW-1", "on": "2026-05-10",
          "demands": "Take it out of use and send it to us.", "readAt": "letter of 10 May",
          "affected": [{ "models": ["Model rope-bridge"], "serialRanges": [{ "from": "Q100", "to": "Q199" }] }]
        }
        """;

    [Fact]
    public async Task From_a_dropped_notice_to_the_labels()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        Remember(open);
        var page = await browser.OpenAsync(1280);
        var errors = BrowserErrors.Of(page);
        await LastVisit.EnterAsync(open, page);
        await page.GotoAsync($"{open.Address}/recall");
        await SoundPage.RequireBothWaysAsync(page, "recall");
        await DropAsync(page, Notice);
        await page.ArriveAsync("**/recall/*");
        await Assertions.Expect(Section(page, "affected")).ToContainTextAsync("RB-1");
        await Assertions.Expect(Section(page, "affected")).ToContainTextAsync("serial number 'Q150' is named");
        await Assertions.Expect(Section(page, "open")).ToContainTextAsync("no serial number is on record");
        await Assertions.Expect(Section(page, "not-affected").Locator("h3")).ToHaveCountAsync(2);
        await SoundPage.RequireBothWaysAsync(page, "recalled");
        Assert.Equal(Standing.NotIssued, Stands(open, "RB-1"));

        await page.GetByRole(AriaRole.Button, new() { Name = "Issue the papers" }).ClickAsync();
        await Assertions.Expect(page.Locator(".documents li")).ToHaveCountAsync(3, new() { Timeout = 120_000 });
        await Assertions.Expect(page.Locator(".next")).ToContainTextAsync("Nothing is left");
        await Assertions.Expect(Section(page, "affected")).ToContainTextAsync("withdrawn by the sweep of 12 May 2026");
        Assert.Equal((Standing.Withdrawn, Standing.Held), (Stands(open, "RB-1"), Stands(open, "RB-2")));
        await SoundPage.RequireBothWaysAsync(page, "recalled-issued");
        var download = page.WaitForDownloadAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Download the record of the sweep" }).ClickAsync();
        var record = JsonNode.Parse(
            await File.ReadAllTextAsync(await (await download).PathAsync(), TestContext.Current.CancellationToken)
        )!;
        Assert.Equal("examdocs-recall-sweep/1", (string?)record["format"]);
        var paper = await page.Locator(".documents a").First.GetAttributeAsync("href");
        Assert.Equal(200, (await page.APIRequest.GetAsync(open.Address + paper)).Status);
        Assert.Empty(errors);
    }

    [Fact]
    public async Task A_typed_notice_is_read_as_a_dropped_one_and_keeps_what_was_typed_where_it_is_at_fault()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        Remember(open);
        var page = await browser.OpenAsync(390);
        await LastVisit.EnterAsync(open, page);
        await page.GotoAsync($"{open.Address}/recall");
        await page.Locator("summary").ClickAsync();
        foreach (
            var (label, value) in new[]
            {
                ("Maker, as the notice names itself", "Fennick Works"),
                ("The maker's reference", "FW-1"),
                ("Day of the notice", "2026-05-10"),
                ("What the maker demands", "Take it out of use and send it to us."),
                ("Where you read it", "letter of 10 May"),
                ("Models, one a line", "Model rope-bridge"),
                ("Serial numbers 1: from, inclusive", "Q100"),
                ("Serial numbers 1: to, inclusive", "Q199"),
                ("Made from, inclusive (2024-02)", "February"),
            }
        )
            await page.GetByLabel(label).FillAsync(value);
        var look = page.Locator("form[action='/recall/typed'] button");
        await look.ClickAsync();
        await Assertions.Expect(page.Locator(".refused")).ToContainTextAsync("/affected/0/manufactured/from");
        await SoundPage.RequireBothWaysAsync(page, "recall-typed");
        Assert.Equal("Q100", await page.GetByLabel("Serial numbers 1: from, inclusive").InputValueAsync());
        await page.GetByLabel("Made from, inclusive (2024-02)").FillAsync("");
        await look.ClickAsync();
        await page.ArriveAsync("**/recall/*");
        await Assertions.Expect(Section(page, "affected").Locator("h3")).ToHaveTextAsync("RB-1");
        var typed = page.Url;
        await page.GotoAsync($"{open.Address}/recall");
        await DropAsync(page, Notice);
        await page.ArriveAsync(typed);
    }

    [Theory]
    [InlineData("de", "BETROFFEN: NICHT BENUTZEN")]
    [InlineData("fr", "CONCERNÉ\u00A0: NE PAS UTILISER")]
    public async Task In_other_languages_too(string tag, string affected)
    {
        await using var open = await OpenedWorkbench.StartAsync();
        Remember(open);
        var page = await browser.OpenAsync(390);
        await open.EnterAsync(page, tag);
        await page.GotoAsync($"{open.Address}/recall");
        await SoundPage.RequireAsync(page, $"recall-{tag}");
        await DropAsync(page, Notice);
        await page.ArriveAsync("**/recall/*");
        await Assertions.Expect(Section(page, "affected").Locator(".standing b")).ToHaveTextAsync(affected);
        await SoundPage.RequireAsync(page, $"recalled-{tag}");
    }

    private static ILocator Section(IPage page, string name) => page.Locator($"section[aria-labelledby={name}]");

    private static async Task DropAsync(IPage page, string notice)
    {
        await page.Locator("#notice")
            .SetInputFilesAsync(
                new FilePayload
                {
                    Name = "notice.json",
                    MimeType = "application/json",
                    Buffer = System.Text.Encoding.UTF8.GetBytes(notice),
                }
            );
        await page.Locator(".drop button").ClickAsync();
    }

    private static Standing Stands(OpenedWorkbench open, string id) =>
        FindItems.ByMarking(open.Register, id, OpenedWorkbench.Today).Single().Standing;

    private static void Remember(OpenedWorkbench open)
    {
        var file = Path.Combine(Path.GetDirectoryName(open.Register)!, "last.json");
        var visit = new StoryVisit("V-1", "2026-05-11", "Alder Vale Ltd")
            .Bridge("RB-1", "Q150")
            .Bridge("RB-2", null)
            .Bridge("RB-3", "Q250")
            .Connector("C-1", "S100");
        File.WriteAllText(file, visit.Json);
        ImportVisits.Run([file], open.Register, OpenedWorkbench.Today, KnownRules.BuiltIn);
    }
}

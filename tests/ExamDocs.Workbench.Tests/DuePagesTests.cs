using System.Text;
using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using Microsoft.Playwright;

namespace ExamDocs.Workbench.Tests;

/// <summary>What falls due and which parts to order, as whoever plans the year looks at it.</summary>
public sealed class DuePagesTests(OpenedBrowser browser)
{
    [Fact]
    public async Task What_falls_due_is_listed_with_visits_and_files_and_a_visit_can_be_started()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        Import(open);
        var page = await browser.OpenAsync(1280);
        var errors = BrowserErrors.Of(page);
        await page.GotoAsync(open.Entry.AbsoluteUri);
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep" }).ClickAsync();
        await page.GotoAsync(open.Address + "/due?from=2026-05-12&to=2026-12-31");
        await Assertions.Expect(page.GetByRole(AriaRole.Status)).ToContainTextAsync("To be examined: 2; not to be used: 2");
        await Assertions.Expect(page.Locator("#list ~ .wide")).ToContainTextAsync("RB-2");
        await Assertions.Expect(page.Locator("#apart ~ .wide")).ToContainTextAsync("CUT");
        await SoundPage.RequireBothWaysAsync(page, "due");

        var calendar = await page.Context.APIRequest.GetAsync(open.Address + "/due/due.ics?from=2026-05-12&to=2026-12-31");
        Assert.Contains("BEGIN:VCALENDAR", await calendar.TextAsync(), StringComparison.Ordinal);
        var workbook = await page.Context.APIRequest.GetAsync(open.Address + "/due/due.xlsx?from=2026-05-12&to=2026-12-31");
        Assert.Equal("PK", Encoding.ASCII.GetString((await workbook.BodyAsync())[..2]));
        var plan = await page.Context.APIRequest.GetAsync(
            open.Address + "/due/plan.pdf?from=2026-05-12&to=2026-12-31",
            new() { Timeout = 120_000 }
        );
        Assert.Equal("%PDF", Encoding.ASCII.GetString((await plan.BodyAsync())[..4]));

        await page.GetByRole(AriaRole.Button, new() { Name = "Start a visit of these" }).ClickAsync();
        await page.ArriveAsync("**/particulars");
        Assert.Empty(errors);
    }

    [Fact]
    public async Task A_day_that_is_none_is_said_to_be_none()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        Import(open);
        using var client = await open.EnterAsync();
        using var answer = await client.GetAsync("/due?from=tomorrow", TestContext.Current.CancellationToken);
        Assert.Equal(System.Net.HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains(
            "tomorrow",
            await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Spares_are_set_against_a_stock_list()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        Import(open, withoutId: true);
        var page = await browser.OpenAsync(1280);
        var errors = BrowserErrors.Of(page);
        await page.GotoAsync(open.Entry.AbsoluteUri);
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep" }).ClickAsync();
        await page.GotoAsync(open.Address + "/spares");
        await page.GetByLabel("What is in stock")
            .SetInputFilesAsync(
                new FilePayload
                {
                    Name = "stock.csv",
                    MimeType = "text/csv",
                    Buffer = Encoding.UTF8.GetBytes("part number,quantity\nSP-11,one\n"),
                }
            );
        await page.GetByRole(AriaRole.Button, new() { Name = "Show" }).ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("row 2, SP-11: 'one' is no whole number: not counted");
        await Assertions.Expect(page.GetByRole(AriaRole.Status)).ToContainTextAsync("Parts to replace: 1; to order: 1");
        await Assertions.Expect(page.Locator("#order-0 ~ .wide")).ToContainTextAsync("CUT");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Parts left out: 1. Why: they have no id.");
        await SoundPage.RequireBothWaysAsync(page, "spares");
        var order = page.WaitForDownloadAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "The order as a workbook" }).ClickAsync();
        Assert.Equal("order.xlsx", (await order).SuggestedFilename);
        Assert.Empty(errors);
    }

    /// <summary>A harness with a bridge that was cut, and one without.</summary>
    private static void Import(OpenedWorkbench open, bool withoutId = false)
    {
        var record = new StoryVisit("V-1", "2026-05-11", "Alder Vale Ltd")
            .Harness("H-1", "H100")
            .Harness("H-2", "H200")
            .Bridge("CUT", "Q100", i => i.On("H-1").Cut())
            .Bridge("RB-2", "Q200", i => i.On("H-2"));
        if (withoutId)
            record.Bridge("", "Q300", i => i.On("H-2"));
        var file = Path.Combine(Path.GetDirectoryName(open.Register)!, "visit.json");
        File.WriteAllText(file, record.Json);
        ImportVisits.Run([file], open.Register, OpenedWorkbench.Today, KnownRules.BuiltIn);
    }
}

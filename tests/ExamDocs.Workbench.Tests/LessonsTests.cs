using ClosedXML.Excel;
using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using Microsoft.Playwright;

namespace ExamDocs.Workbench.Tests;

/// <summary>What the records teach, for one employer's kit or for everybody's, as pages and as a workbook.</summary>
public sealed class LessonsTests(OpenedBrowser browser) : IClassFixture<OpenedBrowser>
{
    [Fact]
    public async Task Pages_and_workbook_of_one_employers_kit_are_downloaded()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        LastVisit.Remember(open);
        var visit = Path.Combine(Path.GetDirectoryName(open.Register)!, "birch.json");
        await File.WriteAllTextAsync(
            visit,
            new StoryVisit("V-9", "2025-11-12", "Birch Lane Ltd").Harness("H-9", "S900").Json,
            TestContext.Current.CancellationToken
        );
        ImportVisits.Run([visit], open.Register, OpenedWorkbench.Today, KnownRules.BuiltIn);
        var page = await browser.OpenAsync(1280);
        var errors = BrowserErrors.Of(page);
        await LastVisit.EnterAsync(open, page);
        await page.GetByRole(AriaRole.Link, new() { Name = "All kit" }).ClickAsync();
        await page.ArriveAsync("**/all");
        await page.Locator("main").GetByRole(AriaRole.Link, new() { Name = "What the records teach" }).ClickAsync();
        await page.ArriveAsync("**/lessons");
        await SoundPage.RequireBothWaysAsync(page, "lessons");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("decide on no item");
        var before = open.Files;
        Assert.Equal(
            ["Everybody's in the register", "Alder Vale Ltd", "Birch Lane Ltd"],
            await page.Locator("#employer option").AllTextContentsAsync()
        );
        await page.GetByLabel("Whose kit").SelectOptionAsync("Birch Lane Ltd");

        var pdf = await DownloadedAsync(page, "Download the pages", "lessons.pdf");
        Assert.Equal("%PDF-"u8.ToArray(), pdf[..5]);
        using (var workbook = new XLWorkbook(new MemoryStream(await DownloadedAsync(page, "Download the numbers", "lessons.xlsx"))))
            Assert.Equal(
                "harness",
                Assert.Single(workbook.Worksheet("Withdrawals").RowsUsed(), r => r.Cell(1).GetString() is "Category").Cell(2).GetString()
            );
        // Nothing of it stays here.
        Assert.Equal(before, open.Files);
        Assert.Empty(errors);
    }

    [Fact]
    public async Task An_employer_without_kit_and_a_register_that_is_not_there_are_told()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        var page = await browser.OpenAsync(390);
        await LastVisit.EnterAsync(open, page);
        await page.GotoAsync($"{open.Address}/lessons");
        Assert.Equal(0, await page.Locator("main form").CountAsync());
        LastVisit.Remember(open);
        await page.ReloadAsync();
        await page.Locator("#employer option").Nth(1).EvaluateAsync("e => { e.value = '<b>Nobody</b>'; e.selected = true; }");
        await page.GetByRole(AriaRole.Button, new() { Name = "Download the numbers" }).ClickAsync();
        await Assertions.Expect(page.Locator(".refused")).ToHaveTextAsync("No examination is on record: there is nothing to count.");
        await SoundPage.RequireAsync(page, "lessons-refused");
    }

    private static async Task<byte[]> DownloadedAsync(IPage page, string button, string name)
    {
        var download = page.WaitForDownloadAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = button }).ClickAsync();
        var file = await download;
        Assert.Equal(name, file.SuggestedFilename);
        return await File.ReadAllBytesAsync(await file.PathAsync(), TestContext.Current.CancellationToken);
    }
}

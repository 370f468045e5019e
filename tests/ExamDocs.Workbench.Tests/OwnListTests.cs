using System.Globalization;
using System.Text;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Reading;
using Microsoft.Playwright;

namespace ExamDocs.Workbench.Tests;

/// <summary>A firm's own list is taken on screen as at the terminal, and nothing in it passes for an examination.</summary>
public sealed class OwnListTests(OpenedBrowser browser) : IClassFixture<OpenedBrowser>
{
    /// <summary>A connector that passed, one that failed, a kind and a word that nobody knows, and a row of totals.</summary>
    private const string Kit = """
        Plate;What;Make;Model;Serial No.;Made;First used;Last check;Result;WLL;Location
        C-1;Karabiner;Fennick Works;Talon;S100;2024-02;2024-05-20;2025-11-12;Pass;22 kN;Van 1
        C-2;Karabiner;Fennick Works;Talon;S101;2024-02;2024-05-20;2025-11-12;Fail;22 kN;Van 1
        T-1;Throw weight;Fennick Works;Plumb;S102;2024-02;2024-05-20;2025-11-12;Pass;;Van 2
        C-3;Karabiner;Fennick Works;Talon;S103;2024-02;2024-05-20;2025-11-12;B7;22 kN;Van 2
        Total;4;;;;;;;;;
        """;

    [Fact]
    public async Task From_a_dropped_list_to_report_and_labels()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        var page = await browser.OpenAsync(1280);
        var errors = BrowserErrors.Of(page);
        await LastVisit.EnterAsync(open, page);
        await DropAsync(page, "our kit.csv", Kit);
        await page.ArriveAsync("**/list");
        await SoundPage.RequireBothWaysAsync(page, "list");
        Assert.Equal(
            ["Plate", "What", "b7 1 row"],
            await page.Locator("tr.to-settle th").AllInnerTextsAsync().ContinueWith(OneLine, TaskScheduler.Default)
        );
        var (result, keep) = (
            page.Locator("section[aria-labelledby=result]"),
            page.GetByRole(AriaRole.Button, new() { Name = "Keep the answers" })
        );
        // What could lose an item is not taken as it seems: nothing comes out before somebody has chosen.
        await keep.ClickAsync();
        await Assertions.Expect(result).ToContainTextAsync("first choose what is marked");
        Assert.Equal(0, await page.GetByRole(AriaRole.Button, new() { Name = "Record the visit here" }).CountAsync());
        await page.GetByLabel("Take the column Plate as").SelectOptionAsync("Id");
        await page.GetByLabel("Take the column What as").SelectOptionAsync("Category");
        await keep.ClickAsync();
        // A word that is not known counts against its item until somebody says otherwise.
        await Assertions.Expect(result).ToContainTextAsync("2 come in withdrawn");
        await page.GetByLabel("Take b7 as").SelectOptionAsync("Remark");
        await keep.ClickAsync();
        await Assertions.Expect(result).ToContainTextAsync("1 comes in withdrawn");
        await Assertions.Expect(result).ToContainTextAsync("a row of totals");
        await Assertions.Expect(result).ToContainTextAsync("the kind of kit is not known: 'Throw weight'");
        await SoundPage.RequireBothWaysAsync(page, "list-result");

        var download = page.WaitForDownloadAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Download the workbook" }).ClickAsync();
        var workbook = Path.Combine(Path.GetDirectoryName(open.Register)!, "kit.xlsx");
        await (await download).SaveAsAsync(workbook);

        await page.GetByRole(AriaRole.Button, new() { Name = "Record the visit here" }).ClickAsync();
        await page.ArriveAsync("**/particulars");
        await LastVisit.FillParticularsAsync(page, "V-1", "Alder Vale Ltd");
        await page.ArriveAsync("**/record");
        Assert.Equal(4, await page.Locator(".items li").CountAsync());
        // The same items, out of use alike, whichever way they go.
        Assert.Equal(Told(ReadInput.From(workbook).Record!), Told(ReadInput.From(LastVisit.Draft(open)).Record!));
        await RecordFirstAsync(page);
        await page.GotoAsync(page.Url[..page.Url.IndexOf("/record", StringComparison.Ordinal)]);
        await Assertions.Expect(page.Locator("tbody tr", new() { HasText = "C-2" })).ToContainTextAsync("withdrawn");
        await Assertions.Expect(page.Locator("tbody tr.fit")).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator("tbody tr.fit")).ToContainTextAsync("C-1");
        await page.GetByRole(AriaRole.Button, new() { Name = "Issue the documents" }).ClickAsync();
        await Assertions.Expect(page.Locator(".next")).ToContainTextAsync("Done.", new() { Timeout = 120_000 });
        var documents = string.Join('\n', await page.Locator(".documents li").AllInnerTextsAsync());
        Assert.Matches("report.*C-1", documents);
        Assert.Matches("quarantine-label.*C-2", documents);
        Assert.DoesNotMatch("due-label.*C-[23]", documents);
        await page.GetByLabel("Printed on").SelectOptionAsync("tag-100x150");
        var labels = page.WaitForResponseAsync("**/sheet/*.pdf");
        await page.GetByRole(AriaRole.Button, new() { Name = "Make the sheet" }).ClickAsync();
        Assert.Equal(200, (await labels).Status);
        Assert.Empty(errors);
    }

    [Fact]
    public async Task Html_and_paths_in_a_list_stay_text_and_the_list_stays_as_it_is()
    {
        const string Planted = "<img src=x onerror=document.title='planted'>";
        var list = new StringBuilder($"Plate;What;Make;Model;Serial No.;Result;Notes {Planted};=cmd|' /C calc'!A0\n");
        foreach (var n in Enumerable.Range(1, 8))
            list.Append(
                CultureInfo.InvariantCulture,
                $"{Planted}{n};Karabiner {Planted};{Planted};../../x{n};S{n};odd {Planted};{Planted}' onclick='x;@SUM(1)\n"
            );
        await using var open = await OpenedWorkbench.StartAsync();
        var page = await browser.OpenAsync(390);
        var errors = BrowserErrors.Of(page);
        await LastVisit.EnterAsync(open, page);
        await DropAsync(page, "../../<img src=x>.csv", list.ToString());
        var dropped = Assert.Single(open.Files, f => f.StartsWith(open.Desk, StringComparison.Ordinal));
        var bytes = await File.ReadAllBytesAsync(dropped, TestContext.Current.CancellationToken);
        await page.GetByLabel("Take the column Plate as").SelectOptionAsync("Id");
        await page.GetByLabel("Take the column What as").SelectOptionAsync("Category");
        // Chosen for a status, its words count against the items until each of them is settled.
        await page.GetByLabel("Take the column Result as").SelectOptionAsync("State");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep the answers" }).ClickAsync();
        await Assertions.Expect(page.Locator("section[aria-labelledby=result]")).ToContainTextAsync("8 come in withdrawn");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync(Planted);
        await SoundPage.RequireAsync(page, "list-hostile");
        Assert.Equal(0, await page.Locator("main img, main script").CountAsync());
        Assert.DoesNotContain("planted", await page.TitleAsync(), StringComparison.Ordinal);
        await page.GetByRole(AriaRole.Button, new() { Name = "Record the visit here" }).ClickAsync();
        await page.ArriveAsync("**/particulars");
        await page.GetByRole(AriaRole.Link, new() { Name = "All items" }).ClickAsync();
        await page.ArriveAsync("**/record");
        Assert.Equal(8, await page.Locator(".items li").CountAsync());
        Assert.Equal(0, await page.Locator("main img, main script").CountAsync());
        Assert.Equal(bytes, await File.ReadAllBytesAsync(dropped, TestContext.Current.CancellationToken));
        Assert.Empty(errors);
    }

    [Fact]
    public async Task What_can_be_read_as_a_visit_is_one_and_can_be_taken_as_a_list()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        var page = await browser.OpenAsync(1280);
        await LastVisit.EnterAsync(open, page);
        await DropAsync(page, "Connectors.csv", "Id;Description;Maker;Model;Result\nC-1;Karabiner;Fennick Works;Talon;Fail\n");
        Assert.DoesNotContain("/list", page.Url, StringComparison.Ordinal);
        await page.GetByRole(AriaRole.Link, new() { Name = "Take it as your own list of kit" }).ClickAsync();
        await Assertions.Expect(page.Locator("section[aria-labelledby=result]")).ToContainTextAsync("1 comes in withdrawn");
    }

    [Theory]
    [InlineData("kind-to", "no-such-category")]
    [InlineData("kind-to", null)]
    [InlineData("word-to", null)]
    public async Task A_form_that_is_not_whole_settles_nothing(string field, string? value)
    {
        await using var open = await OpenedWorkbench.StartAsync();
        var page = await browser.OpenAsync(1280);
        await LastVisit.EnterAsync(open, page);
        await DropAsync(page, "our kit.csv", Kit);
        await page.Locator($"select[name={field}]")
            .First.EvaluateAsync(
                "(e, value) => { if (value === null) e.remove(); else e.options[0].value = value, e.selectedIndex = 0; }",
                value
            );
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep the answers" }).ClickAsync();
        await Assertions.Expect(page.Locator(".refused")).ToContainTextAsync("nothing of it was kept");
        Assert.DoesNotContain(open.Files, f => f.EndsWith("list-map.json", StringComparison.Ordinal));
    }

    private static string[] OneLine(Task<IReadOnlyList<string>> texts) =>
        [.. texts.Result.Select(t => string.Join(' ', t.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)))];

    private static async Task RecordFirstAsync(IPage page)
    {
        await page.Locator(".items a:text-is('C-1')").ClickAsync();
        await page.ArriveAsync("**/item/*");
        for (var n = 0; n < 17; n++)
            await page.Keyboard.PressAsync("1");
        await page.Keyboard.PressAsync("f");
        await Assertions.Expect(page.Locator("#progress")).ToHaveTextAsync("17 of 17 answered");
        await page.GetByRole(AriaRole.Link, new() { Name = "All items" }).ClickAsync();
        await page.ArriveAsync("**/record");
    }

    private static string Told(ExaminationRecord record) =>
        string.Join(
            '\n',
            record
                .Items.OrderBy(i => i.Id, StringComparer.Ordinal)
                .Select(i =>
                    $"{i.Id} {i.Category} {i.Maker} {i.Model} {i.Serial} {i.Manufactured} {i.FirstUsed} {i.LastExamined} {i.Description}"
                )
                .Concat(
                    record
                        .Examinations.Where(e => e.ExaminedOn is not null)
                        .Select(e => $"{e.Item} {e.ExaminedOn} {e.Conclusion} {e.Observations[0].Note}")
                )
        );

    private static Task DropAsync(IPage page, string name, string text) => DropAsync(page, name, Encoding.UTF8.GetBytes(text));

    private static async Task DropAsync(IPage page, string name, byte[] bytes)
    {
        await page.GetByLabel("Drop files here, or choose them")
            .SetInputFilesAsync(
                new FilePayload
                {
                    Name = name,
                    MimeType = "application/octet-stream",
                    Buffer = bytes,
                }
            );
        await page.GetByRole(AriaRole.Button, new() { Name = "Bring in" }).First.ClickAsync();
        await page.ArriveAsync("**/visit/**");
    }
}

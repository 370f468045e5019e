using System.Text;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using Microsoft.Playwright;

namespace ExamDocs.Workbench.Tests;

/// <summary>From the first start to a sheet of labels, as somebody does it who has never seen the program.</summary>
public sealed class JourneyTests(OpenedBrowser browser)
{
    [Fact]
    public async Task From_a_dropped_record_to_report_and_labels()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        var page = await browser.OpenAsync(1280);
        var errors = BrowserErrors.Of(page);

        // The first start asks who works here.
        await page.GotoAsync(open.Entry.AbsoluteUri);
        await SoundPage.RequireBothWaysAsync(page, "who");
        await page.GetByLabel("Your name").FillAsync("Ada Fenn");
        await page.GetByLabel("Firm on the letterhead").FillAsync("Alder & Ash Examiners");
        await page.GetByLabel("Telephone for questions").FillAsync("0000 555 0142");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep" }).ClickAsync();
        await SoundPage.RequireBothWaysAsync(page, "desk-empty");

        await DropAsync(page, Visit());
        await Assertions.Expect(page.Locator(".next")).ToContainTextAsync("Next:");
        await Assertions.Expect(page.Locator("tbody tr").First).ToContainTextAsync("RB-1");
        await SoundPage.RequireBothWaysAsync(page, "visit");

        await page.GetByRole(AriaRole.Button, new() { Name = "Issue the documents" }).ClickAsync();
        await Assertions.Expect(page.Locator(".next")).ToContainTextAsync("Done.", new() { Timeout = 120_000 });
        await SoundPage.RequireBothWaysAsync(page, "issued");
        var documents = await page.Locator(".documents li").AllInnerTextsAsync();
        Assert.Contains(documents, d => d.Contains(" report ", StringComparison.Ordinal) && d.Contains("RB-2", StringComparison.Ordinal));
        Assert.Contains(documents, d =>
            d.Contains("quarantine-label", StringComparison.Ordinal) && d.Contains("RB-1", StringComparison.Ordinal)
        );

        var visit = page.Url;
        var label = await page.Context.APIRequest.GetAsync($"{visit}/document/Q-2026-000001.pdf");
        Assert.Equal("%PDF", Encoding.ASCII.GetString((await label.BodyAsync())[..4]));

        await page.GetByLabel("Printed on").SelectOptionAsync("tag-100x150");
        var labels = page.WaitForResponseAsync("**/sheet/*.pdf");
        await page.GetByRole(AriaRole.Button, new() { Name = "Make the sheet" }).ClickAsync();
        Assert.Equal(200, (await labels).Status);

        var report = await page.Context.APIRequest.GetAsync($"{visit}/document/R-2026-000001.pdf");
        await page.GotoAsync(open.Address + "/verify");
        await page.GetByLabel("Drop files here")
            .SetInputFilesAsync(
                new FilePayload
                {
                    Name = "report.pdf",
                    MimeType = "application/pdf",
                    Buffer = await report.BodyAsync(),
                }
            );
        await page.GetByRole(AriaRole.Button, new() { Name = "Verify" }).ClickAsync();
        await Assertions.Expect(page.Locator(".standing")).ToContainTextAsync("Valid R-2026-000001", new() { Timeout = 60_000 });
        await SoundPage.RequireBothWaysAsync(page, "verify");

        await page.GotoAsync(open.Address + "/find?q=rb 1");
        await Assertions.Expect(page.Locator(".standing").First).ToContainTextAsync("DO NOT USE");
        await SoundPage.RequireBothWaysAsync(page, "find");

        await page.GotoAsync(open.Address + "/returns");
        foreach (var marking in new[] { "RB-2", "Q 100", "XX-9" })
        {
            await page.GetByLabel("Scan or type a marking").FillAsync(marking);
            await page.GetByRole(AriaRole.Button, new() { Name = "Add" }).ClickAsync();
        }
        await Assertions.Expect(page.Locator(".just")).ToContainTextAsync("UNKNOWN");
        Assert.Equal(3, await page.Locator(".returned > li").CountAsync());
        await Assertions.Expect(page.Locator(".returned > li").First).ToContainTextAsync("DO NOT USE");
        await Assertions.Expect(page.Locator(".returned > li").Last).ToContainTextAsync("In service");
        await SoundPage.RequireBothWaysAsync(page, "returns");
        Assert.Empty(errors);
    }

    [Fact]
    public async Task A_mended_file_is_a_new_round_and_the_page_says_what_is_left()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        var page = await browser.OpenAsync(1280);
        await page.GotoAsync(open.Entry.AbsoluteUri);
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep" }).ClickAsync();
        await DropAsync(page, Sound().Replace("\"clear\"", "\"clera\"", StringComparison.Ordinal));
        await Assertions.Expect(page.Locator(".findings li.error").First).ToContainTextAsync("clear");
        await SoundPage.RequireAsync(page, "mend");
        await page.GetByLabel("Drop the mended file")
            .SetInputFilesAsync(
                new FilePayload
                {
                    Name = "visit.json",
                    MimeType = "application/json",
                    Buffer = Encoding.UTF8.GetBytes(Sound()),
                }
            );
        await page.Locator("section[aria-labelledby=mend]").GetByRole(AriaRole.Button, new() { Name = "Bring in" }).ClickAsync();
        await Assertions.Expect(page.Locator(".next")).ToContainTextAsync("look at the outcomes");
    }

    [Fact]
    public async Task Html_in_a_record_is_shown_as_it_was_typed()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        var page = await browser.OpenAsync(1280);
        var errors = BrowserErrors.Of(page);
        await page.GotoAsync(open.Entry.AbsoluteUri);
        const string Planted = "<img src=x onerror=document.title='planted'>";
        await page.GetByLabel("Your name").FillAsync(Planted);
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep" }).ClickAsync();
        await DropAsync(page, Visit().Replace("RB-1", Planted, StringComparison.Ordinal));
        await Assertions.Expect(page.Locator("tbody")).ToContainTextAsync("<img src=x");
        Assert.NotEqual("planted", await page.TitleAsync());
        Assert.Equal(0, await page.Locator("img").CountAsync());
        await page.GotoAsync(open.Address + "/who");
        Assert.Equal(Planted, await page.GetByLabel("Your name").InputValueAsync());
        Assert.Empty(errors);

        // What gets into a page in spite of that loads nothing, runs nothing and sends nothing.
        var failed = new List<string>();
        page.Context.RequestFailed += (_, request) => failed.Add($"{request.Url} {request.Failure}");
        var refused = await page.EvaluateAsync<string[]>(
            """
            () => new Promise(done => {
              const refused = new Set();
              document.addEventListener("securitypolicyviolation", e => refused.add(e.effectiveDirective));
              const add = (tag, members) => document.body.appendChild(Object.assign(document.createElement(tag), members));
              add("script", { textContent: "document.title = 'planted'" });
              add("script", { src: "http://kit.example/x.js" });
              add("style", { textContent: "body { display: none }" });
              add("object", { data: "http://kit.example/x.svg", type: "image/svg+xml" });
              add("iframe", { src: "http://kit.example/" });
              add("img", { src: "http://kit.example/x.png" });
              add("base", { href: "http://kit.example/" });
              add("form", { action: "http://kit.example/", method: "post" }).submit();
              add("p", {}).setAttribute("onclick", "document.title = 'planted'");
              document.body.lastChild.setAttribute("style", "color: red");
              document.body.lastChild.click();
              fetch("http://kit.example/").catch(() => {});
              setTimeout(() => done([...refused].sort()), 300);
            })
            """
        );
        string[] every =
        [
            "base-uri",
            "connect-src",
            "form-action",
            "frame-src",
            "img-src",
            "object-src",
            "script-src-attr",
            "script-src-elem",
            "style-src-attr",
            "style-src-elem",
        ];
        Assert.Equal(every, refused, StringComparer.Ordinal);
        Assert.All(failed, f => Assert.EndsWith(" csp", f, StringComparison.Ordinal));
        Assert.NotEqual("planted", await page.TitleAsync());
    }

    /// <summary>Two bridges: one cut, one sound.</summary>
    private static string Visit() =>
        new StoryVisit("V-1", "2026-05-11", "Alder Vale Ltd").Bridge("RB-1", "Q100", i => i.Cut()).Bridge("RB-2", "Q200").Json;

    private static string Sound() => new StoryVisit("V-1", "2026-05-11", "Alder Vale Ltd").Bridge("RB-2", "Q200").Json;

    private static async Task DropAsync(IPage page, string json)
    {
        await page.GetByLabel("Drop files here, or choose them")
            .SetInputFilesAsync(
                new FilePayload
                {
                    Name = "visit.json",
                    MimeType = "application/json",
                    Buffer = Encoding.UTF8.GetBytes(json),
                }
            );
        await page.GetByRole(AriaRole.Button, new() { Name = "Bring in" }).First.ClickAsync();
        await page.ArriveAsync("**/visit/*");
    }
}

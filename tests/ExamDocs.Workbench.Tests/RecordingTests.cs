using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Commands;
using Microsoft.Playwright;
using NodaTime;

namespace ExamDocs.Workbench.Tests;

/// <summary>A next visit recorded wholly on screen: in few actions, with nothing answered that nobody answered.</summary>
public sealed class RecordingTests(OpenedBrowser browser)
{
    private const int Criteria = 17;

    [Fact]
    public async Task By_keys_a_connector_takes_20_actions_and_a_bridge_with_five_stations_36()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        LastVisit.Remember(open);
        var page = await browser.OpenAsync(1280);
        var errors = BrowserErrors.Of(page);
        await LastVisit.StartNextAsync(open, page, name => SoundPage.RequireAsync(page, name));
        await SoundPage.RequireAsync(page, "record");
        // Nothing is answered before somebody answers.
        var started = CheckRecord.Of(LastVisit.Draft(open), OpenedWorkbench.Today).Visit!;
        Assert.All(started.Recorded.Examinations, e => Assert.Equal(new LocalDate(2025, 11, 12), e.ExaminedOn));
        Assert.Equal(2, await page.Locator(".items .state", new() { HasText = "to do" }).CountAsync());

        var connector = new CountedActions(page);
        await connector.TapAsync($".items a:text-is('{LastVisit.Connector}')");
        await page.ArriveAsync("**/item/*");
        Assert.Equal(0, await page.Locator("input[type=radio]:checked").CountAsync());
        await RequireEveryAnswerAsync(page, "connector");
        await Assertions.Expect(page.Locator("#criterion-cracks .last-time")).ToContainTextAsync("12 Nov 2025: clear");
        for (var n = 0; n < Criteria; n++)
            await connector.KeyAsync("1");
        // One key too many concludes nothing.
        await page.Keyboard.PressAsync("1");
        Assert.Equal(0, await page.Locator("#conclusion input:checked").CountAsync());
        await connector.KeyAsync("f");
        await Assertions.Expect(page.Locator("#progress")).ToHaveTextAsync("17 of 17 answered");
        await SoundPage.RequireAsync(page, "item-connector");
        await connector.KeyAsync("Enter");
        await page.ArriveAsync("**/item/*");
        await Assertions.Expect(page.Locator("h1")).ToContainTextAsync(LastVisit.Bridge);
        await page.WaitForLoadStateAsync();
        Assert.InRange(connector.Count, 1, 20);

        var bridge = new CountedActions(page);
        for (var n = 0; n < Criteria; n++)
            await bridge.KeyAsync("1");
        foreach (var readings in LastVisit.Readings)
        {
            await bridge.TypeAsync(readings);
            await bridge.KeyAsync("Enter");
        }
        await Assertions.Expect(page.Locator("#plot svg circle")).ToHaveCountAsync(LastVisit.Readings.Length);
        await bridge.KeyAsync("f");
        await SoundPage.RequireAsync(page, "item-bridge");
        await bridge.KeyAsync("Enter");
        await page.ArriveAsync("**/record");
        Assert.InRange(bridge.Count, 1, 36);
        await Assertions.Expect(page.Locator(".next")).ToContainTextAsync("look at the outcomes");
        AssertSameAsTyped(open);

        // What is saved is issued, and what is typed afterwards is told.
        await page.GetByRole(AriaRole.Link, new() { Name = "Outcomes and issue" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Issue the documents" }).ClickAsync();
        await Assertions.Expect(page.Locator(".next")).ToContainTextAsync("Done.", new() { Timeout = 120_000 });
        await Assertions.Expect(page.Locator(".documents")).ToContainTextAsync(LastVisit.Connector);
        var visit = page.Url;
        await page.GotoAsync($"{visit}/item/0");
        await page.Locator("#conclusion .answer.withdraw").ClickAsync();
        await Assertions.Expect(page.Locator("#saving")).ToHaveTextAsync("saved");
        await page.GotoAsync(visit);
        await Assertions.Expect(page.Locator("section[aria-labelledby=documents]")).ToContainTextAsync("mended since: issue again");
        await Assertions.Expect(page.Locator("tbody tr.withdraw")).ToHaveCountAsync(1);
        Assert.Empty(errors);
    }

    [Fact]
    public async Task By_taps_on_a_telephone_it_takes_no_more()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        LastVisit.Remember(open);
        var page = await browser.OpenAsync(390, isDark: true);
        var errors = BrowserErrors.Of(page);
        await LastVisit.StartNextAsync(open, page, name => SoundPage.RequireAsync(page, name));
        await SoundPage.RequireAsync(page, "record");
        foreach (var (item, most) in new[] { (LastVisit.Connector, 20), (LastVisit.Bridge, 36) })
        {
            var taps = new CountedActions(page);
            if (!page.Url.Contains("/item/", StringComparison.Ordinal))
                await taps.TapAsync($".items a:text-is('{item}')");
            await Assertions.Expect(page.Locator("h1")).ToContainTextAsync(item);
            for (var n = 1; n <= Criteria; n++)
                await taps.TapAsync($".criterion:nth-of-type({n}) .answer.clear");
            for (var n = 0; item == LastVisit.Bridge && n < LastVisit.Readings.Length; n++)
            {
                await taps.TapAsync($".station:nth-of-type({n + 1}) input");
                await taps.TypeAsync(LastVisit.Readings[n]);
            }
            await taps.TapAsync("#conclusion .answer.fit");
            await SoundPage.RequireAsync(page, $"item-{item}");
            await taps.TapAsync(".go button[value=next]");
            await page.ArriveAsync(item == LastVisit.Connector ? "**/item/*" : "**/record");
            Assert.InRange(taps.Count, 1, most);
        }
        Assert.Empty(errors);
        AssertSameAsTyped(open);
    }

    [Fact]
    public async Task A_defect_opens_its_particulars_and_one_key_gives_one_answer()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        LastVisit.Remember(open);
        var page = await browser.OpenAsync(1280);
        await LastVisit.StartNextAsync(open, page);
        await page.Locator($".items a:text-is('{LastVisit.Connector}')").ClickAsync();
        await page.ArriveAsync("**/item/*");
        // A key that is held down answers once.
        await page.Keyboard.DownAsync("1");
        await page.Keyboard.DownAsync("1");
        await page.Keyboard.DownAsync("1");
        await page.Keyboard.UpAsync("1");
        Assert.Equal(1, await page.Locator("input[type=radio]:checked").CountAsync());
        await page.Keyboard.PressAsync("4");
        var cracks = page.Locator("#criterion-cracks");
        await SoundPage.RequireFocusAsync(cracks.GetByLabel("Note"));
        await page.Keyboard.TypeAsync("12 mm long, at the hinge");
        await page.Keyboard.PressAsync("Enter");
        await SoundPage.RequireFocusAsync(cracks.GetByLabel("Part", new() { Exact = true }));
        await page.Keyboard.TypeAsync("body");
        await cracks.GetByLabel("Could become a danger on").EvaluateAsync("e => { e.type = 'text'; }");
        await cracks.GetByLabel("Could become a danger on").FillAsync("in spring");
        await cracks.GetByLabel("Danger", new() { Exact = true }).SelectOptionAsync("later");
        // Shown again as it was typed, with what is wrong with it.
        await Assertions.Expect(cracks.Locator(".found-at .error", new() { HasText = "in spring" })).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("#saving")).ToHaveTextAsync("saved");
        await SoundPage.RequireAsync(page, "item-defect");
        // Half a day keeps the page from being sent, and is in sight although its section was closed.
        var next = page.Locator("#examination-nextBy");
        var section = page.Locator("details", new() { Has = next });
        await section.Locator("summary").ClickAsync();
        await next.PressSequentiallyAsync("05");
        await section.Locator("summary").ClickAsync();
        await page.Locator(".go button[value=next]").ClickAsync();
        await SoundPage.RequireFocusAsync(next);
        await Assertions.Expect(next).ToBeVisibleAsync();
        await page.ReloadAsync();
        Assert.Equal("in spring", await page.Locator("#criterion-cracks").GetByLabel("Could become a danger on").InputValueAsync());
        var now = CheckRecord
            .Of(LastVisit.Draft(open), OpenedWorkbench.Today)
            .Visit!.Record.Examinations.Single(e => e.ExaminedOn == OpenedWorkbench.Today || e.ExaminedOn is null);
        Assert.Equal(["identity", "cracks"], now.Observations.Select(o => o.Criterion), StringComparer.Ordinal);
        Assert.Equal(("12 mm long, at the hinge", ObservedState.Defect), (now.Observations[1].Note, now.Observations[1].State));
        Assert.Equal(("body", Danger.Later), (now.Defects[0].Part, now.Defects[0].Danger));
        Assert.Null(now.Conclusion);
    }

    [Fact]
    public async Task Of_two_tabs_the_later_is_told_and_overwrites_nothing()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        LastVisit.Remember(open);
        var one = await browser.OpenAsync(1280);
        await LastVisit.StartNextAsync(open, one);
        await one.Locator($".items a:text-is('{LastVisit.Connector}')").ClickAsync();
        await one.ArriveAsync("**/item/*");
        var other = await one.Context.NewPageAsync();
        await other.GotoAsync(one.Url);
        await one.Locator("#criterion-cracks .answer.defect").ClickAsync();
        await Assertions.Expect(one.Locator("#saving")).ToHaveTextAsync("saved");
        await other.Locator("#criterion-heat .answer.clear").ClickAsync();
        await Assertions.Expect(other.Locator("#saving")).ToHaveTextAsync("saved");
        await other.Locator("#criterion-cracks .answer.clear").ClickAsync();
        await Assertions.Expect(other.Locator("#not-saved")).ToContainTextAsync("another page saved \"defect\"");
        // The button that sends the whole page overwrites it no more than the script does.
        await other.Locator(".go button[value=next]").ClickAsync();
        await Assertions.Expect(other.Locator("#not-saved")).ToContainTextAsync("Yours, \"clear\", was not saved");
        await other.GetByRole(AriaRole.Link, new() { Name = "Load this page again" }).ClickAsync();
        await Assertions.Expect(other.Locator("#criterion-cracks .answer.defect input")).ToBeCheckedAsync();
        await Assertions.Expect(other.Locator("#criterion-heat .answer.clear input")).ToBeCheckedAsync();
    }

    [Fact]
    public async Task A_save_that_is_under_way_is_not_taken_for_another_page()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        LastVisit.Remember(open);
        var page = await browser.OpenAsync(1280);
        await LastVisit.StartNextAsync(open, page);
        await page.Locator($".items a:text-is('{LastVisit.Connector}')").ClickAsync();
        await page.ArriveAsync("**/item/*");
        // Saved at once, and told late.
        await page.RouteAsync("**/item/*", async route =>
        {
            if (route.Request is not { Method: "POST", ResourceType: "fetch" })
            {
                await route.ContinueAsync();
                return;
            }
            var answer = await route.FetchAsync();
            await Task.Delay(800);
            await route.FulfillAsync(new() { Response = answer });
        });
        await page.Locator("#criterion-identity .answer.noted").ClickAsync();
        var note = page.Locator("#note-identity");
        var partly = page.WaitForRequestAsync(r => r.Method is "POST" && (r.PostData ?? "").Contains("worn", StringComparison.Ordinal));
        await note.PressSequentiallyAsync("worn");
        await partly;
        await note.PressSequentiallyAsync(" edge");
        await page.Locator(".go button[value=next]").ClickAsync();
        await Assertions.Expect(page.Locator("h1")).ToContainTextAsync(LastVisit.Bridge);
        Assert.Contains("\"worn edge\"", await File.ReadAllTextAsync(LastVisit.Draft(open), TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task What_is_answered_while_the_next_page_is_on_its_way_is_saved()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        LastVisit.Remember(open);
        var page = await browser.OpenAsync(1280);
        await LastVisit.StartNextAsync(open, page);
        await page.Locator($".items a:text-is('{LastVisit.Connector}')").ClickAsync();
        await page.ArriveAsync("**/item/*");
        await page.RouteAsync("**/item/*", async route =>
        {
            if (route.Request is { Method: "POST", ResourceType: "document" })
                await Task.Delay(1000);
            await route.ContinueAsync();
        });
        await page.EvaluateAsync(
            """
            () => {
              document.querySelector(".go button[value=next]").click();
              document.querySelector("#criterion-cracks .answer.defect input").click();
              const note = document.querySelector("#note-cracks");
              note.value = "at the hinge";
              setTimeout(() => note.dispatchEvent(new Event("input", { bubbles: true })), 900);
            }
            """
        );
        await Assertions.Expect(page.Locator("h1")).ToContainTextAsync(LastVisit.Bridge);
        await page.GotoAsync(page.Url[..page.Url.LastIndexOf('/')] + "/0");
        await Assertions.Expect(page.Locator("#criterion-cracks .answer.defect input")).ToBeCheckedAsync();
        Assert.Equal("at the hinge", await page.Locator("#note-cracks").InputValueAsync());

        await page.UnrouteAllAsync();
        // Another answer takes away neither: they are still in the record, so they are still to be seen.
        await page.Locator("#defect-cracks-part").FillAsync("gate");
        await page.Locator("#criterion-cracks .answer.clear").ClickAsync();
        await Assertions.Expect(page.Locator("#saving")).ToHaveTextAsync("saved");
        await Assertions.Expect(page.Locator("#defect-cracks-part")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("#note-cracks")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("#found-elsewhere")).ToContainTextAsync("has a defect, but its answer is clear");
    }

    [Fact]
    public async Task What_nobody_touched_is_saved_as_it_was()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        var page = await browser.OpenAsync(1280);
        await LastVisit.EnterAsync(open, page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Start without items" }).ClickAsync();
        await page.ArriveAsync("**/particulars");
        const string Typed = """
            {"format":"examdocs/1","visit":{"reference":"V\n2","employer":{"address":"\n1 Some Lane\nNorshire\n"}},
            "items":[{"id":"C-1","category":"connector","description":"Karabiner,\nsteel","manufactured":"-0044-03-15","standards":["EN 1, 2","EN 3;4"]}],
            "examinations":[{"item":"C-1","observations":[{"criterion":"cracks","state":"noted","note":"one\rtwo"}],
            "defects":[{"criterion":"cracks","becomesDangerOn":"0000-01-01","remedy":" with\r\nblanks "}],
            "tests":[{},{"description":"hung\nin it"}]}],
            "renewals":[{"item":"C-1","reason":"worn\r\nthrough","doneOn":"-0044-03-15","doneBy":"nobody"},{"item":"other"},{"item":"C-1"}],
            "releases":[{"item":"C-1","grounds":"\nlooked again\n","because":"as it were"}]}
            """;
        await File.WriteAllTextAsync(LastVisit.Draft(open), Typed, TestContext.Current.CancellationToken);
        foreach (var path in new[] { "/particulars", "/item/0" })
        {
            await page.GotoAsync(open.Address + VisitOf(page.Url) + path);
            await page.Locator(".go button[value=next]").ClickAsync();
            await page.ArriveAsync("**/record");
        }
        Assert.Equal(Typed, await File.ReadAllTextAsync(LastVisit.Draft(open), TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task Html_in_every_field_stays_text_and_without_a_script_the_buttons_save()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        var page = await browser.OpenAsync(1280, hasScript: false);
        await LastVisit.EnterAsync(open, page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Start without items" }).ClickAsync();
        await FillAllAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Save and show all items" }).ClickAsync();
        await page.ArriveAsync("**/record");
        await FillAllAsync(page);
        await page.GetByLabel("Category").SelectOptionAsync("rope-bridge");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add and record it" }).ClickAsync();
        await page.ArriveAsync("**/item/0*");
        await page.Locator("#criterion-cover-cut .answer.defect").ClickAsync();
        await FillAllAsync(page);
        await page.Locator("#place").FillAsync("50 <i>75</i>");
        await page.Locator(".go button[value=stay]").ClickAsync();
        await Assertions.Expect(page.Locator("#criterion-cover-cut .answer.defect input")).ToBeCheckedAsync();
        Assert.Equal(Planted, await page.Locator("#criterion-cover-cut").GetByLabel("Note").InputValueAsync());
        Assert.Equal(Planted, await page.Locator("#item-maker").InputValueAsync());
        Assert.Equal(1, await page.Locator("[name='readings/50']").CountAsync());
        Assert.Equal(0, await page.Locator("img, i").CountAsync());
        foreach (var path in new[] { "/record", "/particulars", "" })
        {
            await page.GotoAsync(page.Url[..page.Url.IndexOf("/visit/", StringComparison.Ordinal)] + VisitOf(page.Url) + path);
            Assert.Equal(0, await page.Locator("img").CountAsync());
        }
    }

    [Fact]
    public async Task A_file_cannot_take_the_place_of_what_was_answered_on_screen()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        using var client = await open.EnterAsync();
        var token = await GuardTests.TokenAsync(client);
        using var start = new HttpRequestMessage(HttpMethod.Post, "/start");
        start.Content = new FormUrlEncodedContent([new("from", "nothing"), new("__RequestVerificationToken", token)]);
        start.Headers.Add("Sec-Fetch-Site", "same-origin");
        using var started = await client.SendAsync(start, TestContext.Current.CancellationToken);
        var visit = VisitOf(open.Address + started.Headers.Location);
        var page = await client.GetStringAsync(visit, TestContext.Current.CancellationToken);
        Assert.DoesNotContain("type=\"file\"", page, StringComparison.Ordinal);
        using var refused = await GuardTests.PostAsync(client, "same-origin", null, token, path: visit + "/mended");
        Assert.Contains("recorded on screen", await refused.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        Assert.EndsWith("round-1", Path.GetDirectoryName(LastVisit.Draft(open)), StringComparison.Ordinal);
        Assert.DoesNotContain(open.Files, f => f.Contains("round-2", StringComparison.Ordinal));
    }

    private const string Planted = "<img src=x onerror=document.title='planted'>";

    private static string VisitOf(string url) => string.Join('/', new Uri(url).AbsolutePath.Split('/')[..3]);

    private static async Task FillAllAsync(IPage page)
    {
        foreach (
            var field in await page.Locator("main input:not([type=radio], [type=hidden], [type=date], [type=file]), main textarea")
                .AllAsync()
        )
        {
            if (await field.IsVisibleAsync() && await field.GetAttributeAsync("name") is not "place")
                await field.FillAsync(Planted);
        }
    }

    /// <summary>Every answer that the catalogue allows can be seen, and no other: with one hidden, the rest would be chosen.</summary>
    private static async Task RequireEveryAnswerAsync(IPage page, string category)
    {
        foreach (var criterion in Catalogue.Find(category)!.Criteria)
        {
            var expected = Enum.GetValues<ObservedState>().Where(criterion.Allows).Select(s => Words.States.WordFor(s));
            var visible = page.Locator($"#criterion-{criterion.Id} .answer:visible input");
            var offered = await visible.EvaluateAllAsync<string[]>("all => all.map(e => e.value)");
            Assert.Equal(expected.Order(StringComparer.Ordinal), offered.Order(StringComparer.Ordinal));
        }
    }

    /// <summary>What was recorded on screen is decided as the same visit is that somebody typed as JSON.</summary>
    private static void AssertSameAsTyped(OpenedWorkbench open)
    {
        var typed = Path.Combine(Path.GetDirectoryName(open.Register)!, "typed.json");
        File.WriteAllText(typed, LastVisit.Of("V-2", "2026-05-12", "2025-11-12"));
        var onScreen = SameOutcomes.Of(LastVisit.Draft(open), open.Register);
        Assert.Equal(SameOutcomes.Of(typed, open.Register), onScreen);
        Assert.Contains(onScreen, line => line.StartsWith($"{LastVisit.Connector} Fit ", StringComparison.Ordinal));
    }
}

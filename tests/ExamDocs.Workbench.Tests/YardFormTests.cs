using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using ExamDocs.Intake.Yard.Wording;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using Microsoft.Playwright;

namespace ExamDocs.Workbench.Tests;

/// <summary>The form for the yard, as it is filled in on a phone without a network.</summary>
public sealed partial class YardFormTests(OpenedBrowser browser)
{
    [Fact]
    public async Task Filled_offline_killed_and_reopened_it_gives_the_outcomes_recorded()
    {
        await using var form = await OpenedForm.OpenAsync(browser, LastTime().Bridge("RB-1", "Q100").Connector("CN-1", "K200").Json);
        await form.FillVisitAsync("2026-05-11");
        await SoundPage.RequireAsync(form.Page, "yard-visit");
        await form.GoAsync("#item/known-0");
        Assert.Equal(0, await form.Page.Locator("input:checked").CountAsync());
        await form.Criterion("cover-cut").Locator("input[value=defect]").CheckAsync();
        await form.Criterion("cover-cut").GetByLabel("Note").FillAsync("cut to the core, 3 mm");
        await form.Page.GetByLabel("What is wrong").FillAsync("A cut beside the ring");
        await form.Page.GetByLabel("It is a danger now").CheckAsync();
        await SoundPage.RequireAsync(form.Page, "yard-item");
        await form.GoAsync("#save");
        await Assertions.Expect(form.Page.Locator(".missing")).ToContainTextAsync("not recorded of the defect: Part; Repair");
        await form.GoAsync("#item/known-0");
        await form.Page.GetByLabel("Part", new() { Exact = true }).FillAsync("the rope beside the ring");
        await form.Page.GetByLabel("Repair, renewal").FillAsync("destroy");
        await SmallestTargetAsync(form.Page);

        await form.KillAndReopenAsync();
        await Assertions.Expect(form.Page.Locator("#banner")).ToContainTextAsync("Only on this phone");
        Assert.Equal("2026-05-11", await form.Page.GetByLabel("Day examined").InputValueAsync());
        await form.GoAsync("#item/known-0");
        Assert.Equal("cut to the core, 3 mm", await form.Criterion("cover-cut").GetByLabel("Note").InputValueAsync());
        await form.TapAsync("clear");
        await form.ConcludeAsync("withdraw");
        await form.GoAsync("#item/known-1");
        await form.AnswerAsync("clear");
        await form.ConcludeAsync("fit");
        await SoundPage.RequireAsync(form.Page, "yard-connector");

        var file = await form.SaveAsync();
        await Assertions.Expect(form.Page.Locator("#banner")).ToContainTextAsync(Path.GetFileName(file));
        await SoundPage.RequireAsync(form.Page, "yard-save");
        var input = OpenedForm.Check(file);
        Assert.Empty(input.Findings.Where(f => f.Severity is Core.Findings.Severity.Error));
        Assert.Equal("withdraw", OpenedForm.Outcome(input, "RB-1"));
        Assert.Equal("fit", OpenedForm.Outcome(input, "CN-1"));
        Assert.All(form.Asked, address => Assert.Equal(form.Address, address.Split('#')[0], StringComparer.Ordinal));
        Assert.Empty(form.Errors);
    }

    [Fact]
    public async Task A_rope_bridge_is_measured_at_five_stations()
    {
        var last = JsonNode.Parse(LastTime().Bridge("RB-1", "Q100").Json)!;
        last["limits"]![0]!["nominalDiameterMm"] = 11.0;
        last["limits"]![0]!["diameterTolerancePercent"] = 5;
        last["examinations"]![0]!["diameters"] = new JsonArray([
            .. Enumerable.Range(1, 4).Select(n => new JsonObject { ["positionMm"] = n * 50, ["readingsMm"] = new JsonArray(11.1, 11.0) }),
        ]);
        await using var form = await OpenedForm.OpenAsync(browser, last.ToJsonString(), isDark: true);
        await form.FillVisitAsync("2026-05-11");
        await form.GoAsync("#item/known-0");
        await form.AnswerAsync("clear");
        await Assertions.Expect(form.Page.Locator(".station .last").First).ToContainTextAsync("11.05");
        await form.Page.GetByRole(AriaRole.Button, new() { Name = "Add a station" }).ClickAsync();
        await SoundPage.RequireFocusAsync(form.Page.Locator(".station input").Nth(12));
        await form.Page.Keyboard.TypeAsync("250");
        foreach (var station in await form.Page.Locator(".station").AllAsync())
        {
            await station.GetByLabel("Reading 1").FillAsync("11,1");
            await station.GetByLabel("Reading 2").FillAsync("11.0");
        }
        await form.ConcludeAsync("fit");
        await SoundPage.RequireAsync(form.Page, "yard-bridge-dark");
        var file = await form.SaveAsync();
        var examination = JsonNode.Parse(await File.ReadAllTextAsync(file, Ct))!["examinations"]![1]!;
        Assert.Equal([50m, 100m, 150m, 200m, 250m], examination["diameters"]!.AsArray().Select(d => (decimal)d!["positionMm"]!));
        Assert.All(examination["diameters"]!.AsArray(), d => Assert.Equal("[11.1,11]", d!["readingsMm"]!.ToJsonString()));
        Assert.Equal("fit", OpenedForm.Outcome(OpenedForm.Check(file), "RB-1"));

        // One thin station: the mean lies outside the maker's tolerance.
        await form.GoAsync("#item/known-0");
        await form.Page.Locator(".station").Nth(2).GetByLabel("Reading 1").FillAsync("9.1");
        await form.Page.Locator(".station").Nth(2).GetByLabel("Reading 2").FillAsync("9.0");
        Assert.Equal("withdraw", OpenedForm.Outcome(OpenedForm.Check(await form.SaveAsync()), "RB-1"));

        // Turning to another page while it is saved keeps the focus there.
        var saved = form.Page.WaitForDownloadAsync();
        await form
            .Page.GetByRole(AriaRole.Button, new() { Name = YardPhrases.In(form.Language).SaveFile })
            .EvaluateAsync("button => { button.click(); location.hash = '#item/known-0' }");
        await saved;
        await form.Page.WaitForTimeoutAsync(500);
        await SoundPage.RequireFocusAsync(form.Page.Locator("h1"));

        // What is no number is not dropped: the program refuses it at its place.
        await form.GoAsync("#item/known-0");
        await form.Page.Locator(".station").Nth(2).GetByLabel("Reading 1").FillAsync("11,o");
        await Assertions.Expect(form.Page.Locator(".fault:not(:empty)").First).ToContainTextAsync("not a number");
        // Nor is one that two countries read in two ways.
        await form.Page.Locator(".station").Nth(3).GetByLabel("Reading 1").FillAsync("11,100");
        await Assertions.Expect(form.Page.Locator(".fault:not(:empty)")).ToHaveCountAsync(2);
        await form.Page.Locator(".station").Nth(4).GetByLabel("Reading 1").FillAsync("0,125");
        await Assertions.Expect(form.Page.Locator(".fault:not(:empty)")).ToHaveCountAsync(2);
        var latest = await form.SaveAsync();
        var odd = OpenedForm.Check(latest);
        Assert.NotEqual("fit", OpenedForm.Outcome(odd, "RB-1"));
        foreach (var station in new[] { 2, 3 })
            Assert.Contains(odd.Findings, f => f.Path.EndsWith($"/diameters/{station}/readingsMm/0", StringComparison.Ordinal));
        // By their names the files stand in the order in which they were saved.
        Assert.Equal([file, latest], new[] { latest, file }.Order(StringComparer.Ordinal));
        Assert.Matches(@"-\d{6}\.json\z", file);
    }

    [Fact]
    public async Task What_was_withdrawn_last_time_says_so_before_anything_is_asked()
    {
        await using var form = await OpenedForm.OpenAsync(
            browser,
            LastTime().Bridge("RB-1", "Q100", i => i.SawContact()).Bridge("RB-2", "Q200").Json
        );
        await form.GoAsync("#items");
        await Assertions.Expect(form.Page.Locator(".was-withdrawn")).ToHaveCountAsync(1);
        await SoundPage.RequireAsync(form.Page, "yard-withdrawn");
        await form.GoAsync("#item/known-0");
        await Assertions.Expect(form.Page.Locator(".warning")).ToContainTextAsync("WITHDREW");
        await Assertions.Expect(form.Criterion("saw-contact").Locator(".last")).ToContainTextAsync("Defect: seen");
        // All clear this time does not bring it back: nobody has released it.
        await form.FillVisitAsync("2026-05-08");
        await form.GoAsync("#item/known-0");
        await form.AnswerAsync("clear");
        await form.ConcludeAsync("fit");
        Assert.Equal("withdraw", OpenedForm.Outcome(OpenedForm.Check(await form.SaveAsync()), "RB-1"));
    }

    [Fact]
    public async Task A_script_planted_in_an_id_is_shown_and_does_not_run()
    {
        const string Planted = "</script><script>document.title='planted'</script><!--<script>";
        await using var form = await OpenedForm.OpenAsync(browser, LastTime().Bridge(Planted, "Q100").Json);
        await form.GoAsync("#items");
        await Assertions.Expect(form.Page.Locator(".items b")).ToHaveTextAsync(Planted);
        Assert.Equal("Record a visit", await form.Page.TitleAsync());
        // A script that gets into the page by any other way does not run either.
        await form.Page.EvaluateAsync(
            "() => { const s = document.createElement('script'); s.textContent = \"document.title = 'planted'\"; document.body.append(s); }"
        );
        Assert.Equal("Record a visit", await form.Page.TitleAsync());
        Assert.Contains(form.Errors, e => e.Contains("Content Security Policy", StringComparison.Ordinal));
    }

    [Fact]
    public async Task An_empty_form_from_an_https_address_takes_a_person_and_an_item()
    {
        await using var form = await OpenedForm.OpenAsync(browser, null);
        var page = form.Page;
        await using var site = await SecureAddress.OfAsync(form.Html);
        await page.Context.SetOfflineAsync(false);
        await page.GotoAsync(site.Of);
        Assert.StartsWith("https://127.0.0.1:", page.Url, StringComparison.Ordinal);
        await page.Context.SetOfflineAsync(true);
        await page.GetByLabel("Regime").SelectOptionAsync("gb-loler");
        foreach (var field in new[] { "Employer: name", "Employer: address", "Premises: name", "Premises: address" })
            await page.GetByLabel(field, new() { Exact = true }).FillAsync("Alder Vale");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add a person" }).ClickAsync();
        await page.GetByLabel("Name", new() { Exact = true }).FillAsync("Ada Fenn");
        await page.GetByLabel("Address", new() { Exact = true }).FillAsync("2 Some Lane");
        await page.GetByLabel("Qualifications").FillAsync("Guild examiner");
        await page.Locator(".person input[value=yes]").CheckAsync();
        await form.FillVisitAsync("2026-05-11");
        await form.GoAsync("#items");
        await SoundPage.RequireAsync(page, "yard-items");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add an item" }).ClickAsync();
        await page.GetByLabel("Id", new() { Exact = true }).FillAsync("CN-9");
        await page.GetByLabel("Category").SelectOptionAsync("connector");
        await AddConnectorAsync(page);
        await SoundPage.RequireAsync(page, "yard-new-item");
        await form.AnswerAsync("clear");
        await form.ConcludeAsync("fit");
        // Answers are to the criteria of a category: it cannot be changed under them.
        await page.GetByLabel("Category").SelectOptionAsync("pulley");
        await Assertions.Expect(page.GetByLabel("Category")).ToHaveCountAsync(0);
        // One added by mistake and left empty is not in the file.
        await form.GoAsync("#items");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add an item" }).ClickAsync();
        var input = OpenedForm.Check(await form.SaveAsync());
        Assert.Empty(input.Findings.Where(f => f.Severity is Core.Findings.Severity.Error).Select(f => f.Message));
        Assert.Equal("fit", OpenedForm.Outcome(input, Assert.Single(input.Visit!.Items).Item.Id!));
    }

    [Fact]
    public async Task Every_phrase_that_the_page_asks_for_is_there()
    {
        await using var form = await OpenedForm.OpenAsync(browser, null);
        var html = await File.ReadAllTextAsync(form.Html, Ct);
        var data = JsonNode.Parse(Data().Match(html).Groups["json"].Value)!;
        var words = data["words"]!.AsObject().Select(w => w.Key).ToHashSet();
        var asked = Word().Matches(html).Select(m => m.Groups["name"].Value).ToHashSet();
        Assert.True(asked.Count > 100);
        Assert.Empty(asked.Except(words));
        // A phrase that is asked for under a name put together, and is missing, shows as this word.
        foreach (var view in new[] { "#visit", "#items", "#save" })
        {
            await form.GoAsync(view);
            Assert.DoesNotContain("undefined", await form.Page.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
        }
    }

    private static StoryVisit LastTime() => new("V-1", "2025-11-10", "Alder Vale Ltd");

    private static async Task AddConnectorAsync(IPage page)
    {
        await page.GetByLabel("Description").FillAsync("Steel karabiner");
        await page.GetByLabel("Maker", new() { Exact = true }).FillAsync("Fennick Works");
        await page.GetByLabel("Model", new() { Exact = true }).FillAsync("K 25");
        await page.GetByLabel("Serial", new() { Exact = true }).FillAsync("K-77");
        await page.GetByLabel("Manufactured", new() { Exact = true }).FillAsync("2024-02");
        await page.GetByLabel("First used", new() { Exact = true }).FillAsync("2024-05-20");
        await page.GetByLabel("Last thorough examination").FillAsync("2025-11-10");
        await page.GetByLabel("Purpose").SelectOptionAsync("lifts-persons");
        await page.GetByLabel("Safe working load").FillAsync("1");
        await page.GetByLabel("Unit").SelectOptionAsync("persons");
    }

    /// <summary>Everything that is tapped is at least 44 px high, a radio button with the label around it.</summary>
    private static async Task SmallestTargetAsync(IPage page)
    {
        var small = await page.EvaluateAsync<string[]>(
            """
            () => [...document.querySelectorAll("a, button, summary, .choice, select, textarea, input:not([type=radio])")]
              .filter(e => e.checkVisibility() && e.getBoundingClientRect().height < 44)
              .map(e => e.outerHTML)
            """
        );
        Assert.Empty(small);
    }

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [GeneratedRegex("""id="data">(?<json>.*?)</script>""", RegexOptions.Singleline, 1000)]
    private static partial Regex Data();

    [GeneratedRegex(@"\bwords\.(?<name>\w+)", RegexOptions.None, 1000)]
    private static partial Regex Word();
}

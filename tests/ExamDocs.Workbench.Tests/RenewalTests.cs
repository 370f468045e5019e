using System.Text.Json.Nodes;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using Microsoft.Playwright;

namespace ExamDocs.Workbench.Tests;

/// <summary>A harness that was withdrawn because of its bridge gets another, and is certified for reissue, wholly on screen.</summary>
public sealed class RenewalTests(OpenedBrowser browser)
{
    private const string Employer = "Alder Vale Ltd",
        Harness = "H-1",
        Old = "RB-1",
        New = "RB-2";

    private static readonly string[] OfAnItem = ["description", "maker", "model", "serial"];

    [Fact]
    public async Task A_harness_with_a_new_bridge_is_certified_and_the_old_bridge_stays_withdrawn()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        Remember(open);
        var page = await browser.OpenAsync(1280);
        var errors = BrowserErrors.Of(page);
        await LastVisit.EnterAsync(open, page);
        await StartOnceAsync(page);
        await page.Locator("#visit-enforcingAuthority-name").FillAsync("An authority");
        await page.Locator("#visit-enforcingAuthority-address").FillAsync("1 Some Lane");
        await page.Locator("#people summary").ClickAsync();
        await page.Locator("#people-0-name").FillAsync("Cy Vale");
        await page.Locator("#people-0-address").FillAsync("3 Some Lane");
        await page.Locator("#people-0-qualifications").FillAsync("Guild fitter");
        await page.Locator("#people-0-selfEmployed").SelectOptionAsync("yes");
        await Assertions.Expect(page.Locator("#people button[name=off]")).ToBeVisibleAsync();
        await SoundPage.RequireBothWaysAsync(page, "particulars-people");
        await page.SetViewportSizeAsync(1280, 900);
        await LastVisit.FillParticularsAsync(page, "V-2", Employer);
        await page.ArriveAsync("**/record");
        foreach (var item in Typed()["items"]!.AsArray())
            await AddAsync(page, item!.AsObject());
        var harness = page.Url[..page.Url.LastIndexOf('/')] + "/0";

        // Nobody has said yet what became of the withdrawn bridge, so its harness is still withdrawn; all sections are open that matter.
        await page.GotoAsync(harness);
        foreach (var list in new[] { "renewals", "remedies", "releases", "disposals" })
            await Assertions.Expect(page.Locator($"#{list}")).ToHaveAttributeAsync("open", "");
        await Assertions.Expect(page.Locator("#renewals-0-removedPart option")).ToHaveTextAsync(["", Old, New]);
        await RequireNothingChosenAsync(page);
        // The other page was made before anything was typed.
        var other = await page.Context.NewPageAsync();
        await other.GotoAsync(harness);

        await page.Locator("#renewals-0-removedPart").SelectOptionAsync(Old);
        await page.Locator("#renewals-0-fittedPart").SelectOptionAsync(New);
        await Assertions.Expect(page.Locator("#found-renewals-0-doneBy .error")).ToBeVisibleAsync();
        await page.Locator("#renewals-0-reason").FillAsync("worn");
        await page.Locator("#renewals-0-doneBy").SelectOptionAsync(new SelectOptionValue { Label = "Cy Vale" });
        await page.Locator("#renewals-0-supervisedBy").SelectOptionAsync(new SelectOptionValue { Label = "Ada Fenn" });
        await page.Locator("#renewals-0-doneOn").FillAsync("2026-05-12");
        await Assertions.Expect(page.Locator("#saving")).ToHaveTextAsync("saved");
        await Assertions.Expect(page.Locator("#renewals .error")).ToHaveCountAsync(0);

        // It knows nothing of that renewal, and so it neither changes nor mixes with it.
        await other.Locator("#renewals-0-reason").FillAsync("chafed");
        await Assertions.Expect(other.Locator("#not-saved")).ToContainTextAsync("Renewal 1, Reason: \"chafed\" was not saved");
        await other.Locator("button[value='renewals/0']").ClickAsync();
        await Assertions.Expect(other.Locator("#not-saved")).ToContainTextAsync("Another page changed this entry meanwhile");
        await other.CloseAsync();

        await AnswerAllAsync(page, "harness");
        await page.Locator("#tests summary").ClickAsync();
        await page.Locator("#tests-0-description").FillAsync("hung in it");
        await page.Locator("#tests-0-result").FillAsync("held");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add a test" }).ClickAsync();
        await page.ArriveAsync("**/item/0?add=tests#tests");
        await Assertions.Expect(page.Locator("#tests-1-description")).ToBeVisibleAsync();
        await SoundPage.RequireBothWaysAsync(page, "item-renewed");
        await page.SetViewportSizeAsync(1280, 900);
        await ReleaseWithoutGroundsAsync(page, harness[..^1] + "1");
        await page.GotoAsync(harness[..^1] + "2");
        await AnswerAllAsync(page, "rope-bridge");
        AssertSameAsTyped(open);

        await page.GotoAsync(harness[..harness.IndexOf("/item", StringComparison.Ordinal)]);
        await Assertions.Expect(page.Locator("tbody tr.withdraw")).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator("tbody tr.withdraw")).ToContainTextAsync(Old);
        await page.GetByRole(AriaRole.Button, new() { Name = "Issue the documents" }).ClickAsync();
        await Assertions.Expect(page.Locator(".next")).ToContainTextAsync("Done.", new() { Timeout = 120_000 });
        var certificate = page.Locator(".documents li", new() { HasText = "C-2026-000001" });
        await Assertions.Expect(certificate).ToContainTextAsync(Harness);
        Assert.Empty(errors);
    }

    /// <summary>Of two clicks on the button the second is not sent.</summary>
    private static async Task StartOnceAsync(IPage page)
    {
        var sent = await page.EvaluateAsync<bool[]>(
            """
            () => {
              const form = document.querySelector("form[action='/start']:has([value=nothing])");
              const sent = [];
              form.addEventListener("submit", (event) => { sent.push(!event.defaultPrevented); event.preventDefault(); });
              form.querySelector("button").click();
              form.querySelector("button").click();
              return sent;
            }
            """
        );
        Assert.Equal([true, false], sent);
        await page.ReloadAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Start without items" }).ClickAsync();
        await page.ArriveAsync("**/particulars");
    }

    /// <summary>A release without grounds is refused at its field, and taken off again leaves no trace.</summary>
    private static async Task ReleaseWithoutGroundsAsync(IPage page, string bridge)
    {
        await page.GotoAsync(bridge);
        await Assertions.Expect(page.Locator("#still-withdrawn")).ToContainTextAsync("2025");
        await page.Locator("#releases-0-withdrawnOn").FillAsync("2025-11-12");
        await page.Locator("#releases-0-because").SelectOptionAsync("examined-again");
        await page.Locator("#releases-0-by").SelectOptionAsync(new SelectOptionValue { Label = "Ada Fenn" });
        await page.Locator("#releases-0-on").FillAsync("2026-05-12");
        await Assertions.Expect(page.Locator("#found-releases-0-grounds .error")).ToContainTextAsync("grounds");
        await Assertions.Expect(page.Locator("#saving")).ToHaveTextAsync("saved");
        await SoundPage.RequireBothWaysAsync(page, "item-release-without-grounds");
        await page.SetViewportSizeAsync(1280, 900);
        await page.GetByRole(AriaRole.Button, new() { Name = "Take off: Release 1" }).ClickAsync();
        await page.ArriveAsync("**/item/1?open=releases#releases");
        Assert.Equal("", await page.Locator("#releases-0-withdrawnOn").InputValueAsync());
    }

    /// <summary>Adds an item and types all that the record says of it.</summary>
    private static async Task AddAsync(IPage page, JsonObject item)
    {
        if (!page.Url.EndsWith("/record", StringComparison.Ordinal))
            await page.GotoAsync(page.Url[..page.Url.IndexOf("/item", StringComparison.Ordinal)] + "/record");
        if (!await page.Locator("#id").IsVisibleAsync())
            await page.Locator("summary", new() { HasText = "Add an item" }).ClickAsync();
        await page.Locator("#id").FillAsync((string)item["id"]!);
        await page.Locator("#category").SelectOptionAsync((string)item["category"]!);
        foreach (var member in OfAnItem)
            await page.Locator($"#{member}").FillAsync((string)item[member]!);
        await page.GetByRole(AriaRole.Button, new() { Name = "Add and record it" }).ClickAsync();
        await page.ArriveAsync("**/item/*");
        // Nothing is known of it here, so its particulars are open.
        foreach (var (member, value) in item.Where(m => !OfAnItem.Contains(m.Key, StringComparer.Ordinal) && m.Value is JsonValue))
        {
            if (member is "purpose" or "status" or "fittedTo")
                await page.Locator($"#item-{member}").SelectOptionAsync((string)value!);
            else if (member is not ("id" or "category"))
                await page.Locator($"#item-{member}").FillAsync((string)value!);
        }
        await page.Locator("#item-safeWorkingLoad-value").FillAsync("150");
        await page.Locator("#item-safeWorkingLoad-unit").SelectOptionAsync("kg");
        await Assertions.Expect(page.Locator("#saving")).ToHaveTextAsync("saved");
    }

    /// <summary>Nothing that decides something is filled in.</summary>
    private static async Task RequireNothingChosenAsync(IPage page)
    {
        var filled = await page.Locator("[data-row] input, [data-row] select, [data-row] textarea")
            .EvaluateAllAsync<string[]>("all => all.filter(e => e.value !== '').map(e => e.name)");
        Assert.Empty(filled);
    }

    private static async Task AnswerAllAsync(IPage page, string category)
    {
        var criteria = KnownRules.BuiltIn.FindCategory(category)!.Criteria.Count;
        await page.Locator("#criterion-identity").FocusAsync();
        for (var n = 0; n < criteria; n++)
            await page.Keyboard.PressAsync("1");
        await page.Locator("#conclusion .answer.fit").ClickAsync();
        await Assertions.Expect(page.Locator("#progress")).ToHaveTextAsync($"{criteria} of {criteria} answered");
        await Assertions.Expect(page.Locator("#saving")).ToHaveTextAsync("saved");
    }

    private static void Remember(OpenedWorkbench open)
    {
        var file = Path.Combine(Path.GetDirectoryName(open.Register)!, "last.json");
        File.WriteAllText(
            file,
            new StoryVisit("V-1", "2025-11-12", Employer).Harness(Harness, "A1").Bridge(Old, "Q100", i => i.On(Harness).Cut()).Json
        );
        ImportVisits.Run([file], open.Register, OpenedWorkbench.Today, KnownRules.BuiltIn);
        var told = CheckAgainstRegister.All([file], OpenedWorkbench.Today, null, null).Single();
        Assert.All(told.Outcomes, o => Assert.Equal(Core.Records.Outcome.Withdraw, o.Outcome));
    }

    /// <summary>The visit as somebody would type it as JSON.</summary>
    private static JsonNode Typed()
    {
        var record = JsonNode.Parse(
            new StoryVisit("V-2", "2026-05-12", Employer)
                .Harness(Harness, "A1")
                .Bridge(Old, "Q100", i => i.NotLookedAt("stored"))
                .Bridge(New, "Q200", i => i.On(Harness))
                .Renewed(Harness, Old, New)
                .Json
        )!;
        record["people"]!
            .AsArray()
            .Add(
                new JsonObject
                {
                    ["id"] = "cy",
                    ["name"] = "Cy Vale",
                    ["address"] = "3 Some Lane",
                    ["qualifications"] = "Guild fitter",
                    ["selfEmployed"] = true,
                }
            );
        record["renewals"]![0]!["doneBy"] = "cy";
        record["examinations"]![0]!["tests"] = new JsonArray(new JsonObject { ["description"] = "hung in it", ["result"] = "held" });
        foreach (var (examination, category) in record["examinations"]!.AsArray().Zip(["harness", "rope-bridge"]))
        {
            examination!["observations"] = new JsonArray([
                .. Catalogue.Find(category)!.Criteria.Select(c => new JsonObject { ["criterion"] = c.Id, ["state"] = "clear" }),
            ]);
        }
        return record;
    }

    /// <summary>What was recorded on screen is decided as the same visit is that somebody typed as JSON.</summary>
    private static void AssertSameAsTyped(OpenedWorkbench open)
    {
        var typed = Path.Combine(Path.GetDirectoryName(open.Register)!, "typed.json");
        File.WriteAllText(typed, Typed().ToJsonString());
        var onScreen = SameOutcomes.Of(LastVisit.Draft(open), open.Register);
        Assert.Equal(SameOutcomes.Of(typed, open.Register), onScreen);
        Assert.Contains(onScreen, line => line.StartsWith($"{Harness} Fit ", StringComparison.Ordinal));
        Assert.Contains(onScreen, line => line.StartsWith($"{Old} Withdraw ", StringComparison.Ordinal));
    }
}

using System.IO.Compression;
using System.Text.Json.Nodes;
using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Tests;
using Microsoft.Playwright;

namespace ExamDocs.Workbench.Tests;

/// <content>What the form keeps, and what it gives out.</content>
public sealed partial class YardFormTests
{
    [Fact]
    public async Task Nothing_answered_gives_nothing_fit_and_saved_twice_it_is_the_same_file()
    {
        await using var form = await OpenedForm.OpenAsync(browser, LastTime().Bridge("RB-1", "Q100").Json);
        await form.FillVisitAsync("2026-05-11");
        var first = await File.ReadAllBytesAsync(await form.SaveAsync(), Ct);
        var file = await form.SaveAsync();
        Assert.Equal(first, await File.ReadAllBytesAsync(file, Ct));
        Assert.Equal("undetermined", OpenedForm.Outcome(OpenedForm.Check(file), "RB-1"));
        var register = Path.ChangeExtension(file, ".db");
        Assert.Equal(1, ImportVisits.Run([file], register, OpenedWorkbench.Today, KnownRules.BuiltIn).New);
        Assert.Equal(0, ImportVisits.Run([file], register, OpenedWorkbench.Today, KnownRules.BuiltIn).New);

        await form.GoAsync("#item/known-0");
        await form.ConcludeAsync("fit");
        file = await form.SaveAsync();
        var record = JsonNode.Parse(await File.ReadAllTextAsync(file, Ct))!;
        Assert.Equal(record["visit"]!["reference"], JsonNode.Parse(first)!["visit"]!["reference"], JsonNode.DeepEquals);
        Assert.Equal("undetermined", OpenedForm.Outcome(OpenedForm.Check(file), "RB-1"));
    }

    [Fact]
    public async Task Another_visit_from_the_same_form_has_a_reference_of_its_own_and_no_answer()
    {
        await using var form = await OpenedForm.OpenAsync(browser, LastTime().Connector("CN-1", "K200").Json);
        await form.GoAsync("#item/known-0");
        await form.AnswerAsync("clear");
        await form.SaveAsync();
        await form.Page.GetByRole(AriaRole.Button, new() { Name = "Start another visit" }).ClickAsync();
        await Assertions.Expect(form.Page.Locator("#banner")).ToContainTextAsync("Not in any file yet");
        await form.GoAsync("#item/known-0");
        Assert.Equal(0, await form.Page.Locator("input:checked").CountAsync());
        await form.GoAsync("#save");
        await form.Page.Locator("main .row button.quiet").ClickAsync();
        await form.GoAsync("#item/known-0");
        Assert.NotEqual(0, await form.Page.Locator("input:checked").CountAsync());
    }

    [Fact]
    public async Task Photos_go_along_small_and_an_exchanged_one_is_found()
    {
        await using var form = await OpenedForm.OpenAsync(browser, LastTime().Bridge("RB-1", "Q100").Json);
        await form.FillVisitAsync("2026-05-08");
        await form.GoAsync("#item/known-0");
        await form.AnswerAsync("clear");
        await form.ConcludeAsync("fit");
        var cut = form.Criterion("cover-cut");
        await cut.GetByLabel("Add a photo").SetInputFilesAsync(Path.Combine(RepositoryRoot.Path, "examples", "photos", "con-07-crack.jpg"));
        await Assertions.Expect(cut.GetByRole(AriaRole.Img, new() { Name = "Photo of this finding" })).ToBeVisibleAsync();
        await form.KillAndReopenAsync();
        await SoundPage.RequireAsync(form.Page, "yard-again");

        var archive = await form.SaveAsync();
        // The workbench takes it as it is.
        await using var workbench = await OpenedWorkbench.StartAsync();
        using var client = await workbench.EnterAsync();
        var (token, name) = (await GuardTests.TokenAsync(client), Path.GetFileName(archive));
        using var taken = await GuardTests.PostAsync(client, "same-origin", null, token, await File.ReadAllBytesAsync(archive, Ct), name);
        var visit = await client.GetStringAsync(taken.Headers.Location, Ct);
        Assert.Contains("Nothing was found that needs mending.", visit, StringComparison.Ordinal);
        Assert.Contains("<tr class=\"fit\">", visit, StringComparison.Ordinal);
        var folder = Path.ChangeExtension(archive, null);
        await ZipFile.ExtractToDirectoryAsync(archive, folder, Ct);
        var (record, photo) = (
            Assert.Single(Directory.GetFiles(folder)),
            Assert.Single(Directory.GetFiles(Path.Combine(folder, "photos")))
        );
        var sound = OpenedForm.Check(record);
        Assert.Empty(sound.Findings.Select(f => f.Message));
        Assert.Equal("fit", OpenedForm.Outcome(sound, "RB-1"));
        File.Copy(Path.Combine(RepositoryRoot.Path, "examples", "photos", "har-04-stitching.jpg"), photo, overwrite: true);
        Assert.Equal("INT090", Assert.Single(OpenedForm.Check(record).Findings).Code);
        File.Delete(photo);
        Assert.Equal("INT042", Assert.Single(OpenedForm.Check(record).Findings).Code);
    }

    [Fact]
    public async Task What_the_browser_closes_is_opened_again_and_what_it_refuses_is_said()
    {
        await using var form = await OpenedForm.OpenAsync(browser, LastTime().Bridge("RB-1", "Q100").Json);
        await form.Page.EvaluateAsync("kept.base.close()");
        await form.Page.GetByLabel("Employer: name").FillAsync("Kept");
        await Assertions.Expect(form.Page.Locator("#banner")).ToContainTextAsync("Only on this phone");

        await form.GoAsync("#item/known-0");
        await form.Page.EvaluateAsync("() => { kept.base.close(); openWhole = openBase; openBase = () => Promise.reject(new Error()); }");
        await form.Criterion("cover-cut").Locator("input[value=defect]").CheckAsync();
        await Assertions.Expect(form.Page.Locator("#banner")).ToContainTextAsync("NOT KEPT");
        await form.Page.EvaluateAsync("() => { openBase = openWhole; }");
        await form.GoAsync("#visit");
        await form.Page.GetByLabel("Premises: name").FillAsync("The far yard");
        await Assertions.Expect(form.Page.Locator("#banner")).ToContainTextAsync("Only on this phone");

        // The stroke that was refused was tried again with the next one.
        await form.KillAndReopenAsync();
        Assert.Equal("Kept", await form.Page.GetByLabel("Employer: name").InputValueAsync());
        Assert.Equal("The far yard", await form.Page.GetByLabel("Premises: name").InputValueAsync());
        await form.GoAsync("#item/known-0");
        Assert.True(await form.Criterion("cover-cut").Locator("input[value=defect]").IsCheckedAsync());
    }

    [Fact]
    public async Task Two_tabs_never_hold_the_form_at_once()
    {
        await using var form = await OpenedForm.OpenAsync(browser, LastTime().Bridge("RB-1", "Q100").Json);
        await form.Page.GetByLabel("Premises: name").FillAsync("The far yard");
        var second = await form.AnotherTabAsync();
        await Assertions.Expect(second.Locator("#main")).ToContainTextAsync("open in another tab");
        Assert.Equal(0, await second.Locator("input, select, textarea").CountAsync());
        await form.Page.CloseAsync();
        await Assertions.Expect(second.GetByLabel("Premises: name")).ToHaveValueAsync("The far yard");
    }
}

using ExamDocs.Core.Records;
using ExamDocs.Intake.Yard.Wording;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;
using Microsoft.Playwright;

namespace ExamDocs.Workbench.Tests;

/// <summary>A form for the yard in a folder of its own, opened as a phone opens it: from the file, with the network cut.</summary>
internal sealed class OpenedForm : IAsyncDisposable
{
    private readonly DirectoryInfo _folder;

    private OpenedForm(DirectoryInfo folder, IPage page) => (_folder, Page) = (folder, page);

    public IPage Page { get; private set; }

    public string Html => Path.Combine(_folder.FullName, "form.html");

    public string Address => new Uri(Html).AbsoluteUri;

    public string Language { get; private init; } = "en";

    /// <summary>Addresses asked for, and errors of the page.</summary>
    public List<string> Asked { get; } = [];

    public List<string> Errors { get; } = [];

    /// <param name="browser">The browser.</param>
    /// <param name="record">The record of last time as JSON; null for an empty form.</param>
    /// <param name="isDark">Whether the phone shows dark pages.</param>
    /// <param name="categories">What can be recorded; none for all.</param>
    public static Task<OpenedForm> OpenAsync(OpenedBrowser browser, string? record, bool isDark = false, params string[] categories) =>
        OpenAsync(browser, "en", record, isDark, categories);

    /// <inheritdoc cref="OpenAsync(OpenedBrowser, string?, bool, string[])"/>
    /// <param name="language">Its tag.</param>
    public static async Task<OpenedForm> OpenAsync(
        OpenedBrowser browser,
        string language,
        string? record,
        bool isDark = false,
        params string[] categories
    )
    {
        var folder = Directory.CreateTempSubdirectory("yard-");
        var from = record is null ? null : Path.Combine(folder.FullName, "last.json");
        if (from is not null)
            await File.WriteAllTextAsync(from, record);
        var form = new OpenedForm(folder, await browser.OpenAsync(390, isDark)) { Language = language };
        Assert.Null(WriteYardForm.Run(new CaptureRequest(form.Html, categories, from, WithAnswers: false) { Language = language }));
        await form.Page.Context.SetOfflineAsync(true);
        form.Page.Context.Request += (_, request) => form.Asked.Add(request.Url);
        await form.ShowAsync(form.Page);
        return form;
    }

    /// <summary>Another tab of the same browser, without waiting for the form in it.</summary>
    public async Task<IPage> AnotherTabAsync()
    {
        var page = await Page.Context.NewPageAsync();
        await page.GotoAsync(Address);
        return page;
    }

    /// <summary>The tab dies without a word, and the form is opened in another one.</summary>
    public async Task KillAndReopenAsync()
    {
        var crashed = new TaskCompletionSource();
        Page.Crash += (_, _) => crashed.TrySetResult();
        var session = await Page.Context.NewCDPSessionAsync(Page);
        _ = session.SendAsync("Page.crash");
        await crashed.Task.WaitAsync(TimeSpan.FromSeconds(30));
        await Page.CloseAsync();
        Page = await Page.Context.NewPageAsync();
        await ShowAsync(Page);
    }

    public async Task GoAsync(string view)
    {
        await Page.EvaluateAsync("view => { location.hash = view }", view);
        await SoundPage.RequireFocusAsync(Page.Locator("h1"));
    }

    /// <summary>What a visit needs besides its items.</summary>
    public async Task FillVisitAsync(string day)
    {
        await GoAsync("#visit");
        await Page.GetByLabel("Day examined").FillAsync(day);
        await Page.GetByLabel("Day of the report").FillAsync(day);
        await Page.GetByLabel("Examiner", new() { Exact = true }).SelectOptionAsync("ex1");
        await Page.GetByLabel("Why examined").SelectOptionAsync("six-month");
    }

    /// <summary>Taps an answer to every criterion that has none yet.</summary>
    public async Task TapAsync(string state)
    {
        // Each answer takes one from the list: the first that is left is tapped.
        for (var left = await Unanswered(state).CountAsync(); left > 0; left--)
            await Unanswered(state).First.CheckAsync();
    }

    /// <summary>The same at once, where the tapping is not what is tried.</summary>
    public Task AnswerAsync(string state) =>
        Unanswered(state).EvaluateAllAsync<object?>("radios => radios.forEach(radio => radio.click())");

    public ILocator Criterion(string id) => Page.Locator($"#criterion-{id}");

    public Task ConcludeAsync(string conclusion) => Page.Locator($".conclusion input[value={conclusion}]").CheckAsync();

    /// <summary>Saves the file at the end, and gives its path.</summary>
    public async Task<string> SaveAsync(IPage? tab = null)
    {
        var page = tab ?? Page;
        await page.EvaluateAsync("location.hash = '#save'");
        var waiting = page.WaitForDownloadAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = YardPhrases.In(Language).SaveFile }).ClickAsync();
        var download = await waiting;
        var file = Path.Combine(_folder.FullName, download.SuggestedFilename);
        await download.SaveAsAsync(file);
        return file;
    }

    public static CheckedInput Check(string file) => CheckRecord.Of(file, OpenedWorkbench.Today);

    /// <summary>The outcome of an item as the program decides it from a saved file.</summary>
    public static string Outcome(CheckedInput input, string item) => input.Visit!.Items.Single(i => i.Item.Id == item).Outcome.Word();

    public async ValueTask DisposeAsync()
    {
        await Page.Context.CloseAsync();
        _folder.Delete(recursive: true);
    }

    private ILocator Unanswered(string state) => Page.Locator($".criterion .answers:not(:has(input:checked)) input[value={state}]");

    private async Task ShowAsync(IPage page)
    {
        page.PageError += (_, error) => Errors.Add(error);
        page.Console += (_, message) =>
        {
            if (message.Type is "error")
                Errors.Add(message.Text);
        };
        await page.GotoAsync(Address);
        await Assertions.Expect(page.Locator("#tabs a").First).ToBeVisibleAsync();
    }
}

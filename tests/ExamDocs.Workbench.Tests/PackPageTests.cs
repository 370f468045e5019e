using System.IO.Compression;
using System.Net;
using System.Text;
using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using Microsoft.Playwright;

namespace ExamDocs.Workbench.Tests;

/// <summary>An audit pack on screen: asked for, watched, looked at, saved; and nothing left of one that is stopped or refused.</summary>
public sealed class PackPageTests(OpenedBrowser browser) : IClassFixture<OpenedBrowser>
{
    private const string Employer = "Alder Vale Ltd";

    /// <summary>The smallest PNG: one pixel.</summary>
    private static readonly byte[] Picture = Convert.FromBase64String(
        "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg=="
    );

    [Fact]
    public async Task From_the_form_to_both_files_with_what_is_missing_first()
    {
        await using var open = await OpenedWorkbench.StartAsync();
        Remember(open);
        var page = await browser.OpenAsync(1280);
        var errors = BrowserErrors.Of(page);
        await LastVisit.EnterAsync(open, page);
        await page.GetByRole(AriaRole.Link, new() { Name = "All kit" }).ClickAsync();
        await page.ArriveAsync("**/all");
        await SoundPage.RequireBothWaysAsync(page, "all");
        await page.Locator("main").GetByRole(AriaRole.Link, new() { Name = "Audit pack" }).ClickAsync();
        await page.ArriveAsync("**/pack");
        Assert.Equal([Employer, "Birch Lane Ltd"], await page.Locator("#employer option").AllTextContentsAsync());
        Assert.Equal("2026-05-12", await page.GetByLabel("As of").InputValueAsync());
        await SoundPage.RequireBothWaysAsync(page, "pack");
        await page.GetByLabel("Only these items").FillAsync("RB-1\nRB-2\n");
        await page.Locator("#evidence")
            .SetInputFilesAsync([
                new FilePayload
                {
                    Name = "ex1 guild certificate.png",
                    MimeType = "image/png",
                    Buffer = Picture,
                },
                new FilePayload
                {
                    Name = "notes.pdf",
                    MimeType = "application/pdf",
                    Buffer = "no PDF"u8.ToArray(),
                },
            ]);
        await page.GetByRole(AriaRole.Button, new() { Name = "Build the pack" }).ClickAsync();
        await page.ArriveAsync("**/pack/*");
        await Assertions.Expect(page.Locator("#files")).ToBeVisibleAsync(new() { Timeout = 120_000 });
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Items: 2; documents: 0; missing: ");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("notes.pdf is no PDF, JPEG or PNG, and was left out");
        var missing = await page.Locator(".findings li").AllTextContentsAsync();
        Assert.Contains(missing, m => m.Contains("RB-1", StringComparison.Ordinal));
        Assert.DoesNotContain(missing, m => m.Contains("RB-3", StringComparison.Ordinal));
        // The gaps come before the files.
        Assert.Equal(["gaps", "files"], await page.Locator("h2").EvaluateAllAsync<string[]>("all => all.map(h => h.id)"));
        await SoundPage.RequireBothWaysAsync(page, "packed");

        var zip = await SavedAsync(page, "Save the pack (ZIP)", "audit-pack-2026-05-12.zip");
        using (var archive = new ZipArchive(new MemoryStream(zip)))
        {
            Assert.Contains(archive.Entries, e => e.FullName.EndsWith("data/evidence/ex1 guild certificate.png", StringComparison.Ordinal));
            Assert.DoesNotContain(archive.Entries, e => e.FullName.Contains("notes", StringComparison.Ordinal));
        }
        var copy = await SavedAsync(page, "Save the reading copy (PDF)", "audit-pack-2026-05-12-reading-copy.pdf");
        Assert.Equal("%PDF-"u8.ToArray(), copy[..5]);
        using var stranger = open.Stranger();
        using var answer = await stranger.GetAsync(page.Url + "/pack.zip", TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);

        var before = page.Url;
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove both files from here" }).ClickAsync();
        await page.ArriveAsync("**/pack");
        Assert.Equal(404, (await page.APIRequest.GetAsync(before + "/pack.zip")).Status);
        Assert.Empty(errors);
    }

    [Fact]
    public async Task A_pack_that_is_cancelled_leaves_nothing_and_one_that_is_done_goes_with_the_workbench()
    {
        var folders = Folders();
        await using (var open = await OpenedWorkbench.StartAsync())
        {
            Remember(open);
            using var client = await open.EnterAsync();
            var token = await GuardTests.TokenAsync(client);
            // One is stopped while it is built, another while it waits for the one between them.
            var inHand = await StartAsync(client, token);
            await StopAsync(client, token, inHand);
            var done = await StartAsync(client, token);
            var waiting = await StartAsync(client, token);
            await StopAsync(client, token, waiting);
            foreach (var cancelled in new[] { inHand, waiting })
            {
                Assert.Contains("Nothing of this pack was kept.", await WhenDoneAsync(client, cancelled), StringComparison.Ordinal);
                using var file = await client.GetAsync($"{cancelled}/pack.zip", Ct);
                Assert.Equal(HttpStatusCode.NotFound, file.StatusCode);
            }
            Assert.Contains("Save the pack", await WhenDoneAsync(client, done), StringComparison.Ordinal);
            Assert.Single(Folders().Except(folders));
        }
        Assert.Empty(Folders().Except(folders));
    }

    [Theory]
    [InlineData("..\\..\\x.pdf", "not every system can take")]
    [InlineData("../x.pdf", "not every system can take")]
    [InlineData("CON.pdf", "not every system can take")]
    [InlineData(".hidden.pdf", "not every system can take")]
    [InlineData("ex1\u202Efdp.exe.pdf", "not every system can take")]
    [InlineData("<img src=x onerror=alert(1)>.png", "not every system can take")]
    [InlineData("ex1.exe", "only files that end with .pdf, .jpg, .jpeg or .png")]
    [InlineData("EX1.PDF", "two files are called")]
    public async Task A_name_of_evidence_that_could_do_harm_is_refused_in_words(string name, string said)
    {
        var folders = Folders();
        await using var open = await OpenedWorkbench.StartAsync();
        Remember(open);
        using var client = await open.EnterAsync();
        var token = await GuardTests.TokenAsync(client);
        using var answer = await PostAsync(client, token, "/pack", Asked, "ex1.pdf", name);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var page = await answer.Content.ReadAsStringAsync(Ct);
        Assert.Contains(said, WebUtility.HtmlDecode(page), StringComparison.Ordinal);
        Assert.DoesNotContain("<img", page, StringComparison.Ordinal);
        Assert.DoesNotContain('\u202E', page);
        // What was typed is still there.
        Assert.Contains("RB-1", page, StringComparison.Ordinal);
        Assert.Empty(Folders().Except(folders));
    }

    [Theory]
    [InlineData("employer", "Nobody Ltd", "no item 'RB-1' of 'Nobody Ltd' is on record")]
    [InlineData("items", "X-9", "no item 'X-9'")]
    [InlineData("as-of", "tomorrow", "tomorrow")]
    // What is typed is an id, never the name of a file to read.
    [InlineData("items", "/etc/hostname", "no item '/etc/hostname'")]
    public async Task What_cannot_be_packed_is_refused_in_words(string field, string value, string said)
    {
        var folders = Folders();
        await using var open = await OpenedWorkbench.StartAsync();
        Remember(open);
        using var client = await open.EnterAsync();
        var token = await GuardTests.TokenAsync(client);
        using var answer = await PostAsync(client, token, "/pack", new(Asked) { [field] = value });
        var page = answer.Headers.Location is { } pack
            ? await WhenDoneAsync(client, pack.ToString())
            : WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(Ct));
        Assert.Contains(said, page, StringComparison.Ordinal);
        Assert.Empty(Folders().Except(folders));
    }

    [Theory]
    [InlineData("de", "Prüfmappe", "Die Mappe zusammenstellen")]
    [InlineData("fr", "Dossier d’audit", "Constituer le dossier")]
    public async Task In_other_languages_too(string tag, string title, string button)
    {
        await using var open = await OpenedWorkbench.StartAsync();
        Remember(open);
        var page = await browser.OpenAsync(390);
        await open.EnterAsync(page, tag);
        await page.GotoAsync($"{open.Address}/all");
        await SoundPage.RequireAsync(page, $"all-{tag}");
        await page.GotoAsync($"{open.Address}/pack");
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync(title);
        Assert.Equal(tag, await page.Locator("#language").InputValueAsync());
        await SoundPage.RequireAsync(page, $"pack-{tag}");
        await page.GetByRole(AriaRole.Button, new() { Name = button }).ClickAsync();
        await page.ArriveAsync("**/pack/*");
        await Assertions.Expect(page.Locator("#files")).ToBeVisibleAsync(new() { Timeout = 120_000 });
        Assert.Equal(tag, await page.Locator(".findings li").First.GetAttributeAsync("lang"));
        await SoundPage.RequireAsync(page, $"packed-{tag}");
    }

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    private static Dictionary<string, string> Asked =>
        new(StringComparer.Ordinal)
        {
            ["employer"] = Employer,
            ["items"] = "RB-1",
            ["as-of"] = "2026-05-12",
            ["language"] = "en",
        };

    /// <summary>Those of this process: other tests of the machine have their own.</summary>
    private static IReadOnlyList<string> Folders() =>
        Directory.GetDirectories(Path.GetTempPath(), FormattableString.Invariant($"examdocs-pack-{Environment.ProcessId}-*"));

    private static async Task<string> StartAsync(HttpClient client, string token)
    {
        using var answer = await PostAsync(client, token, "/pack", Asked, "ex1.png");
        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        return answer.Headers.Location!.ToString();
    }

    private static async Task StopAsync(HttpClient client, string token, string pack)
    {
        using var stop = await PostAsync(client, token, $"{pack}/stop", []);
        Assert.Equal(HttpStatusCode.SeeOther, stop.StatusCode);
    }

    private static async Task<HttpResponseMessage> PostAsync(
        HttpClient client,
        string token,
        string path,
        Dictionary<string, string> fields,
        params string[] evidence
    )
    {
        using var form = new MultipartFormDataContent { { new StringContent(token), "__RequestVerificationToken" } };
        foreach (var (name, value) in fields)
            form.Add(new StringContent(value), name);
        foreach (var name in evidence)
        {
            var file = new ByteArrayContent(Picture);
            file.Headers.ContentDisposition = new("form-data") { Name = "\"files\"", FileNameStar = name };
            form.Add(file);
        }
        using var request = new HttpRequestMessage(HttpMethod.Post, path) { Content = form };
        request.Headers.Add("Sec-Fetch-Site", "same-origin");
        return await client.SendAsync(request, Ct);
    }

    private static async Task<string> WhenDoneAsync(HttpClient client, string pack)
    {
        while (true)
        {
            var page = WebUtility.HtmlDecode(await client.GetStringAsync(pack, Ct));
            if (!page.Contains("http-equiv=\"refresh\"", StringComparison.Ordinal))
                return page;
            await Task.Delay(100, Ct);
        }
    }

    private static async Task<byte[]> SavedAsync(IPage page, string link, string name)
    {
        var download = page.WaitForDownloadAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = link }).ClickAsync();
        var file = await download;
        Assert.Equal(name, file.SuggestedFilename);
        return await File.ReadAllBytesAsync(await file.PathAsync(), Ct);
    }

    private static void Remember(OpenedWorkbench open)
    {
        Import(open, new StoryVisit("V-1", "2026-05-11", Employer).Bridge("RB-1", "Q150").Bridge("RB-2", "Q151").Bridge("RB-3", "Q152"));
        Import(open, new StoryVisit("V-2", "2026-05-11", "Birch Lane Ltd").Connector("C-1", "S100"));
    }

    private static void Import(OpenedWorkbench open, StoryVisit visit)
    {
        var file = Path.Combine(Path.GetDirectoryName(open.Register)!, "visit.json");
        File.WriteAllText(file, visit.Json, Encoding.UTF8);
        ImportVisits.Run([file], open.Register, OpenedWorkbench.Today, KnownRules.BuiltIn);
    }
}

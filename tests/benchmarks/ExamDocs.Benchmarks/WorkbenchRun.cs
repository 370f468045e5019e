using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using ExamDocs.Documents.Browsing;
using PuppeteerSharp;

namespace ExamDocs.Benchmarks;

/// <summary>
/// The waits of somebody at the workbench, each beside what it can be compared with in the same run: from start to first page beside
/// the bare start of the program, from drop to findings beside <c>examdocs check</c> of the file, and the page of 2,000 items in a browser
/// beside the same page as a file.
/// </summary>
internal static partial class WorkbenchRun
{
    private const int Rounds = 5;
    private const int ManyItems = 2_000;

    /// <param name="root">Of the repository; the command line is built there.</param>
    public static async Task AllAsync(string root)
    {
        var program = Path.Combine(root, "src/ExamDocs.Cli/bin/Release/net10.0/ExamDocs.Cli");
        var folder = Directory.CreateTempSubdirectory("examdocs-workbench-").FullName;
        try
        {
            var workbook = Path.Combine(root, "examples/visit.xlsx");
            var many = Path.Combine(folder, "many.json");
            await File.WriteAllTextAsync(many, Many(Path.Combine(root, "examples/visit.json")));
            var (starts, bare, drops, checks) = (new List<double>(), new List<double>(), new List<double>(), new List<double>());
            for (var round = 0; round < Rounds; round++)
            {
                bare.Add(await RunAsync(program, "--version"));
                checks.Add(await RunAsync(program, "check", workbook, "--quiet"));
                await using var desk = await OpenDesk.StartAsync(program, Path.Combine(folder, $"round-{round}"));
                starts.Add(desk.StartMs);
                drops.Add(await desk.DropAsync(workbook));
            }
            Show("first page, from the program's start", starts, bare, "the same program saying its version");
            Show("findings of the example, from the drop", drops, checks, "examdocs check of the same file");
            await ManyItemsAsync(program, folder, many);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Shown, scrolled to its end and back, in a window of a desk.</summary>
    private static async Task ManyItemsAsync(string program, string folder, string many)
    {
        await using var desk = await OpenDesk.StartAsync(program, Path.Combine(folder, "many"));
        await desk.DropAsync(many);
        await using var browser = await Puppeteer.LaunchAsync(
            new LaunchOptions { ExecutablePath = BrowserPath.Find(), Args = ["--no-sandbox"] }
        );
        await using var page = await browser.NewPageAsync();
        await page.SetViewportAsync(new ViewPortOptions { Width = 1280, Height = 900 });
        await page.SetCookieAsync(desk.Cookies);
        var copy = Path.Combine(folder, "copy.html");
        await File.WriteAllTextAsync(copy, await desk.TextAsync());
        var (served, filed) = (new List<double>(), new List<double>());
        for (var round = 0; round < Rounds; round++)
        {
            served.Add(await ShowAsync(page, desk.Visit.AbsoluteUri));
            filed.Add(await ShowAsync(page, new Uri(copy).AbsoluteUri));
        }
        Show(string.Create(CultureInfo.InvariantCulture, $"a page with {ManyItems} items, scrolled"), served, filed, "that page as a file");
    }

    private static async Task<double> ShowAsync(IPage page, string address)
    {
        var watch = Stopwatch.StartNew();
        await page.GoToAsync(address, WaitUntilNavigation.Load);
        await page.EvaluateExpressionAsync(
            """
            new Promise(done => {
              scrollTo(0, document.body.scrollHeight);
              requestAnimationFrame(() => { scrollTo(0, 0); requestAnimationFrame(() => done(document.body.scrollHeight)); });
            })
            """
        );
        return watch.Elapsed.TotalMilliseconds;
    }

    private static async Task<double> RunAsync(string program, params string[] arguments)
    {
        var watch = Stopwatch.StartNew();
        using var run = Process.Start(
            new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true }
        )!;
        await Task.WhenAll(run.StandardOutput.ReadToEndAsync(), run.StandardError.ReadToEndAsync());
        await run.WaitForExitAsync();
        return watch.Elapsed.TotalMilliseconds;
    }

    private static void Show(string what, List<double> ours, List<double> peers, string peer)
    {
        var (one, other) = (ours.Order().ElementAt(Rounds / 2), peers.Order().ElementAt(Rounds / 2));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what, -46}{one, 10:0}{other, 10:0}{one / other, 8:0.00}  {peer}"));
    }

    /// <summary>The connectors of the example, over and over under other ids and serials.</summary>
    private static string Many(string example)
    {
        var record = JsonNode.Parse(File.ReadAllText(example))!.AsObject();
        var item = record["items"]!.AsArray().First(i => (string)i!["category"]! is "connector")!;
        var id = (string)item["id"]!;
        var examination = record["examinations"]!.AsArray().First(e => (string)e!["item"]! == id)!;
        var (items, examinations) = (new JsonArray(), new JsonArray());
        for (var n = 0; n < ManyItems; n++)
        {
            var (one, its) = (item.DeepClone(), examination.DeepClone());
            (one["id"], one["serial"], its["item"]) = (Named("CN", n), Named("S", n), Named("CN", n));
            one.AsObject().Remove("fittedTo");
            items.Add(one);
            examinations.Add(its);
        }
        (record["items"], record["examinations"]) = (items, examinations);
        foreach (var list in new[] { "renewals", "remedies", "releases", "disposals" })
            record.Remove(list);
        return record.ToJsonString();
    }

    private static string Named(string before, int n) => string.Create(CultureInfo.InvariantCulture, $"{before}-{n:0000}");

    [GeneratedRegex("name=\"(?<name>__RequestVerificationToken)\"[^>]*value=\"(?<value>[^\"]+)\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Token();

    /// <summary>A workbench in a process of its own, entered, and what is dropped on it.</summary>
    private sealed class OpenDesk : IAsyncDisposable
    {
        private readonly Process _process;
        private readonly HttpClient _client;
        private readonly CookieContainer _cookies;
        private readonly Uri _address;

        private OpenDesk(Process process, HttpClient client, CookieContainer cookies, Uri address, double startMs) =>
            (_process, _client, _cookies, _address, StartMs) = (process, client, cookies, address, startMs);

        public double StartMs { get; }

        public Uri Visit { get; private set; } = null!;

        public CookieParam[] Cookies =>
            [
                .. _cookies
                    .GetCookies(_address)
                    .Select(c => new CookieParam
                    {
                        Name = c.Name,
                        Value = c.Value,
                        Url = _address.AbsoluteUri,
                    }),
            ];

        public static async Task<OpenDesk> StartAsync(string program, string folder)
        {
            Directory.CreateDirectory(folder);
            var watch = Stopwatch.StartNew();
            var process = Process.Start(
                new ProcessStartInfo(program, ["workbench", "--no-browser", "--data", Path.Combine(folder, "data")])
                {
                    RedirectStandardOutput = true,
                    RedirectStandardError = true,
                    // The usual register is made in this folder.
                    Environment = { ["XDG_DATA_HOME"] = folder },
                }
            )!;
            var entry = new Uri((await process.StandardOutput.ReadLineAsync())!);
            var cookies = new CookieContainer();
            var client = new HttpClient(new HttpClientHandler { CookieContainer = cookies }) { BaseAddress = new Uri(entry, "/") };
            client.DefaultRequestHeaders.Add("Origin", entry.GetLeftPart(UriPartial.Authority));
            await client.GetStringAsync(entry);
            return new OpenDesk(process, client, cookies, new Uri(entry, "/"), watch.Elapsed.TotalMilliseconds);
        }

        /// <summary>Drops a file, and gives the milliseconds until the page with its findings is there.</summary>
        public async Task<double> DropAsync(string file)
        {
            // The first start asks who works here.
            using var who = new FormUrlEncodedContent([.. await TokenAsync("/who"), new("name", "Ada Fenn"), new("language", "en")]);
            (await _client.PostAsync("/who", who)).EnsureSuccessStatusCode();
            var token = await TokenAsync("/");
            using var form = new MultipartFormDataContent();
            foreach (var (name, value) in token)
                form.Add(new StringContent(value), name);
            form.Add(new ByteArrayContent(await File.ReadAllBytesAsync(file)), "files", Path.GetFileName(file));
            var watch = Stopwatch.StartNew();
            using var answer = await _client.PostAsync("/bring-in", form);
            await answer.EnsureSuccessStatusCode().Content.ReadAsStringAsync();
            Visit = answer.RequestMessage!.RequestUri!;
            return watch.Elapsed.TotalMilliseconds;
        }

        public Task<string> TextAsync() => _client.GetStringAsync(Visit);

        private async Task<IReadOnlyList<KeyValuePair<string, string>>> TokenAsync(string page) =>
            [
                .. Token()
                    .Matches(await _client.GetStringAsync(page))
                    .Take(1)
                    .Select(m => KeyValuePair.Create(m.Groups["name"].Value, WebUtility.HtmlDecode(m.Groups["value"].Value))),
            ];

        public async ValueTask DisposeAsync()
        {
            _client.Dispose();
            _process.Kill(entireProcessTree: true);
            await _process.WaitForExitAsync();
            _process.Dispose();
        }
    }
}

using System.Net;
using ExamDocs.UseCases.Registered;
using ExamDocs.Workbench.Desk;
using Microsoft.Playwright;
using NodaTime;

namespace ExamDocs.Workbench.Tests;

/// <summary>A workbench of its own, with a register and a desk in a folder that goes away with it.</summary>
public sealed class OpenedWorkbench : IAsyncDisposable
{
    public static readonly LocalDate Today = new(2026, 5, 12);

    private readonly DirectoryInfo _folder;
    private readonly WorkbenchServer _server;

    private OpenedWorkbench(DirectoryInfo folder, WorkbenchServer server) => (_folder, _server) = (folder, server);

    public Uri Entry => _server.Entry;

    public string Address => _server.Entry.GetLeftPart(UriPartial.Authority);

    public string Register => Path.Combine(_folder.FullName, "kit.db");

    public string Desk => Path.Combine(_folder.FullName, "data", "desk");

    /// <summary>Every file beneath the data folder.</summary>
    public IReadOnlyList<string> Files =>
        [
            .. Directory
                .EnumerateFiles(Path.Combine(_folder.FullName, "data"), "*", SearchOption.AllDirectories)
                .Order(StringComparer.Ordinal),
        ];

    public static async Task<OpenedWorkbench> StartAsync(long mostBytes = 100_000_000)
    {
        var folder = Directory.CreateTempSubdirectory("workbench-");
        var server = await WorkbenchServer.StartAsync(
            new WorkbenchRequest
            {
                Register = new RegisterPlace(Path.Combine(folder.FullName, "kit.db"), null),
                DataFolder = Path.Combine(folder.FullName, "data"),
                Today = () => Today,
                MostBytes = mostBytes,
            }
        );
        return new OpenedWorkbench(folder, server);
    }

    /// <summary>A client that has entered, and shows redirects as they are.</summary>
    public async Task<HttpClient> EnterAsync()
    {
        var client = Stranger();
        using var entered = await client.GetAsync(Entry);
        Assert.Equal(HttpStatusCode.Redirect, entered.StatusCode);
        return client;
    }

    /// <summary>Says who somebody is and which language they read, as the first page asks, and arrives at the desk.</summary>
    public async Task EnterAsync(IPage page, string language)
    {
        await page.GotoAsync(Entry.AbsoluteUri);
        await page.Locator("#name").FillAsync("Ada Fenn");
        await page.Locator("#language").SelectOptionAsync(language);
        await page.Locator("main button").ClickAsync();
        await page.ArriveAsync(Address + "/");
    }

    /// <summary>A client that knows nothing but the address.</summary>
    public HttpClient Stranger() => new(new HttpClientHandler { AllowAutoRedirect = false }) { BaseAddress = new Uri(Address) };

    public async ValueTask DisposeAsync()
    {
        await _server.DisposeAsync();
        _folder.Delete(recursive: true);
    }
}

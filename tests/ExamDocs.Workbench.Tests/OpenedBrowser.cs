using System.Diagnostics;
using System.Text.RegularExpressions;
using Deque.AxeCore.Commons;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(ExamDocs.Workbench.Tests.OpenedBrowser))]

namespace ExamDocs.Workbench.Tests;

/// <summary>One browser for all tests; each opens windows of its own.</summary>
public sealed class OpenedBrowser : IAsyncLifetime
{
    private IPlaywright _playwright = null!;
    private IBrowser _browser = null!;

    public async ValueTask InitializeAsync()
    {
        _playwright = await Playwright.CreateAsync();
        Assertions.SetDefaultExpectTimeout(60_000);
        _browser = await _playwright.Chromium.LaunchAsync(
            new BrowserTypeLaunchOptions
            {
                ExecutablePath = Environment.GetEnvironmentVariable("EXAMDOCS_BROWSER") ?? "/usr/lib/chromium/chromium-headless-shell",
                Args = ["--no-sandbox"],
            }
        );
    }

    public async ValueTask DisposeAsync()
    {
        await _browser.DisposeAsync();
        _playwright.Dispose();
    }

    /// <param name="width">Of the window, in pixels: 1280 for a desk, 390 for a telephone.</param>
    /// <param name="isDark">Whether the user prefers dark pages.</param>
    /// <param name="hasScript">False for a browser that runs no scripts.</param>
    public async Task<IPage> OpenAsync(int width, bool isDark = false, bool hasScript = true)
    {
        var context = await _browser.NewContextAsync(
            new BrowserNewContextOptions
            {
                ViewportSize = new ViewportSize { Width = width, Height = 900 },
                ColorScheme = isDark ? ColorScheme.Dark : ColorScheme.Light,
                ReducedMotion = ReducedMotion.Reduce,
                JavaScriptEnabled = hasScript,
                // The site of a test makes its own certificate.
                IgnoreHTTPSErrors = true,
            }
        );
        var page = await context.NewPageAsync();
        page.SetDefaultTimeout(60_000);
        return page;
    }
}

/// <summary>What every page must be.</summary>
internal static class SoundPage
{
    private static readonly string Axe = new BundledAxeScriptProvider().GetScript();

    /// <summary>
    /// The same on a desk and on a telephone that shows dark pages: looking at a page twice is cheaper than going the way to it twice.
    /// </summary>
    public static async Task RequireBothWaysAsync(IPage page, string name)
    {
        foreach (var (width, scheme) in new[] { (390, ColorScheme.Dark), (1280, ColorScheme.Light) })
        {
            await page.SetViewportSizeAsync(width, 900);
            await page.EmulateMediaAsync(new PageEmulateMediaOptions { ColorScheme = scheme });
            await RequireAsync(page, name);
        }
    }

    /// <summary>
    /// Waits until an element has the focus of its page. Whether the page has that of the browser is another question: pages of other
    /// tests are open in the same browser.
    /// </summary>
    public static async Task RequireFocusAsync(ILocator element)
    {
        var left = Stopwatch.StartNew();
        while (!await element.EvaluateAsync<bool>("e => e === document.activeElement"))
        {
            if (left.Elapsed > TimeSpan.FromSeconds(60))
                throw new TimeoutException($"{element} does not get the focus");
            await Task.Delay(20);
        }
    }

    /// <summary>
    /// Waits for an address and until its page is ready, by asking the page: the library's own waiting misses the event now and then on
    /// a busy machine, and then waits in vain.
    /// </summary>
    /// <param name="page">The page.</param>
    /// <param name="url">The address; ** stands for anything, * for anything without a stroke.</param>
    public static async Task ArriveAsync(this IPage page, string url)
    {
        var pattern = Regex.Escape(url).Replace(@"\*\*", ".*", StringComparison.Ordinal).Replace(@"\*", "[^/]*", StringComparison.Ordinal);
        var ready = new Regex($"^{pattern} complete$", RegexOptions.CultureInvariant, TimeSpan.FromSeconds(1));
        var left = Stopwatch.StartNew();
        while (left.Elapsed < TimeSpan.FromSeconds(60))
        {
            try
            {
                if (ready.IsMatch(await page.EvaluateAsync<string>("`${location.href} ${document.readyState}`")))
                    return;
            }
            catch (PlaywrightException e) when (e.Message.Contains("context was destroyed", StringComparison.Ordinal))
            {
                // Yet another page takes its place.
            }
            await Task.Delay(20);
        }
        throw new TimeoutException($"{page.Url} is not {url}, or not ready");
    }

    /// <summary>
    /// A line for each rule of axe-core that the page breaks. The library's own way to ask runs in a second page for the sake of frames,
    /// of which there are none here, and lists all that holds: it takes more than twice as long.
    /// </summary>
    public static async Task<string> ViolationsAsync(IPage page, string name)
    {
        if (!await page.EvaluateAsync<bool>("'axe' in window"))
            await page.EvaluateAsync(Axe);
        var lines = await page.EvaluateAsync<string[]>(
            """
            async () => (await axe.run(document, { resultTypes: ['violations'] })).violations.map(
                v => `${v.id}: ${v.help}: ${v.nodes.map(n => n.html).join(', ')}`)
            """
        );
        return string.Join("\n", lines.Select(l => $"{name}: {l}"));
    }

    /// <summary>
    /// No rule of axe-core is broken, nothing is wider than the window, and, where EXAMDOCS_SCREENSHOTS names a folder, a picture is left
    /// there for the eye.
    /// </summary>
    public static async Task RequireAsync(IPage page, string name)
    {
        if (Environment.GetEnvironmentVariable("EXAMDOCS_SCREENSHOTS") is { Length: > 0 } folder)
        {
            foreach (var scheme in new[] { ColorScheme.Light, ColorScheme.Dark })
            {
                await page.EmulateMediaAsync(new PageEmulateMediaOptions { ColorScheme = scheme });
                var file = Path.Combine(folder, $"{name}-{page.ViewportSize!.Width}-{scheme}.png");
                await page.ScreenshotAsync(new PageScreenshotOptions { Path = file, FullPage = true });
            }
        }
        var violations = await ViolationsAsync(page, name);
        Assert.True(violations.Length == 0, violations);
        var overflow = await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        Assert.True(overflow <= 0, $"{name} is {overflow} pixels wider than the window");
    }
}

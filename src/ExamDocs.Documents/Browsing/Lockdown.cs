using PuppeteerSharp;

namespace ExamDocs.Documents.Browsing;

/// <summary>
/// How the browser is kept from every network and file. Each measure alone was seen to leak; together they were not.
/// </summary>
internal static class Lockdown
{
    private static readonly string[] Switches =
    [
        "--proxy-server=http://127.0.0.1:9",
        "\"--proxy-bypass-list=<-loopback>\"",
        "\"--host-resolver-rules=MAP * ~NOTFOUND\"",
        "--disable-extensions",
        "--disable-sync",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-default-apps",
        "--disable-features=NetworkPrediction,Translate,OptimizationHints,MediaRouter",
        "--no-first-run",
        "--no-pings",
        "--disable-gpu",
        "--font-render-hinting=none",
        "--lang=en-GB",
    ];

    public static LaunchOptions Options(string path, TimeSpan limit) =>
        new()
        {
            ExecutablePath = path,
            Headless = true,
            // Over a pipe the browser ends with its parent, however that ends.
            Pipe = true,
            WaitForInitialPage = false,
            Timeout = 20_000,
            ProtocolTimeout = (int)limit.TotalMilliseconds,
            Args = [.. Switches, .. Sandbox()],
        };

    /// <summary>Closes the page to scripts and to every request.</summary>
    public static async Task ApplyAsync(IPage page)
    {
        await page.SetJavaScriptEnabledAsync(false);
        await page.SetRequestInterceptionAsync(true);
        page.Request += static (_, e) => _ = RefuseAsync(e.Request);
    }

    private static async Task RefuseAsync(IRequest request)
    {
        try
        {
            await request.AbortAsync();
        }
        catch (PuppeteerException)
        {
            // The page is gone, and the request with it.
        }
    }

    // Chromium refuses to start its sandbox for root, and only then may it be left out.
    private static string[] Sandbox() => Environment.IsPrivilegedProcess && !OperatingSystem.IsWindows() ? ["--no-sandbox"] : [];
}

using PuppeteerSharp;

namespace ExamDocs.Documents.Browsing;

/// <summary>Starts and ends the browser's program.</summary>
internal static class BrowserProcess
{
    private static readonly TimeSpan StartLimit = TimeSpan.FromSeconds(30);

    /// <param name="path">The browser's program.</param>
    /// <param name="limit">The longest that one document may take.</param>
    /// <param name="startLimit">The longest that it may take to start; null for half a minute.</param>
    /// <exception cref="BrowserDidNotStart">It did not start.</exception>
    public static async Task<IBrowser> LaunchAsync(string path, TimeSpan limit, TimeSpan? startLimit = null)
    {
        var launching = Puppeteer.LaunchAsync(Lockdown.Options(path, limit));
        try
        {
            // A program that ends at once may leave the library waiting for its first word for minutes.
            return await launching.WaitAsync(startLimit ?? StartLimit);
        }
        catch (Exception e)
            when (e is PuppeteerException or ProcessException or IOException or TimeoutException or System.ComponentModel.Win32Exception)
        {
            _ = CloseLateAsync(launching);
            throw new BrowserDidNotStart(path, e);
        }
    }

    private static async Task CloseLateAsync(Task<IBrowser> launching)
    {
        try
        {
            await CloseAsync(await launching);
        }
        catch (Exception e)
            when (e is PuppeteerException or ProcessException or IOException or TimeoutException or System.ComponentModel.Win32Exception)
        {
            // It never started: nothing is left to close.
        }
    }

    /// <summary>Asks it to close, and ends its processes where it does not.</summary>
    public static async Task CloseAsync(IBrowser browser)
    {
        var process = browser.Process;
        try
        {
            await browser.CloseAsync().WaitAsync(TimeSpan.FromSeconds(5));
        }
        catch (Exception e)
            when (e is PuppeteerException or ProcessException or TimeoutException or IOException or InvalidOperationException)
        {
            // A browser that cannot be asked to close is ended below.
        }
        if (process is { HasExited: false })
            process.Kill(entireProcessTree: true);
        await browser.DisposeAsync();
    }
}

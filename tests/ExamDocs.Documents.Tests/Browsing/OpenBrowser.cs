using ExamDocs.Documents.Browsing;
using PuppeteerSharp;

namespace ExamDocs.Documents.Tests.Browsing;

/// <summary>The same browser without the lockdown: it shows that the canaries would have heard.</summary>
internal static class OpenBrowser
{
    /// <param name="html">A page.</param>
    /// <param name="arguments">Switches of the browser.</param>
    /// <param name="file">Where the page is opened from as a file; null where it is not.</param>
    public static async Task<byte[]> PrintAsync(string html, string[] arguments, string? file = null)
    {
        await using var browser = await Puppeteer.LaunchAsync(
            new LaunchOptions
            {
                ExecutablePath = BrowserPath.Find(),
                Pipe = true,
                WaitForInitialPage = false,
                Args = [.. arguments, .. Environment.IsPrivilegedProcess ? (string[])["--no-sandbox"] : []],
            }
        );
        await using var page = await browser.NewPageAsync();
        if (file is null)
            await SetAsync(page, html);
        else
            await page.GoToAsync("file://" + file);
        return await page.PdfDataAsync();
    }

    /// <summary>A page whose parts do not answer is waited for only so long.</summary>
    private static async Task SetAsync(IPage page, string html)
    {
        try
        {
            await page.SetContentAsync(html, new SetContentOptions { Timeout = 5_000 });
        }
        catch (Exception e) when (e is PuppeteerException or TimeoutException)
        {
            // What counts is what it asked for until then.
        }
    }
}

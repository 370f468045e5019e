using System.Collections.Concurrent;
using PuppeteerSharp;

namespace ExamDocs.Documents.Browsing;

/// <summary>
/// A browser that prints HTML to PDF, with no way out to a network or a file. It prints two documents at a time, each in a page of its
/// own: while what one gave is fetched, it works on the other. A large document has the browser for itself, and its page is closed
/// at once, since it holds some hundred mebibytes.
/// </summary>
public sealed class Browser : IPagePrinter, IAsyncDisposable
{
    /// <summary>A document is large from so many characters of HTML: a report of some two hundred items.</summary>
    private const int LargeCharacters = 1_000_000;

    private readonly string _path;
    private readonly TimeSpan _limit;
    private readonly PrintSlots _slots = new();
    private readonly SemaphoreSlim _oneRestarts = new(1, 1);
    private readonly ConcurrentBag<PrintPage> _pages = [];
    private readonly DocumentFonts _fonts;
    private IBrowser _browser;
    private bool _systemLacksFonts;

    private Browser(string path, TimeSpan limit, DocumentFonts fonts, IBrowser browser) =>
        (_path, _limit, _fonts, _browser) = (path, limit, fonts, browser);

    internal int? ProcessId => _browser.Process?.Id;

    /// <param name="path">The browser's program; null to look for one.</param>
    /// <param name="limit">The longest that one document may take; null for two minutes.</param>
    /// <exception cref="BrowserMissing">There is no browser.</exception>
    /// <exception cref="BrowserDidNotStart">It did not start.</exception>
    public static Task<Browser> StartAsync(string? path = null, TimeSpan? limit = null) =>
        StartAsync(path ?? BrowserPath.Find(), limit ?? TimeSpan.FromMinutes(2), DocumentFonts.Within);

    /// <param name="path">The browser's program.</param>
    /// <param name="limit">The longest that one document may take.</param>
    /// <param name="fonts">The fonts of the documents.</param>
    /// <param name="startLimit">The longest that the browser may take to start; null for half a minute.</param>
    internal static async Task<Browser> StartAsync(string path, TimeSpan limit, DocumentFonts fonts, TimeSpan? startLimit = null) =>
        new(path, limit, fonts, await BrowserProcess.LaunchAsync(path, limit, startLimit));

    /// <summary>
    /// Prints a document. A browser that crashes, or that does not answer within a quarter of the limit (now and then one
    /// hangs), is replaced, and the document tried once more.
    /// </summary>
    /// <exception cref="PrintException">The machinery failed; nothing was printed.</exception>
    public async Task<byte[]> PrintAsync(string html, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(html);
        using var turn = await _slots.TakeAsync(all: IsLarge(html), cancellation);
        // What was needed to make a large page goes back before the browser takes as much.
        if (IsLarge(html))
            GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
        return DocumentFonts.AreAskedForBy(html)
            ? await PrintInOwnTypeAsync(html, cancellation)
            : await PrintWithSecondTryAsync(html, cancellation);
    }

    public async ValueTask DisposeAsync()
    {
        await BrowserProcess.CloseAsync(_browser);
        _slots.Dispose();
        _oneRestarts.Dispose();
    }

    /// <summary>Whether a document takes some hundred mebibytes to print, and as much to read back.</summary>
    public static bool IsLarge(string html)
    {
        ArgumentNullException.ThrowIfNull(html);
        return html.Length >= LargeCharacters;
    }

    // Whether the system has the fonts, only a print of its browser tells for certain, on every system alike.
    private async Task<byte[]> PrintInOwnTypeAsync(string html, CancellationToken cancellation)
    {
        if (!_systemLacksFonts)
        {
            var pdf = await PrintWithSecondTryAsync(html, cancellation);
            if (DocumentFonts.AreIn(pdf))
                return pdf;
            _systemLacksFonts = true;
        }
        if (!_fonts.AreThere)
            throw new FontsMissing();
        var own = await PrintWithSecondTryAsync(_fonts.EmbeddedIn(html), cancellation);
        return DocumentFonts.AreIn(own) ? own : throw new FontsMissing();
    }

    private async Task<byte[]> PrintWithSecondTryAsync(string html, CancellationToken cancellation)
    {
        var browser = _browser;
        try
        {
            return await PrintOnceAsync(browser, html, _limit / 4, cancellation);
        }
        catch (Exception e) when (e is BrowserCrashed or PrintTimedOut)
        {
            browser = await RestartAsync(browser);
        }
        try
        {
            return await PrintOnceAsync(browser, html, _limit, cancellation);
        }
        catch (PrintTimedOut)
        {
            await RestartAsync(browser);
            throw;
        }
    }

    private async Task<byte[]> PrintOnceAsync(IBrowser browser, string html, TimeSpan limit, CancellationToken cancellation)
    {
        using var job = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        var printing = PrintInPageAsync(browser, html, limit);
        var first = await Task.WhenAny(printing, Task.Delay(limit, job.Token));
        if (first == printing)
        {
            await job.CancelAsync();
            return await printing;
        }
        Forget(printing);
        cancellation.ThrowIfCancellationRequested();
        throw new PrintTimedOut(limit);
    }

    /// <summary>The page stays for another document, unless this one spoilt it.</summary>
    private async Task<byte[]> PrintInPageAsync(IBrowser browser, string html, TimeSpan limit)
    {
        var page = await PageForAsync(html, browser, limit);
        var isSound = false;
        try
        {
            var pdf = await page.PrintAsync(html, limit);
            isSound = !page.IsUsedUp && !IsLarge(html);
            return pdf;
        }
        finally
        {
            // A print that nobody waits for any longer may end here after the browser was replaced.
            if (isSound && browser == _browser)
                _pages.Add(page);
            else
                await page.DisposeAsync();
        }
    }

    private async Task<PrintPage> PageForAsync(string html, IBrowser browser, TimeSpan limit)
    {
        while (_pages.TryTake(out var page))
        {
            if (page.IsOf(browser) && page.Takes(html))
                return page;
            await page.DisposeAsync();
        }
        return await PrintPage.OpenAsync(browser, limit);
    }

    /// <summary>Replaces a browser, unless the other document has replaced it already.</summary>
    private async Task<IBrowser> RestartAsync(IBrowser broken)
    {
        await _oneRestarts.WaitAsync();
        try
        {
            if (_browser == broken)
            {
                await BrowserProcess.CloseAsync(broken);
                _browser = await BrowserProcess.LaunchAsync(_path, _limit);
            }
            return _browser;
        }
        finally
        {
            _oneRestarts.Release();
        }
    }

    // Its failure is already told as a time-out; observed here so that it is not reported a second time.
    private static void Forget(Task task) =>
        _ = task.ContinueWith(
            static t => _ = t.Exception,
            CancellationToken.None,
            TaskContinuationOptions.OnlyOnFaulted,
            TaskScheduler.Default
        );
}

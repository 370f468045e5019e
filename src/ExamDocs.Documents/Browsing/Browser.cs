using PuppeteerSharp;

namespace ExamDocs.Documents.Browsing;

/// <summary>A browser that prints HTML to PDF, one document at a time, with no way out to a network or a file.</summary>
public sealed class Browser : IAsyncDisposable
{
    private static readonly TimeSpan StartLimit = TimeSpan.FromSeconds(30);

    private readonly string _path;
    private readonly TimeSpan _limit;
    private readonly SemaphoreSlim _one = new(1, 1);
    private readonly DocumentFonts _fonts;
    private IBrowser _browser;
    private PrintPage? _page;
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
        new(path, limit, fonts, await LaunchAsync(path, limit, startLimit ?? StartLimit));

    /// <summary>
    /// Prints a document. A browser that crashes, or that does not answer within a quarter of the limit (now and then one
    /// hangs), is replaced, and the document tried once more.
    /// </summary>
    /// <exception cref="PrintException">The machinery failed; nothing was printed.</exception>
    public async Task<byte[]> PrintAsync(string html, CancellationToken cancellation = default)
    {
        await _one.WaitAsync(cancellation);
        try
        {
            return DocumentFonts.AreAskedForBy(html)
                ? await PrintInOwnTypeAsync(html, cancellation)
                : await PrintWithSecondTryAsync(html, cancellation);
        }
        finally
        {
            _one.Release();
        }
    }

    public async ValueTask DisposeAsync()
    {
        await CloseAsync(_browser);
        _one.Dispose();
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
        try
        {
            return await PrintOnceAsync(html, _limit / 4, cancellation);
        }
        catch (Exception e) when (e is BrowserCrashed or PrintTimedOut)
        {
            await RestartAsync();
        }
        try
        {
            return await PrintOnceAsync(html, _limit, cancellation);
        }
        catch (PrintTimedOut)
        {
            await RestartAsync();
            throw;
        }
    }

    private async Task<byte[]> PrintOnceAsync(string html, TimeSpan limit, CancellationToken cancellation)
    {
        using var job = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        var printing = PrintInPageAsync(html, limit);
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

    /// <summary>The page stays for the next document, unless this one spoilt it.</summary>
    private async Task<byte[]> PrintInPageAsync(string html, TimeSpan limit)
    {
        var browser = _browser;
        var page = Interlocked.Exchange(ref _page, null) ?? await PrintPage.OpenAsync(browser, limit);
        var isSound = false;
        try
        {
            var pdf = await page.PrintAsync(html, limit);
            isSound = !page.IsUsedUp;
            return pdf;
        }
        finally
        {
            // A print that nobody waits for any longer may end here after the browser was replaced, or beside another one.
            if (!isSound || browser != _browser || Interlocked.CompareExchange(ref _page, page, null) is not null)
                await page.DisposeAsync();
        }
    }

    private async Task RestartAsync()
    {
        _page = null;
        await CloseAsync(_browser);
        _browser = await LaunchAsync(_path, _limit, StartLimit);
    }

    private static async Task<IBrowser> LaunchAsync(string path, TimeSpan limit, TimeSpan startLimit)
    {
        var launching = Puppeteer.LaunchAsync(Lockdown.Options(path, limit));
        try
        {
            // A program that ends at once may leave the library waiting for its first word for minutes.
            return await launching.WaitAsync(startLimit);
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

    private static async Task CloseAsync(IBrowser browser)
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

    // Its failure is already told as a time-out; observed here so that it is not reported a second time.
    private static void Forget(Task task) =>
        _ = task.ContinueWith(
            static t => _ = t.Exception,
            CancellationToken.None,
            TaskContinuationOptions.OnlyOnFaulted,
            TaskScheduler.Default
        );
}

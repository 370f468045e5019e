using PuppeteerSharp;

namespace ExamDocs.Documents.Browsing;

/// <summary>
/// A page that prints one document after the other: for a short document, to open a page takes longer than to print it. It is blank
/// again before each document, so that nothing of one is in the next, and given up before it has held so many that it grows.
/// </summary>
internal sealed class PrintPage : IAsyncDisposable
{
    private const int MostDocuments = 25;
    private const int MostCharacters = 5_000_000;

    private static readonly PdfOptions Paper = new()
    {
        PreferCSSPageSize = true,
        PrintBackground = true,
        Tagged = true,
        Outline = true,
        // Its own limit of 30 seconds is off: the one given for the whole job governs.
        Timeout = 0,
    };

    private readonly IBrowser _browser;
    private readonly IPage _page;
    private readonly Task _crash;
    private int _documents;
    private long _characters;

    private PrintPage(IBrowser browser, IPage page) => (_browser, _page, _crash) = (browser, page, Crash(page));

    public bool IsUsedUp => _documents >= MostDocuments || _characters >= MostCharacters || _page.IsClosed;

    /// <exception cref="BrowserCrashed">The browser or the page died.</exception>
    /// <exception cref="PrintTimedOut">A step of it took longer than the limit.</exception>
    /// <exception cref="PrintFailed">It could not be opened.</exception>
    public static Task<PrintPage> OpenAsync(IBrowser browser, TimeSpan limit) => ToldAsync(browser, limit, async () =>
        {
            var page = new PrintPage(browser, await browser.NewPageAsync());
            await Lockdown.ApplyAsync(page._page);
            return page;
        });

    /// <exception cref="BrowserCrashed">The browser or the page died.</exception>
    /// <exception cref="PrintTimedOut">A step of it took longer than the limit.</exception>
    /// <exception cref="PrintFailed">It answered with anything but a PDF.</exception>
    public Task<byte[]> PrintAsync(string html, TimeSpan limit) => ToldAsync(_browser, limit, async () =>
        {
            if (_documents++ > 0)
                await FirstAsync(_page.GoToAsync("about:blank"), _crash);
            _characters += html.Length;
            await FirstAsync(_page.SetContentAsync(html), _crash);
            var pdf = _page.PdfDataAsync(Paper);
            await FirstAsync(pdf, _crash);
            var printed = Whole(await pdf);
            ElementIds.Renumber(printed);
            return printed;
        });

    public async ValueTask DisposeAsync()
    {
        try
        {
            await _page.DisposeAsync();
        }
        catch (Exception e) when (e is PuppeteerException or TimeoutException or IOException or ObjectDisposedException)
        {
            // A page that died needs no closing.
        }
    }

    private static async Task<T> ToldAsync<T>(IBrowser browser, TimeSpan limit, Func<Task<T>> work)
    {
        try
        {
            return await work();
        }
        catch (Exception e) when (e is TargetClosedException or CrashException or IOException or ObjectDisposedException)
        {
            throw new BrowserCrashed(e);
        }
        catch (TimeoutException)
        {
            throw new PrintTimedOut(limit);
        }
        catch (PuppeteerException e)
        {
            throw browser.IsClosed || browser.Process is { HasExited: true }
                ? new BrowserCrashed(e)
                : new PrintFailed($"printing failed: {e.Message}", e);
        }
    }

    // A page whose renderer has died may never answer: whichever comes first is believed.
    private static async Task FirstAsync(Task work, Task crash)
    {
        if (await Task.WhenAny(work, crash) == crash)
        {
            _ = work.ContinueWith(
                static t => _ = t.Exception,
                CancellationToken.None,
                TaskContinuationOptions.OnlyOnFaulted,
                TaskScheduler.Default
            );
            await crash;
        }
        await work;
    }

    private static Task Crash(IPage page)
    {
        var crashed = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        page.Error += (_, e) => crashed.TrySetException(new CrashException(e.Error));
        page.Close += (_, _) => crashed.TrySetException(new CrashException("the page was closed"));
        _ = crashed.Task.ContinueWith(
            static t => _ = t.Exception,
            CancellationToken.None,
            TaskContinuationOptions.OnlyOnFaulted,
            TaskScheduler.Default
        );
        return crashed.Task;
    }

    private static byte[] Whole(byte[] pdf) =>
        pdf.AsSpan().StartsWith("%PDF-"u8) && pdf.AsSpan(Math.Max(0, pdf.Length - 64)).IndexOf("%%EOF"u8) >= 0
            ? pdf
            : throw new PrintFailed("the browser did not answer with a whole PDF");

    private sealed class CrashException(string message) : Exception(message);
}

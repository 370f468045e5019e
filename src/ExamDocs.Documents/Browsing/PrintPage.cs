using PuppeteerSharp;

namespace ExamDocs.Documents.Browsing;

/// <summary>
/// A page that prints one document after the other: for a short document, to open a page takes longer than to print it. Each is put
/// in whole in place of the one before, of which nothing stays. Since each takes a little longer than the one before, the page is given
/// up after so many.
/// </summary>
internal sealed class PrintPage : IAsyncDisposable
{
    private const int MostDocuments = 100;
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
    private readonly string _frame;
    private readonly Task _crash;
    private string? _policy;
    private int _documents;
    private long _characters;

    private PrintPage(IBrowser browser, IPage page) => (_browser, _page, _frame, _crash) = (browser, page, page.MainFrame.Id, Crash(page));

    public bool IsUsedUp => _documents >= MostDocuments || _characters >= MostCharacters || _page.IsClosed;

    public bool IsOf(IBrowser browser) => _browser == browser;

    /// <summary>True where nothing of the documents before keeps one from being printed as in a page of its own.</summary>
    // What a document may load stays forbidden to those after it in the same page: policies add up.
    public bool Takes(string html) => _policy is null || string.Equals(_policy, Policy(html), StringComparison.Ordinal);

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
            _documents++;
            _policy ??= Policy(html);
            _characters += html.Length;
            await FirstAsync(ShowAsync(html), _crash);
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

    /// <summary>Puts a new document in the place of the old one, and waits until its pictures and fonts are there.</summary>
    // The library writes into the document that is there. That one would have to be emptied first, half of the time that a label takes.
    private async Task ShowAsync(string html)
    {
        var loaded = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        void OnLoad(object? sender, EventArgs e) => loaded.TrySetResult();
        _page.Load += OnLoad;
        try
        {
            var content = new Dictionary<string, object>(StringComparer.Ordinal) { ["frameId"] = _frame, ["html"] = html };
            await _page.Client.SendAsync("Page.setDocumentContent", content);
            await loaded.Task;
            // Fonts are asked for by the first layout, which otherwise is the print itself.
            if (html.Contains("@font-face", StringComparison.Ordinal))
                await _page.EvaluateExpressionAsync("(document.body.offsetHeight, document.fonts.ready.then(() => 0))");
        }
        finally
        {
            _page.Load -= OnLoad;
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

    private static string Policy(string html)
    {
        var from = html.IndexOf("<meta http-equiv=\"Content-Security-Policy\"", StringComparison.Ordinal);
        return from < 0 ? "" : html[from..html.IndexOf('>', from)];
    }

    private static byte[] Whole(byte[] pdf) =>
        pdf.AsSpan().StartsWith("%PDF-"u8) && pdf.AsSpan(Math.Max(0, pdf.Length - 64)).IndexOf("%%EOF"u8) >= 0
            ? pdf
            : throw new PrintFailed("the browser did not answer with a whole PDF");

    private sealed class CrashException(string message) : Exception(message);
}

using PuppeteerSharp;

namespace ExamDocs.Documents.Browsing;

/// <summary>One document in one fresh page.</summary>
internal static class PrintPage
{
    private static readonly PdfOptions Paper = new()
    {
        PreferCSSPageSize = true,
        PrintBackground = true,
        Tagged = true,
        Outline = true,
        // Its own limit of 30 seconds is off: the one given for the whole job governs.
        Timeout = 0,
    };

    /// <exception cref="BrowserCrashed">The browser or the page died.</exception>
    /// <exception cref="PrintTimedOut">A step of it took longer than the limit.</exception>
    /// <exception cref="PrintFailed">It answered with anything but a PDF.</exception>
    public static async Task<byte[]> PrintAsync(IBrowser browser, string html, TimeSpan limit)
    {
        try
        {
            await using var page = await browser.NewPageAsync();
            var crash = Crash(page);
            await Lockdown.ApplyAsync(page);
            await FirstAsync(page.SetContentAsync(html), crash);
            var pdf = page.PdfDataAsync(Paper);
            await FirstAsync(pdf, crash);
            return Whole(await pdf);
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

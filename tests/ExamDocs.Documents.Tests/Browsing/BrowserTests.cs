using System.Diagnostics;
using System.Globalization;
using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.Tests.Printing;

namespace ExamDocs.Documents.Tests.Browsing;

public sealed class BrowserTests
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_killed_browser_is_replaced_and_leaves_nothing_behind()
    {
        var browser = await Browser.StartAsync();
        var first = browser.ProcessId!.Value;
        using (var process = Process.GetProcessById(first))
        {
            process.Kill();
            await process.WaitForExitAsync(Cancellation);
        }
        Assert.Contains("again", Tool.PdfText(await browser.PrintAsync("<p>again</p>", Cancellation)), StringComparison.Ordinal);
        var second = browser.ProcessId!.Value;
        Assert.NotEqual(first, second);
        await browser.DisposeAsync();
        await Gone(first);
        await Gone(second);
    }

    [Fact]
    public async Task A_browser_killed_in_the_middle_of_a_job_still_gives_the_document()
    {
        await using var browser = await Browser.StartAsync();
        var long_ = string.Concat(Enumerable.Range(0, 5_000).Select(n => $"<p>line {n}</p>"));
        var printing = browser.PrintAsync(long_, Cancellation);
        await Task.Delay(150, Cancellation);
        using (var process = Process.GetProcessById(browser.ProcessId!.Value))
            process.Kill();
        Assert.Contains("line 4999", Tool.PdfText(await printing), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_print_that_takes_too_long_is_named_and_the_next_one_works()
    {
        await using var browser = await Browser.StartAsync(null, TimeSpan.FromSeconds(5));
        var endless = "<style>div{display:grid}</style>" + string.Concat(Enumerable.Repeat("<div><p>x", 400_000));
        await Assert.ThrowsAsync<PrintTimedOut>(() => browser.PrintAsync(endless, Cancellation));
        Assert.Contains("next", Tool.PdfText(await browser.PrintAsync("<p>next</p>", Cancellation)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_browser_that_hangs_is_replaced_and_the_document_printed()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "No process can be stopped by a signal here.");
        await using var browser = await Browser.StartAsync(null, TimeSpan.FromSeconds(12));
        var hung = browser.ProcessId!.Value;
        using (var stop = Process.Start("kill", ["-STOP", hung.ToString(CultureInfo.InvariantCulture)]))
            await stop.WaitForExitAsync(Cancellation);
        Assert.Contains("whole", Tool.PdfText(await browser.PrintAsync("<p>whole</p>", Cancellation)), StringComparison.Ordinal);
        Assert.NotEqual(hung, browser.ProcessId);
        Assert.Throws<ArgumentException>(() => Process.GetProcessById(hung));
    }

    /// <summary>Whoever waits for the one replaces the browser under the other: both are printed, and it is replaced once.</summary>
    [Fact]
    public async Task A_browser_killed_with_two_documents_in_it_prints_both()
    {
        await using var browser = await Browser.StartAsync();
        string[] long_ =
        [
            .. Enumerable.Range(0, 4).Select(d => string.Concat(Enumerable.Range(0, 3_000).Select(n => $"<p>{d} line {n}</p>"))),
        ];
        var printing = long_.Select(html => browser.PrintAsync(html, Cancellation)).ToList();
        await Task.Delay(250, Cancellation);
        var killed = browser.ProcessId!.Value;
        using (var process = Process.GetProcessById(killed))
            process.Kill();
        var printed = await Task.WhenAll(printing);
        for (var d = 0; d < long_.Length; d++)
            Assert.Contains($"{d} line 2999", Tool.PdfText(printed[d]), StringComparison.Ordinal);
        await Gone(killed);
    }

    /// <summary>The same page gives the same bytes but for the time, whatever is printed before it and beside it.</summary>
    [Fact]
    public async Task What_is_printed_beside_a_document_leaves_no_trace_in_it()
    {
        await using var browser = await Browser.StartAsync();
        const string Table = "<html lang=en><title>t</title><table><tr><th>a<th>b<tr><td>1<td>2</table>";
        var alone = Untimed(await browser.PrintAsync(Table, Cancellation));
        var others = Enumerable.Range(0, 12).Select(n => browser.PrintAsync(n % 2 == 0 ? Table : $"<h1>{n}</h1>{Table}", Cancellation));
        var printed = await Task.WhenAll(others);
        Assert.All(printed.Where((_, n) => n % 2 == 0), pdf => Assert.Equal(alone, Untimed(pdf)));
    }

    private static string Untimed(byte[] pdf) =>
        System.Text.RegularExpressions.Regex.Replace(System.Text.Encoding.Latin1.GetString(pdf), @"\(D:[^)]*\)", "");

    [Fact]
    public async Task A_program_that_is_no_browser_is_named_without_a_long_wait()
    {
        var watch = Stopwatch.StartNew();
        var fault = await Assert.ThrowsAsync<BrowserDidNotStart>(() =>
            Browser.StartAsync("/bin/true", TimeSpan.FromMinutes(2), DocumentFonts.Within, TimeSpan.FromSeconds(2))
        );
        Assert.Contains("/bin/true", fault.Message, StringComparison.Ordinal);
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 60);
    }

    [Fact]
    public void A_missing_browser_is_told_with_what_to_install()
    {
        var fault = Assert.Throws<BrowserMissing>(() => BrowserPath.Find(["/usr/none"], null, _ => false));
        Assert.Contains("chromium-headless-shell", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_browser_that_was_named_is_used_or_refused_and_never_passed_over()
    {
        Assert.Equal("/opt/mine", BrowserPath.Find(["/usr/other"], "/opt/mine", _ => true));
        Assert.Contains(
            "/opt/mine",
            Assert.Throws<BrowserMissing>(() => BrowserPath.Find(["/usr/other"], "/opt/mine", p => p != "/opt/mine")).Message,
            StringComparison.Ordinal
        );
    }

    private static async Task Gone(int id)
    {
        for (var tries = 0; tries < 50 && IsAlive(id); tries++)
            await Task.Delay(100, Cancellation);
        Assert.False(IsAlive(id), $"process {id} is still there");
    }

    private static bool IsAlive(int id)
    {
        try
        {
            using var process = Process.GetProcessById(id);
            return !process.HasExited;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }
}

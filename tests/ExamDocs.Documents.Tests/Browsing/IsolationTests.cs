using System.Text;
using System.Text.RegularExpressions;
using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.Tests.Printing;
using PuppeteerException = PuppeteerSharp.PuppeteerException;

namespace ExamDocs.Documents.Tests.Browsing;

/// <summary>
/// A page that tries everything reaches no network, asks for no name and reads no file. Beside each test stands the same
/// page in a browser without the lockdown, where it does: so the test can fail.
/// </summary>
public sealed class IsolationTests
{
    private const string Secret = "a secret that stands in a file";

    private static readonly TimeSpan Wait = TimeSpan.FromSeconds(1);

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_hostile_page_opens_no_connection()
    {
        await using var canaries = new Canaries();
        await using var browser = await Browser.StartAsync();
        var pdf = await browser.PrintAsync(Hostile(canaries.Port), Cancellation);
        await LeaveAsync(
            browser,
            $"<meta http-equiv='refresh' content='0;url=http://127.0.0.1:{canaries.Port}/refresh'><p>about to leave</p>"
        );
        Assert.Equal(0, await canaries.CountAfter(Wait));
        Assert.Contains("still printed", Tool.PdfText(pdf), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_the_lockdown_it_opens_many()
    {
        await using var canaries = new Canaries();
        await PrintOpenAsync(Hostile(canaries.Port), []);
        Assert.True(await canaries.CountAfter(Wait) > 0);
        var kinds = canaries
            .Heard.Select(line => Regex.Match(line, "^[A-Z]+ /([a-z-]+)", RegexOptions.None, TimeSpan.FromSeconds(1)).Groups[1].Value)
            .Where(k => k.Length > 0)
            .Distinct(StringComparer.Ordinal)
            .ToList();
        Assert.True(kinds.Count >= 15, $"{kinds.Count} kinds: {string.Join(' ', kinds)}");
    }

    [Fact]
    public async Task A_name_is_not_even_asked_for()
    {
        // Under this switch every name is this computer: a name asked for becomes a connection that is heard.
        await using var canaries = new Canaries();
        var html = Canaries.Page($"http://canary.example:{canaries.Port}", "/none");
        await PrintOpenAsync(html, ["\"--host-resolver-rules=MAP canary.example 127.0.0.1\""]);
        Assert.True(await canaries.CountAfter(Wait) > 0, "the names would have been heard");

        await using var silent = new Canaries();
        await using var browser = await Browser.StartAsync();
        await browser.PrintAsync(Canaries.Page($"http://localhost:{silent.Port}", "/none"), Cancellation);
        Assert.Equal(0, await silent.CountAfter(Wait));
        Assert.Empty(ResolverSockets(browser.ProcessId!.Value));
    }

    [Fact]
    public async Task A_file_is_not_read()
    {
        var (file, folder) = SecretFile();
        await using var browser = await Browser.StartAsync();
        var text = Tool.PdfText(await browser.PrintAsync(Canaries.Page("http://127.0.0.1:9", file), Cancellation));
        folder.Delete(recursive: true);
        Assert.Contains("still printed", text, StringComparison.Ordinal);
        Assert.DoesNotContain("secret", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_the_lockdown_a_page_that_is_a_file_reads_another()
    {
        var (file, folder) = SecretFile();
        var page = Path.Combine(folder.FullName, "page.html");
        await File.WriteAllTextAsync(page, $"<p>still printed</p><iframe src='file://{file}'></iframe>", Cancellation);
        var text = Tool.PdfText(await OpenBrowser.PrintAsync("", [], page));
        folder.Delete(recursive: true);
        Assert.Contains(Secret, text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_of_a_document_is_in_the_one_printed_after_it()
    {
        const string Loud = """
            <html lang="fr"><head><title>Before</title><meta http-equiv="refresh" content="0;url=data:text/html,elsewhere">
            <style>@page { size: A6 landscape; @bottom-left { content: "before" } } * { color: red !important; font-size: 40pt }</style>
            </head><body style="zoom: 3"><h1>Before</h1><p id="a" style="page-break-after: always">before</p></body></html>
            """;
        const string Plain = """
            <html lang="en"><head><title>After</title><style>@page { size: A4 }</style></head><body><h1>After</h1><p>after</p>
            <table><tr><th id="x">one<th id="y">two<tr><td headers="x">1<td headers="x y">2</table>
            <svg role="img" aria-label="node00000077" width="9" height="9"><rect width="9" height="9"/></svg></body></html>
            """;
        await using var browser = await Browser.StartAsync();

        var fresh = Looks(await browser.PrintAsync(Plain, Cancellation));
        for (var round = 0; round < 2; round++)
        {
            Assert.Contains("before", Tool.PdfText(await browser.PrintAsync(Loud, Cancellation)), StringComparison.Ordinal);
            var after = await browser.PrintAsync(Plain, Cancellation);
            Assert.Equal(fresh, Looks(after));
            var ids = Encoding.Latin1.GetString(after);
            Assert.Contains("/ID (node00000001)", ids, StringComparison.Ordinal);
            Assert.Contains("/Headers [(node00000002)]", ids, StringComparison.Ordinal);
            Assert.Contains("/Alt (node00000077)", ids, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task One_document_after_another_of_any_number_is_printed_whole()
    {
        await using var browser = await Browser.StartAsync();
        // More than one page of the browser takes before it is given up.
        for (var n = 0; n < 60; n++)
            Assert.Equal($"document {n}", Tool.PdfText(await browser.PrintAsync($"<p>document {n}</p>", Cancellation)).Trim());
    }

    private static (string Text, string Tags, string Info, string Picture) Looks(byte[] pdf) =>
        (
            Tool.PdfText(pdf),
            Tool.Structure(pdf),
            string.Join(
                '\n',
                Tool.PdfInfo(pdf)
                    .Split('\n')
                    .Where(l => l.StartsWith("Title", StringComparison.Ordinal) || l.StartsWith("Page", StringComparison.Ordinal))
            ),
            Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(Tool.ColourRaster(pdf, 80)))
        );

    private static string Hostile(int port) => Canaries.Page($"http://127.0.0.1:{port}", "/etc/hostname");

    private static async Task PrintOpenAsync(string html, string[] arguments)
    {
        try
        {
            await OpenBrowser.PrintAsync(html, arguments);
        }
        catch (PuppeteerException)
        {
            // The page has left by its own form; what it asked for is heard all the same.
        }
    }

    private static async Task LeaveAsync(Browser browser, string html)
    {
        try
        {
            await browser.PrintAsync(html, Cancellation);
        }
        catch (PrintException)
        {
            // Refused: as good an answer as a printed page.
        }
    }

    private static (string File, DirectoryInfo Folder) SecretFile()
    {
        var folder = Directory.CreateTempSubdirectory("canary-");
        var file = Path.Combine(folder.FullName, "secret.txt");
        File.WriteAllText(file, Secret);
        return (file, folder);
    }

    /// <summary>UDP sockets of the browser and its children that have another end: whoever asks for a name has one.</summary>
    private static List<string> ResolverSockets(int browser)
    {
        var inodes = Family(browser).SelectMany(SocketsOf).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. new[] { "/proc/net/udp", "/proc/net/udp6" }
                .Where(File.Exists)
                .SelectMany(f => File.ReadLines(f).Skip(1))
                .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
                .Where(fields => inodes.Contains(fields[9]) && !fields[2].EndsWith(":0000", StringComparison.Ordinal))
                .Select(fields => fields[2]),
        ];
    }

    private static IEnumerable<int> Family(int parent) =>
        Directory
            .EnumerateDirectories("/proc")
            .Select(d => int.TryParse(Path.GetFileName(d), out var id) ? id : 0)
            .Where(id => id > 0 && ParentOf(id) == parent)
            .SelectMany(Family)
            .Prepend(parent);

    private static int ParentOf(int id)
    {
        try
        {
            var stat = File.ReadAllText($"/proc/{id}/stat");
            return int.Parse(stat[(stat.LastIndexOf(')') + 2)..].Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return 0;
        }
    }

    private static IEnumerable<string> SocketsOf(int id)
    {
        try
        {
            return
            [
                .. Directory
                    .EnumerateFiles($"/proc/{id}/fd")
                    .Select(f => new FileInfo(f).LinkTarget ?? "")
                    .Where(t => t.StartsWith("socket:[", StringComparison.Ordinal))
                    .Select(t => t[8..^1]),
            ];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }
}

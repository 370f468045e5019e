using System.Diagnostics;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using System.Text;
using ExamDocs.Cli.Tests;
using ExamDocs.Documents.Browsing;
using ExamDocs.Register;
using ExamDocs.Register.Storage;
using ExamDocs.Register.Work;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Working;

namespace ExamDocs.SharedRegister.Tests;

/// <summary>
/// <c>issue --workers</c>: others print, and this machine numbers, reads back and signs, with no browser of its own. A worker that prints
/// something else gets nothing through.
/// </summary>
public sealed class PagesByWorkersTests : WorkplaceOfWork
{
    private static readonly string Current = typeof(DoWork).Assembly.GetName().Version!.ToString(3);

    private readonly Examdocs _apart = new(apart: true);
    private readonly List<Process> _workers = [];

    [Fact]
    public async Task Pages_printed_by_workers_are_signed_here_and_are_the_documents_that_issue_makes_by_itself()
    {
        Work().Dispose();
        Begin();
        WriteKey();
        var visit = ManyItems.Of(12).Write(_apart, "visit.json");
        string[] call = ["issue", visit, "--per-item", "--sign", "key.p12"];
        _apart.With("EXAMDOCS_BROWSER", _apart.At("no-browser-here"));
        var shared = await _apart.RunAsync([.. call, "--out", "shared", "--workers", "--register", Database]);
        Assert.True(shared.ExitCode == 0, shared.Out + shared.Err);
        _apart.Without("EXAMDOCS_BROWSER");
        await _apart.RunAsync("register", "create", "--register", "alone.db");
        var alone = await _apart.RunAsync([.. call, "--out", "alone", "--register", "alone.db"]);
        Assert.Equal(0, alone.ExitCode);
        Assert.Equal(24, Pdfs("alone").Count);
        Assert.Equal(Pdfs("alone"), Pdfs("shared"));
        Assert.All(Pdfs("shared"), name =>
            Assert.Contains(
                "ETSI.CAdES.detached",
                Encoding.Latin1.GetString(File.ReadAllBytes(_apart.At($"shared/{name}"))),
                StringComparison.Ordinal
            )
        );
        var verified = await _apart.RunAsync([
            "verify",
            .. Pdfs("shared").Select(f => $"shared/{f}"),
            "--register",
            Database,
            "--trust",
            "certificate.pem",
        ]);
        Assert.True(verified.ExitCode == 0, verified.Out + verified.Err);
        using var register = DocumentRegister.OpenToRead(Database);
        Assert.Empty(register.Check());
        Assert.Empty(register.Voided());
    }

    [Fact]
    public async Task A_worker_that_is_killed_leaves_its_pages_to_another_and_each_document_is_out_once()
    {
        Work().Dispose();
        var killed = Begin();
        var visit = ManyItems.Of(24).Write(_apart, "visit.json");
        var issuing = _apart.RunAsync(["issue", visit, "--out", "out", "--only", "due-label", "--workers", "--register", Database]);
        while (CountIssued() == 0 && !issuing.IsCompleted)
            await Task.Delay(20, TestContext.Current.CancellationToken);
        killed.Kill();
        Begin();
        var issued = await issuing;
        Assert.True(issued.ExitCode == 0, issued.Out + issued.Err);
        Assert.Equal(24, Pdfs("out").Count);
        using var register = DocumentRegister.OpenToRead(Database);
        Assert.Equal(24, register.Documents().DistinctBy(d => d.Items[0], StringComparer.Ordinal).Count());
        Assert.Empty(register.Voided());
        Assert.Empty(register.Check());
    }

    [Fact]
    public async Task A_worker_that_prints_other_words_gets_no_document_through()
    {
        Work().Dispose();
        using var stop = new CancellationTokenSource();
        var forging = ForgeAsync(html => html.Replace("HC-0001-1", "HC-0002-2", StringComparison.Ordinal), stop.Token);
        var visit = ManyItems.Of(1).Write(_apart, "visit.json");
        var run = await _apart.RunAsync(["issue", visit, "--out", "out", "--workers", "--register", Database]);
        await stop.CancelAsync();
        Assert.True(await forging > 1);
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("PRN002", run.Out + run.Err, StringComparison.Ordinal);
        Assert.Empty(Pdfs("out"));
        using var register = DocumentRegister.OpenToRead(Database);
        Assert.Empty(register.Documents());
    }

    [Fact]
    public async Task Where_no_worker_is_there_the_sentence_says_what_to_start_and_no_page_is_left()
    {
        Work().Dispose();
        await using var printer = PagesByWorkers.Open(Database);
        var away = await Assert.ThrowsAsync<WorkersAway>(() =>
            printer.RequireAsync(TimeSpan.FromSeconds(1), TestContext.Current.CancellationToken)
        );
        Assert.Contains("start examdocs work", away.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(Server.Password, away.Message, StringComparison.Ordinal);
        using var connection = Connect();
        Assert.Equal(0, connection.Number("SELECT count(*) FROM examdocs_work.page"));
    }

    [Fact]
    public async Task Where_workers_print_nothing_no_number_is_taken()
    {
        Work().Dispose();
        var visit = ManyItems.Of(1).Write(_apart, "visit.json");
        using var stop = new CancellationTokenSource();
        var refusing = ForgeAsync(_ => null, stop.Token);
        var run = await _apart.RunAsync(["issue", visit, "--out", "out", "--workers", "--register", Database]);
        await stop.CancelAsync();
        await refusing;
        Assert.Equal(3, run.ExitCode);
        Assert.Contains("stopped: ", run.Err, StringComparison.Ordinal);
        using var register = DocumentRegister.OpenToRead(Database);
        Assert.Empty(register.Documents());
        Assert.Empty(register.Voided());
    }

    [Fact]
    public async Task A_register_in_a_file_has_no_workers()
    {
        var visit = ManyItems.Of(1).Write(_apart, "visit.json");
        await _apart.RunAsync("register", "create", "--register", "kit.db");
        var run = await _apart.RunAsync(["issue", visit, "--out", "out", "--workers", "--register", "kit.db"]);
        Assert.Equal(3, run.ExitCode);
        Assert.Contains("is a file", run.Err, StringComparison.Ordinal);
        Assert.Empty(Pdfs("out"));
    }

    /// <returns>How many pages it was asked for.</returns>
    private async Task<int> ForgeAsync(Func<string, string?> forged, CancellationToken stop)
    {
        using var pages = SharedPages.Open(Database);
        await using var browser = await Browser.StartAsync();
        for (var asked = 0; ; asked++)
        {
            ClaimedPage? page;
            while ((page = pages.Claim(Current, Long)) is null)
            {
                if (stop.IsCancellationRequested)
                    return asked;
                await Task.Delay(20, CancellationToken.None);
            }
            if (forged(Encoding.UTF8.GetString(page.Html)) is { } html)
                pages.Answer(page, await browser.PrintAsync(html, CancellationToken.None));
            else
                pages.Refuse(page, "there is no paper");
        }
    }

    private int CountIssued()
    {
        using var register = DocumentRegister.OpenToRead(Database);
        return register.Documents().Count;
    }

    private List<string> Pdfs(string folder) =>
        Directory.Exists(_apart.At(folder))
            ? [.. Directory.EnumerateFiles(_apart.At(folder), "*.pdf").Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal)]
            : [];

    private Process Begin()
    {
        var worker = _apart.Begin(["work", "--quiet", "--register", Database]);
        _workers.Add(worker);
        return worker;
    }

    private void WriteKey()
    {
        using var rsa = RSA.Create(2048);
        var request = new CertificateRequest("CN=Ada Invented", rsa, HashAlgorithmName.SHA256, RSASignaturePadding.Pkcs1);
        request.CertificateExtensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.NonRepudiation, critical: true));
        using var certificate = request.CreateSelfSigned(DateTimeOffset.UtcNow.AddDays(-1), DateTimeOffset.UtcNow.AddDays(30));
        File.WriteAllBytes(_apart.At("key.p12"), certificate.ExportPkcs12(Pkcs12ExportPbeParameters.Pbes2Aes256Sha256, ""));
        File.WriteAllText(_apart.At("certificate.pem"), certificate.ExportCertificatePem());
    }

    protected override void Dispose(bool disposing)
    {
        foreach (var worker in _workers)
        {
            if (!worker.HasExited)
                worker.Kill();
            worker.WaitForExit();
            worker.Dispose();
        }
        _apart.Dispose();
        base.Dispose(disposing);
    }
}

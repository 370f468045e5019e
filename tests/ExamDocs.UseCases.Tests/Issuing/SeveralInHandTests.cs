using System.Diagnostics;
using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.Rendering;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Templates;
using ExamDocs.Templates.Label;
using ExamDocs.UseCases.Issuing;

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>Several documents are in hand at once: what happens to one must not happen to the others, and no number is left over.</summary>
public sealed class SeveralInHandTests(ExampleIssued example) : IDisposable
{
    private readonly Workspace _workspace = new();

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    private IReadOnlyList<DocumentJob> Labels =>
        [.. ComposeDocuments.Of(example.Visit, perItem: false, ReadingDistance.Default).Jobs.Where(j => j.Type == DocumentTypes.DueLabel)];

    public void Dispose() => _workspace.Dispose();

    /// <summary>A page so large that it cannot be printed in time.</summary>
    [Fact]
    public async Task A_page_that_the_browser_cannot_print_is_refused_alone()
    {
        await using var browser = await Browser.StartAsync(null, TimeSpan.FromSeconds(12));
        var endless = "<style>div{display:grid}</style>" + string.Concat(Enumerable.Repeat("<div><p>x", 400_000));
        var jobs = Labels.Take(20).ToList();
        jobs[2] = Printing(jobs[2], (_, _) => Task.FromResult(endless));
        using var register = DocumentRegister.Open(_workspace.Register);
        await using var prints = Run(register, browser);
        Assert.Null(await prints.RunAsync(jobs, Cancellation));

        var refused = Assert.Single(prints.Refused);
        Assert.Equal((jobs[2].Items[0].Item.Id, "PRN005"), (refused.Item, Assert.Single(refused.Codes)));
        Assert.Contains("longer than 12 s; it is held back", Assert.Single(prints.Unprintable), StringComparison.Ordinal);
        Assert.Equal("D-2026-000003", Assert.Single(register.Voided()).Number);
        Assert.Equal(Names(jobs.Where((_, n) => n != 2)), prints.Documents.Select(d => d.Document.Items[0]));
        AssertNothingIsLeft(register, 20);
    }

    [Fact]
    public async Task A_run_that_is_cancelled_finishes_what_is_in_hand()
    {
        using var cancel = new CancellationTokenSource();
        var jobs = Labels.Take(30).ToList();
        jobs[9] = Printing(jobs[9], async (renderer, identity) =>
        {
            await cancel.CancelAsync();
            return await Labels[9].Compose(renderer, identity);
        });
        using var register = DocumentRegister.Open(_workspace.Register);
        await using var prints = Run(register, OpenBrowser.Instance);
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => prints.RunAsync(jobs, cancel.Token));

        Assert.Equal(Names(jobs.Take(16)), prints.Documents.Select(d => d.Document.Items[0]));
        Assert.Empty(register.Voided());
        AssertNothingIsLeft(register, 16);
        Assert.Null(await prints.RunAsync(jobs, Cancellation));
        AssertNothingIsLeft(register, jobs.Count);
    }

    /// <summary>A page that cannot even be made stops the run, and with it those that were begun.</summary>
    [Fact]
    public async Task A_run_that_stops_leaves_no_number_over()
    {
        var jobs = Labels.Take(30).ToList();
        jobs[12] = Printing(jobs[12], (_, _) => throw new IOException("The folder is gone."));
        using var register = DocumentRegister.Open(_workspace.Register);
        await using var prints = Run(register, OpenBrowser.Instance);
        Assert.Equal("The folder is gone.", await prints.RunAsync(jobs, Cancellation));
        AssertNothingIsLeft(register, 16);
        Assert.NotEmpty(register.Voided());
    }

    [Fact]
    public async Task A_file_in_the_way_of_one_stops_the_run_and_the_others_are_told_of()
    {
        Directory.CreateDirectory(_workspace.Out);
        var inTheWay = Path.Combine(_workspace.Out, "D-2026-000002.pdf");
        await File.WriteAllTextAsync(inTheWay, "somebody else's", Cancellation);
        using var register = DocumentRegister.Open(_workspace.Register);
        await using var prints = Run(register, OpenBrowser.Instance);
        Assert.Contains(inTheWay, await prints.RunAsync([.. Labels.Take(4)], Cancellation), StringComparison.Ordinal);
        Assert.Equal(Names(Labels.Take(4).Where((_, n) => n != 1)), prints.Documents.Select(d => d.Document.Items[0]));
        Assert.Equal("D-2026-000002", Assert.Single(register.Voided()).Number);
        Assert.Equal("somebody else's", await File.ReadAllTextAsync(inTheWay, Cancellation));
    }

    /// <summary>The same document asked for twice is one document, whether the first is out or still in hand.</summary>
    [Fact]
    public async Task What_is_asked_for_twice_is_issued_once()
    {
        var jobs = Labels.Take(4).SelectMany(j => new[] { j, j }).Append(Labels[0]).ToList();
        using var register = DocumentRegister.Open(_workspace.Register);
        await using var prints = Run(register, OpenBrowser.Instance);
        Assert.Null(await prints.RunAsync(jobs, Cancellation));
        Assert.Equal(Names(jobs), prints.Documents.Select(d => d.Document.Items[0]));
        AssertNothingIsLeft(register, 4);
    }

    /// <summary>Kills, with <c>EXAMDOCS_PROOF=full</c> fifty in two thousand documents, else three in a hundred and fifty.</summary>
    [Fact]
    public async Task Each_is_issued_once_however_often_the_browser_is_killed()
    {
        var isFull = Environment.GetEnvironmentVariable("EXAMDOCS_PROOF") is "full";
        var (documents, kills) = isFull ? (2_000, 50) : (150, 3);
        var labels = Labels;
        var jobs = Enumerable.Range(0, documents).Select(n => Numbered(labels[n % labels.Count], n)).ToList();
        await using var browser = await Browser.StartAsync();
        using var register = DocumentRegister.Open(_workspace.Register);
        await using var prints = Run(register, browser);
        using var done = new CancellationTokenSource();
        var killing = KillAsync(browser, register, documents / (kills + 1), done.Token);
        Assert.Null(await prints.RunAsync(jobs, Cancellation));
        await done.CancelAsync();
        Assert.InRange(await killing, kills - 1, kills + 1);
        Assert.Empty(prints.Unprintable);
        Assert.Equal(documents, prints.Documents.Select(d => d.Document.JobKey).Distinct().Count());
        Assert.Empty(register.Voided());
        AssertNothingIsLeft(register, documents);
    }

    /// <summary>Ends the browser each time that so many more documents are out.</summary>
    private static async Task<int> KillAsync(Browser browser, DocumentRegister register, int each, CancellationToken cancellation)
    {
        var (kills, last) = (0, 0);
        while (!cancellation.IsCancellationRequested)
        {
            await Task.Delay(20, CancellationToken.None);
            if (
                Directory.GetFiles(Path.Combine(Path.GetDirectoryName(register.Place)!, "out"), "D-*.pdf").Length / each is var now
                && now == last
            )
                continue;
            last = now;
            if (browser.ProcessId is not { } id)
                continue;
            using var process = Process.GetProcessById(id);
            process.Kill();
            kills++;
        }
        return kills;
    }

    /// <summary>Another document that looks like the same label.</summary>
    private static DocumentJob Numbered(DocumentJob job, int number) =>
        job with
        {
            Compose = async (renderer, identity) =>
                FormattableString.Invariant($"{await job.Compose(renderer, identity)}<!-- {number} -->"),
        };

    /// <summary>The job with another page once it has its number; its draft is as ever.</summary>
    private static DocumentJob Printing(DocumentJob job, Func<DocumentRenderer, DocumentIdentity, Task<string>> compose) =>
        job with
        {
            Compose = (renderer, identity) =>
                identity.Number == DocumentJob.Draft(job.Type).Number ? job.Compose(renderer, identity) : compose(renderer, identity),
        };

    private PrintRun Run(DocumentRegister register, Browser browser)
    {
        Directory.CreateDirectory(_workspace.Out);
        return new(register, new Corrections(register, reason: null), _workspace.Out, Workspace.Today, browser);
    }

    private static IEnumerable<string?> Names(IEnumerable<DocumentJob> jobs) => jobs.Select(j => j.Items[0].Item.Id);

    private static void AssertNothingIsLeft(DocumentRegister register, int numbers)
    {
        Assert.Equal(numbers, register.Issued().Count + register.Voided().Count);
        Assert.Empty(register.Recover());
        Assert.Empty(register.Check());
    }
}

using BenchmarkDotNet.Attributes;
using ExamDocs.Benchmarks.Issuing;
using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.LabelSheets;
using ExamDocs.Documents.ReadingBack;
using NodaTime;
using PdfSharp.Pdf.IO;
using PuppeteerSharp;
using Browser = ExamDocs.Documents.Browsing.Browser;
using PdfReader = UglyToad.PdfPig.PdfDocument;

namespace ExamDocs.Benchmarks.Paired;

/// <summary>One report of one item, of two pages, and one label: printed, read back, finished, put on a sheet.</summary>
public class Printing
{
    private static readonly LocalDate Today = LocalDate.FromDateTime(DateTime.Today);
    private static readonly PdfOptions AsOnPage = new() { PreferCSSPageSize = true, PrintBackground = true };
    private Browser ours = null!;
    private IBrowser bare = null!;
    private IPage reused = null!;
    private string html = "";
    private byte[] printed = [];
    private byte[] label = [];
    private readonly LabelStock stock = LabelStock.Find("a4-24")!;

    [GlobalSetup]
    public async Task PrepareAsync()
    {
        ours = await Browser.StartAsync();
        bare = await Puppeteer.LaunchAsync(
            new LaunchOptions { ExecutablePath = BrowserPath.Find(), Args = Environment.IsPrivilegedProcess ? ["--no-sandbox"] : [] }
        );
        reused = await bare.NewPageAsync();
        html = await FirstAsync("report:1");
        printed = await ours.PrintAsync(html);
        label = await ours.PrintAsync(await FirstAsync("due-label:1"));
    }

    [GlobalCleanup]
    public async Task EndAsync()
    {
        await bare.DisposeAsync();
        await ours.DisposeAsync();
    }

    [BenchmarkCategory("print"), Benchmark(Baseline = true, Description = "a page of PuppeteerSharp, reused")]
    public async Task<int> PrintBareAsync()
    {
        await reused.SetContentAsync(html);
        return (await reused.PdfDataAsync(AsOnPage)).Length;
    }

    [BenchmarkCategory("print"), Benchmark(Description = "print a report")]
    public async Task<int> PrintAsync() => (await ours.PrintAsync(html)).Length;

    [BenchmarkCategory("read back"), Benchmark(Baseline = true, Description = "the letters, with PdfPig")]
    public int Letters()
    {
        using var pdf = PdfReader.Open(printed);
        return pdf.GetPages().Sum(p => p.Letters.Count);
    }

    [BenchmarkCategory("read back"), Benchmark(Description = "hold a report against its page")]
    public int ReadBack() => FaithfulPrint.Faults(html, printed).Count;

    [BenchmarkCategory("finish"), Benchmark(Baseline = true, Description = "opened and saved, with PDFsharp")]
    public long Saved()
    {
        using var pdf = PdfSharp.Pdf.IO.PdfReader.Open(new MemoryStream(printed), PdfDocumentOpenMode.Modify);
        using var saved = new MemoryStream();
        pdf.Save(saved);
        return saved.Length;
    }

    [BenchmarkCategory("finish"), Benchmark(Description = "finish a report")]
    public int Finished() => Finisher.Finish(printed, []).Length;

    [BenchmarkCategory("sheet"), Benchmark(Baseline = true, Description = "24 labels opened, with PDFsharp")]
    public int Opened() =>
        Enumerable
            .Range(0, stock.PerSheet)
            .Sum(_ =>
            {
                using var pdf = PdfSharp.Pdf.IO.PdfReader.Open(new MemoryStream(label), PdfDocumentOpenMode.Import);
                return pdf.PageCount;
            });

    [BenchmarkCategory("sheet"), Benchmark(Description = "24 labels on a sheet")]
    public int OnSheet() => LabelSheet.Impose([.. Enumerable.Repeat(label, stock.PerSheet)], stock, new Placing()).Length;

    private static async Task<string> FirstAsync(string what)
    {
        var folder = Directory.CreateTempSubdirectory("examdocs-paired-");
        try
        {
            var visits = InventedVisits.Write(folder.FullName, items: 1, perVisit: 1, Today.PlusDays(-7));
            await foreach (var page in SameHtml.OfAsync(IssueCase.Parse(what), visits, Today))
                return page;
            throw new InvalidOperationException($"nothing is printed for {what}");
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}

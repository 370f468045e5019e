using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.Rendering;
using ExamDocs.Templates;
using ExamDocs.Templates.Report;

[assembly: AssemblyFixture(typeof(ExamDocs.Documents.Tests.Printing.SharedBrowser))]

namespace ExamDocs.Documents.Tests.Printing;

/// <summary>One browser for all tests, and the example's report, printed once.</summary>
public sealed class SharedBrowser : IAsyncLifetime
{
    private readonly Lazy<string> _reportText;
    private Browser? _browser;

    public SharedBrowser() => _reportText = new(() => Tool.PdfText(Report));

    public DocumentRenderer Renderer { get; } = new();

    public byte[] Report { get; private set; } = [];

    /// <summary>The report's text as Poppler reads it.</summary>
    public string ReportText => _reportText.Value;

    internal ReportModel ReportModel { get; private set; } = null!;

    public Task<byte[]> PrintAsync(string html) => _browser!.PrintAsync(html, TestContext.Current.CancellationToken);

    public async ValueTask InitializeAsync()
    {
        _browser = await Browser.StartAsync();
        var items = Example.Visit.Items.Where(i => i.MayBeReported && i.RegimeId == "gb-loler").ToList();
        var author = Example.Visit.Person(items[0].Examination!.Author ?? items[0].Examination!.Examiner)!;
        ReportModel = new ReportModel(Example.Identity(DocumentTypes.Report), Example.Visit, items, author, author);
        Report = await _browser.PrintAsync(await Renderer.HtmlAsync(ReportModel));
    }

    public async ValueTask DisposeAsync()
    {
        await Renderer.DisposeAsync();
        if (_browser is not null)
            await _browser.DisposeAsync();
    }
}

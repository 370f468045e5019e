using System.Text;
using ExamDocs.Documents.Browsing;
using PuppeteerSharp;

namespace ExamDocs.Benchmarks.Issuing;

/// <summary>In the child: what somebody would write first to print many pages: one page of one browser, and a loop.</summary>
internal static class PrintLoop
{
    public static async Task AllAsync(string htmlFolder, string outFolder)
    {
        var options = new LaunchOptions
        {
            ExecutablePath = BrowserPath.Find(),
            Args = Environment.IsPrivilegedProcess ? ["--no-sandbox"] : [],
        };
        await using var browser = await Puppeteer.LaunchAsync(options);
        await using var page = await browser.NewPageAsync();
        foreach (var file in Directory.EnumerateFiles(htmlFolder).Order(StringComparer.Ordinal))
        {
            await page.SetContentAsync(await File.ReadAllTextAsync(file, Encoding.UTF8));
            await page.PdfAsync(
                Path.Combine(outFolder, Path.ChangeExtension(Path.GetFileName(file), ".pdf")),
                new PdfOptions { PreferCSSPageSize = true, PrintBackground = true }
            );
        }
    }
}

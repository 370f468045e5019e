using System.Text.Json;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.PdfSyntax;
using ExamDocs.Documents.ReadingBack;
using ExamDocs.Register.Model;
using ExamDocs.Templates.Shared.Wording.Common;

namespace ExamDocs.UseCases.Issuing;

/// <summary>A page that is printed under its number.</summary>
/// <param name="Job">The job.</param>
/// <param name="Pending">Its number.</param>
/// <param name="Html">The page.</param>
/// <param name="Data">What goes into the file besides.</param>
/// <param name="IsChecked">Whether the print is read back: one that lacks letters is a warning, and was told of.</param>
internal sealed record NumberedPage(
    DocumentJob Job,
    PendingDocument Pending,
    string Html,
    IReadOnlyList<AttachedData> Data,
    bool IsChecked
);

/// <summary>Prints pages, reads them back and finishes them, beside the register: nothing here reads or changes it.</summary>
/// <param name="browser">Prints them.</param>
internal sealed class NumberedPages(IPagePrinter browser) : IDisposable
{
    private readonly SemaphoreSlim _oneSigns = new(1, 1);
    private readonly SemaphoreSlim _oneIsLarge = new(1, 1);

    /// <summary>A large document is printed and read back before the next one of that kind begins: each holds much memory.</summary>
    public async Task<PrintedDocument> PrintAsync(NumberedPage page, CancellationToken cancellation)
    {
        if (!Browser.IsLarge(page.Html))
            return await PrintAtOnceAsync(page, cancellation);
        await _oneIsLarge.WaitAsync(cancellation);
        try
        {
            return await PrintAtOnceAsync(page, cancellation);
        }
        finally
        {
            _oneIsLarge.Release();
        }
    }

    private async Task<PrintedDocument> PrintAtOnceAsync(NumberedPage page, CancellationToken cancellation)
    {
        try
        {
            var printed = await PrintedAsync(page.Html, cancellation);
            var faults = page.IsChecked ? FaithfulPrint.Faults(page.Html, printed) : [];
            if (faults.Count > 0 && !page.Job.IsWarning)
                return new(null, faults);
            var pdf = await FinishAsync(page, printed, cancellation);
            return new(new(page.Pending, pdf, PdfPages.Count(pdf), Outcomes(page.Job.Items)), faults);
        }
        catch (Exception e) when (e is BrowserCrashed or PrintTimedOut or PrintFailed or PdfSyntaxException)
        {
            // Where it prints another page, this one is at fault, and the others need not wait for it.
            if (!await browser.PrintsAsync(cancellation))
                throw;
            return new(null, [], (PrintException)e);
        }
    }

    private async Task<byte[]> PrintedAsync(string html, CancellationToken cancellation)
    {
        try
        {
            return await browser.PrintAsync(html, cancellation);
        }
        catch (BrowserCrashed)
        {
            // Somebody may have ended the browser twice: that says nothing of the page.
            if (!await browser.PrintsAsync(cancellation))
                throw;
        }
        return await browser.PrintAsync(html, cancellation);
    }

    private async Task<byte[]> FinishAsync(NumberedPage page, byte[] printed, CancellationToken cancellation)
    {
        if (page.Job.Signer is not { } signer)
            return Finisher.Finish(printed, page.Data);
        await _oneSigns.WaitAsync(cancellation);
        try
        {
            var field = CommonPhrases.Languages.In(page.Job.Language).SignatureField;
            return await Finisher.FinishSignedAsync(printed, page.Data, signer, field, cancellation);
        }
        finally
        {
            _oneSigns.Release();
        }
    }

    public void Dispose()
    {
        _oneSigns.Dispose();
        _oneIsLarge.Dispose();
    }

    private static string Outcomes(IReadOnlyList<DeterminedItem> items) =>
        JsonSerializer.Serialize(
            items
                .GroupBy(i => i.Item.Id ?? "", StringComparer.Ordinal)
                .ToDictionary(g => g.Key, g => g.Max(i => i.Outcome).Word(), StringComparer.Ordinal)
        );
}

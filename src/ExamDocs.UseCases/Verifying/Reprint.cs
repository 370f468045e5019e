using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.PdfSyntax;
using ExamDocs.Documents.Rendering;
using ExamDocs.Documents.Signing;
using ExamDocs.Templates.Shared.Wording.Common;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Verifying;

/// <summary>Prints documents once more, to compare the ones in question with them. Without a browser it prints nothing.</summary>
/// <param name="open">A browser that is open already and stays open; null to start one when it is needed.</param>
internal sealed class Reprint(Browser? open) : IAsyncDisposable
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(60);

    private Browser? _browser;
    private bool _isMissing;

    public DocumentRenderer Renderer { get; } = new();

    /// <param name="html">The page.</param>
    /// <param name="contents">The data embedded in the document in question.</param>
    /// <param name="given">The document in question; its embedded files go into the new one as well.</param>
    /// <returns>The finished file; null where nothing here can print it.</returns>
    public async Task<byte[]?> PrintAsync(string html, DocumentContents contents, byte[] given, CancellationToken cancellation)
    {
        if (await BrowserAsync() is not { } browser)
            return null;
        try
        {
            var (printed, data) = (await browser.PrintAsync(html, cancellation), EmbeddedFiles.Within(given));
            return contents.Basis.Signature is null && !IsSigned(given)
                ? Finisher.Finish(printed, data)
                : Finisher.FinishForSignature(
                    printed,
                    data,
                    SignedFileFacts.SignerOf(given) ?? "",
                    CommonPhrases.Languages.In(contents.Basis.Language).SignatureField
                );
        }
        catch (Exception e) when (e is PrintException or PdfSyntaxException)
        {
            return null;
        }
    }

    private static bool IsSigned(byte[] given) => SignedFileFacts.SignerOf(given) is not null;

    private async Task<Browser?> BrowserAsync()
    {
        if (open is not null || _browser is not null || _isMissing)
            return open ?? _browser;
        try
        {
            return _browser = await Browser.StartAsync(limit: Longest);
        }
        catch (PrintException)
        {
            _isMissing = true;
            return null;
        }
    }

    public async ValueTask DisposeAsync()
    {
        await Renderer.DisposeAsync();
        if (_browser is not null)
            await _browser.DisposeAsync();
    }
}

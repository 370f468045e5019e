using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.PdfSyntax;
using ExamDocs.Documents.Rendering;
using ExamDocs.Documents.Signing;
using ExamDocs.Templates.Shared.Wording.Common;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Verifying;

/// <summary>
/// Prints documents once more, to compare the ones in question with them. Without a browser it prints nothing. A browser of its own is
/// started at once: it takes as long as reading the first file and asking the register.
/// </summary>
/// <param name="open">A browser that is open already and stays open; null to start one.</param>
internal sealed class Reprint(Browser? open) : IAsyncDisposable
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(60);

    private readonly Task<Browser?> _browser = open is null ? Task.Run(StartedAsync) : Task.FromResult<Browser?>(open);

    public DocumentRenderer Renderer { get; } = new();

    /// <param name="html">The page.</param>
    /// <param name="contents">The data embedded in the document in question.</param>
    /// <param name="given">The document in question; its embedded files go into the new one as well.</param>
    /// <returns>The finished file; null where nothing here can print it.</returns>
    public async Task<byte[]?> PrintAsync(string html, DocumentContents contents, byte[] given, CancellationToken cancellation)
    {
        if (await _browser is not { } browser)
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

    private static async Task<Browser?> StartedAsync()
    {
        try
        {
            return await Browser.StartAsync(limit: Longest);
        }
        catch (PrintException)
        {
            return null;
        }
    }

    public async ValueTask DisposeAsync()
    {
        await Renderer.DisposeAsync();
        if (open is null && await _browser is { } own)
            await own.DisposeAsync();
    }
}

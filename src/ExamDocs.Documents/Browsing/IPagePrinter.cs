namespace ExamDocs.Documents.Browsing;

/// <summary>Prints HTML to PDF: a browser of this machine, or of others.</summary>
public interface IPagePrinter
{
    /// <exception cref="PrintException">The machinery failed; nothing was printed.</exception>
    Task<byte[]> PrintAsync(string html, CancellationToken cancellation = default);

    /// <summary>Whether it prints a page with one word on it, started anew where it has to be.</summary>
    async Task<bool> PrintsAsync(CancellationToken cancellation = default)
    {
        try
        {
            return (await PrintAsync("<p>word", cancellation)).Length > 0;
        }
        catch (PrintException)
        {
            return false;
        }
    }
}

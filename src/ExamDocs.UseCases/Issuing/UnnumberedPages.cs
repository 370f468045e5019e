using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.ReadingBack;

namespace ExamDocs.UseCases.Issuing;

/// <summary>Prints pages beside documents: they have no number, and no register knows them.</summary>
/// <param name="open">A browser that is open already and stays open; null to start one.</param>
internal sealed class UnnumberedPages(IPagePrinter? open) : IAsyncDisposable
{
    private Browser? _own;

    /// <returns>The finished file, or the first thing that was not printed as it is meant.</returns>
    /// <exception cref="PrintException">The browser cannot print.</exception>
    public async Task<(byte[]? Pages, string? Fault)> PrintAsync(string html, CancellationToken cancellation)
    {
        var (printed, fault) = await PrintUnfinishedAsync(html, cancellation);
        return (printed is null ? null : Finisher.Finish(printed, []), fault);
    }

    /// <summary>The same for pages that become part of another file.</summary>
    /// <inheritdoc cref="PrintAsync"/>
    public async Task<(byte[]? Pages, string? Fault)> PrintUnfinishedAsync(string html, CancellationToken cancellation)
    {
        var printed = await (open ?? (_own ??= await Browser.StartAsync())).PrintAsync(html, cancellation);
        var faults = FaithfulPrint.Lacking(html, MissingGlyphs.In(html, printed)).Concat(FaithfulPrint.Faults(html, printed));
        return faults.FirstOrDefault() is { } fault ? (null, fault.Words) : (printed, null);
    }

    public async ValueTask DisposeAsync()
    {
        if (_own is not null)
            await _own.DisposeAsync();
    }
}

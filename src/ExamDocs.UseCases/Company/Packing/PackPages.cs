using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.Rendering;
using ExamDocs.Templates.AuditPack;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.UseCases.Issuing;

namespace ExamDocs.UseCases.Company.Packing;

/// <summary>A pack's own pages, printed and read back stretch by stretch.</summary>
/// <param name="model">What they say.</param>
/// <param name="language">In which language.</param>
/// <param name="open">A browser that is open already and stays open; null to start one.</param>
internal sealed class PackPages(PackModel model, Language language, Browser? open) : IAsyncDisposable
{
    private readonly DocumentRenderer _renderer = new();
    private readonly UnnumberedPages _pages = new(open);

    /// <summary>The page that a browser opens.</summary>
    public Task<string> IndexAsync() => language.InAsync(() => _renderer.HtmlAsync(model));

    /// <param name="done">Called after each stretch.</param>
    /// <param name="cancellation">Stops between two of them.</param>
    /// <returns>The pages before and behind the documents, as PDFs; null where not all of them can be printed whole.</returns>
    /// <exception cref="PrintException">The browser failed.</exception>
    public async Task<(IReadOnlyList<byte[]> Front, IReadOnlyList<byte[]> Back)?> PrintAsync(Action done, CancellationToken cancellation) =>
        await PrintAsync(model.Front, _renderer.FrontAsync, done, cancellation) is { } front
        && await PrintAsync(model.Back, _renderer.BackAsync, done, cancellation) is { } back
            ? (front, back)
            : null;

    public async ValueTask DisposeAsync()
    {
        await _pages.DisposeAsync();
        await _renderer.DisposeAsync();
    }

    private async Task<IReadOnlyList<byte[]>?> PrintAsync(
        IReadOnlyList<PackStretch> stretches,
        Func<PackModel, PackStretch, Task<string>> render,
        Action done,
        CancellationToken cancellation
    )
    {
        var printed = new List<byte[]>();
        foreach (var stretch in stretches)
        {
            var html = await language.InAsync(() => render(model, stretch));
            if (await _pages.PrintUnfinishedAsync(html, cancellation) is not ({ } pdf, _))
                return null;
            printed.Add(pdf);
            done();
        }
        return printed;
    }
}

using System.Text;
using ExamDocs.Documents.Browsing;
using ExamDocs.Register.Work;
using ExamDocs.UseCases.Issuing;

namespace ExamDocs.UseCases.Working;

/// <summary>A worker's other task: it prints pages that other machines ask for, beside the parts of jobs.</summary>
/// <param name="pages">Where the pages are.</param>
/// <param name="browser">Prints them.</param>
/// <param name="lease">How long others leave a page to this worker.</param>
/// <param name="poll">How often it looks for pages where nobody told of any.</param>
internal sealed class PagesForOthers(SharedPages pages, IPagePrinter browser, TimeSpan lease, TimeSpan poll)
{
    /// <summary>As many as a browser prints at a time.</summary>
    private const int MostInHand = 2;

    private static readonly TimeSpan AfterFailure = TimeSpan.FromSeconds(15);

    private readonly List<Task<bool>> _inHand = [];

    /// <summary>How many were printed.</summary>
    public int Printed { get; private set; }

    /// <summary>Prints until it is cancelled, and then what it has in hand.</summary>
    public async Task RunAsync(CancellationToken cancellation)
    {
        try
        {
            while (!cancellation.IsCancellationRequested)
            {
                if (_inHand.Count < MostInHand && pages.Claim(ProgramVersion.Current, lease) is { } page)
                    _inHand.Add(Task.Run(() => PrintAsync(page), CancellationToken.None));
                else if (_inHand.Count > 0)
                    await OneAsync(cancellation);
                else
                    await pages.WaitAsync(poll, cancellation);
            }
        }
        catch (OperationCanceledException) when (cancellation.IsCancellationRequested)
        {
            // What is in hand is finished.
        }
        await Task.WhenAll(_inHand);
    }

    private async Task OneAsync(CancellationToken cancellation)
    {
        var done = await Task.WhenAny(_inHand);
        _inHand.Remove(done);
        if (!await done)
            await Task.Delay(AfterFailure, cancellation);
    }

    /// <returns>False where this machine prints nothing now.</returns>
    private async Task<bool> PrintAsync(ClaimedPage page)
    {
        try
        {
            var pdf = await browser.PrintAsync(Encoding.UTF8.GetString(page.Html));
            pages.Answer(page, pdf);
            Printed++;
            return true;
        }
        catch (PrintException e)
        {
            // Where it prints another page, this one is at fault.
            var prints = await browser.PrintsAsync();
            if (prints)
                pages.Refuse(page, e.Message);
            else
                pages.PutBack(page, e.Message);
            return prints;
        }
    }
}
